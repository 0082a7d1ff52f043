import { withOwnUnit } from '~/job/edit.ts';
import type { QuantityKey } from '~/job/types.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { undoWords as words } from '~/words/en/undo.ts';
import { typing } from '../fields.ts';
import { beforeIn, putBack } from './steps.ts';

/** Below a field that was changed: what stood there before, and the key that puts it back. Nothing while it is typed in. */
export function Was({ of: key }: { of: QuantityKey }) {
  const was = beforeIn(key);
  if (!was || typing.value === key) return null;
  const text = withOwnUnit(was.text.trim().slice(0, 24), was.unit);
  return (
    <p class="hint was">
      {words.was(text)}{' '}
      <button
        type="button"
        class="plain-button"
        aria-label={words.putBackName(text, quantityWords[key].inSentence)}
        onClick={() => putBack(key)}
      >
        {words.putBack}
      </button>
    </p>
  );
}
