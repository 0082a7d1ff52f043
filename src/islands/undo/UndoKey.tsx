import { withOwnUnit } from '~/job/edit.ts';
import type { Edit } from '~/job/types.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { undoWords as words } from '~/words/en/undo.ts';
import { canUndo, takenBackLast, undo } from './steps.ts';

/** Takes back what was done last and says what that was; by keyboard it is Ctrl+Z. */
export function UndoKey() {
  const back = takenBackLast.value;
  return (
    <>
      <button type="button" class="plain-button" disabled={!canUndo.value} onClick={undo}>
        {words.undo}
      </button>
      <span class="tools-said" role="status">
        {back && words.undone(whatOf(back))}
      </span>
    </>
  );
}

function whatOf([first, ...others]: readonly Edit[]): string {
  if (!first) return '';
  const what = first.slot === 'entered' ? fieldSaid(first) : words.slots[first.slot];
  return others.length === 0 ? what : words.more(what, others.length);
}

function fieldSaid({ key, to }: Extract<Edit, { slot: 'entered' }>): string {
  const name = quantityWords[key]?.inSentence ?? words.slots.entered;
  const text = to?.text.trim() ?? '';
  return text === '' || !to ? words.emptied(name) : words.back(name, withOwnUnit(text.slice(0, 24), to.unit));
}
