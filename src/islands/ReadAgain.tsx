import { readAgain as words } from '~/words/en/readAgain.ts';
import { stale } from './opening.ts';
import { clock } from './show.ts';

/** That readings are an hour old or more, and whether they are to be read again. */
export function ReadAgain() {
  const old = stale.value;
  if (!old) return null;
  return (
    <div class="read-again">
      <p>{words.ask(words.sides[old.side], ageOf(old.at))}</p>
      <p class="tools">
        <button type="button" class="plain-button" onClick={old.readAgain}>
          {words.again}
        </button>
        <button
          type="button"
          class="plain-button"
          onClick={() => {
            stale.value = null;
          }}
        >
          {words.holds}
        </button>
      </p>
    </div>
  );
}

/** "1 h ago" on the same day, else the day and the time. */
function ageOf(iso: string): string {
  const at = new Date(iso);
  const hours = Math.floor((Date.now() - at.getTime()) / 3_600_000);
  if (hours < 24) return words.ago(hours);
  const day = at.toLocaleDateString('en', { day: 'numeric', month: 'long', year: 'numeric' });
  return words.on(day, clock(iso));
}
