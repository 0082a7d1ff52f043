import { sheet as words } from '~/words/en/sheet.ts';
import { sheetParts } from './sheetParts.ts';
import type { SheetSteps } from './sheetSteps.ts';

/** Keys for the sheet as a whole: the one that opens every step, where they do not all stand open, and the one that takes back. */
export function OpenAll<Step extends string>({ sheet }: { sheet: SheetSteps<Step> }) {
  const { allOpen, fixed } = sheet;
  const late = sheetParts.value;
  return (
    <p class="tools sheet-tools">
      {!fixed.value && (
        <button
          type="button"
          class="plain-button"
          onClick={() => {
            allOpen.value = !allOpen.value;
          }}
        >
          {allOpen.value ? words.closeAll : words.openAll}
        </button>
      )}
      {late && <late.UndoKey />}
    </p>
  );
}
