import { useEffect } from 'preact/hooks';
import { undoWord } from '~/words/en/moistAirSteps.ts';
import { canUndo, followEdits, undo } from './undo.ts';

/** Takes back what was done last; by keyboard it is Ctrl+Z. */
export function UndoKey() {
  useEffect(followEdits, []);
  return (
    <button type="button" class="plain-button" disabled={!canUndo.value} onClick={undo}>
      {undoWord}
    </button>
  );
}
