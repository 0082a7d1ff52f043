import { undoWords } from '~/words/en/undo.ts';
import { canUndo, undo } from '../../undo/steps.ts';

/** Takes back what was done last; by keyboard it is Ctrl+Z. */
export function UndoKey() {
  return (
    <button type="button" class="plain-button" disabled={!canUndo.value} onClick={undo}>
      {undoWords.undo}
    </button>
  );
}
