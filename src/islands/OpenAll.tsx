import { sheet as words } from '~/words/en/sheet.ts';
import type { SheetSteps } from './sheetSteps.ts';

/** The key that opens every step, or goes back to one at a time, where they do not all stand open. */
export function OpenAll<Step extends string>({ sheet }: { sheet: SheetSteps<Step> }) {
  const { allOpen, fixed } = sheet;
  if (fixed.value) return null;
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
