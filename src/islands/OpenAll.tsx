import { sheet as words } from '~/words/en/sheet.ts';
import type { SheetSteps } from './sheetSteps.ts';

/** The key on a phone that opens every step, or goes back to one at a time. */
export function OpenAll<Step extends string>({ sheet }: { sheet: SheetSteps<Step> }) {
  const { allOpen, isDesk } = sheet;
  if (isDesk.value) return null;
  return (
    <p class="tools">
      <button
        type="button"
        class="plain-button"
        onClick={() => {
          allOpen.value = !allOpen.value;
        }}
      >
        {allOpen.value ? words.closeAll : words.openAll}
      </button>
    </p>
  );
}
