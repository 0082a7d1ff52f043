import { useState } from 'preact/hooks';
import { formatNumber } from '~/job/format.ts';
import * as words from '~/words/en/exercises.ts';
import type { SetOf } from './useSet.ts';

interface Props {
  readonly of: Pick<SetOf<unknown>, 'set' | 'failed' | 'go'>;
  readonly last: number;
  /** The other sheet of the same set. */
  readonly other: { readonly address: string; readonly name: string };
}

/** Which set is shown, another one, the other sheet, and paper. */
export function SetBar({ of, last, other }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  const number = Number(typed);
  const isBad = typed !== null && !(Number.isInteger(number) && number >= 1 && number <= last);
  const take = (text: string) => {
    setTyped(text);
    const asked = Number(text);
    if (text.trim() !== '' && Number.isInteger(asked) && asked >= 1 && asked <= last) of.go(asked);
  };
  return (
    <div class="set-bar">
      <div class="tools">
        <label for="set-number">{words.setName}</label>
        <div class="field-box set-number">
          <input
            id="set-number"
            type="text"
            inputMode="numeric"
            autocomplete="off"
            maxLength={6}
            value={typed ?? String(of.set)}
            aria-invalid={isBad ? 'true' : undefined}
            aria-describedby={isBad ? 'set-check' : undefined}
            onInput={(event) => take(event.currentTarget.value)}
            onBlur={() => !isBad && setTyped(null)}
          />
        </div>
        <button
          type="button"
          class="plain-button"
          onClick={() => {
            setTyped(null);
            of.go((of.set % last) + 1);
          }}
        >
          {words.another}
        </button>
        <button type="button" class="plain-button" onClick={() => print()}>
          {words.print}
        </button>
        <a class="plain-button set-other" href={`${other.address}?set=${of.set}`}>
          {other.name}
        </a>
      </div>
      {isBad && (
        <p class="check" id="set-check">
          {words.setProblem(formatNumber(last, 0))}
        </p>
      )}
      {of.failed && <p role="alert">{words.failed}</p>}
    </div>
  );
}
