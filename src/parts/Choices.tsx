import { parts } from '~/words/en/parts.ts';

export interface ChoicesProps {
  readonly id: string;
  readonly ask: string;
  readonly options: Readonly<Record<string, string>>;
  /** The one chosen, or the one assumed until somebody says otherwise. */
  readonly value: string | undefined;
  readonly assumed?: boolean;
  /** False when nothing may be changed: the answer that was given is put back. */
  readonly onChoose: (value: string) => boolean;
}

/** One of a few: native radios drawn as boxes, the chosen one in a thick frame and heavier type. */
export function Choices({ id, ask, options, value, assumed, onChoose }: ChoicesProps) {
  return (
    <fieldset class="choices" data-assumed={assumed ? '' : undefined}>
      <legend>
        {ask} {assumed && <small>{parts.assumed}</small>}
      </legend>
      <div class="choice-row">
        {Object.entries(options).map(([key, label]) => (
          <label key={key} class="choice">
            <input
              type="radio"
              name={id}
              value={key}
              checked={value === key}
              onChange={(event) => onChoose(key) || putBack(event.currentTarget, value)}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** A refused answer leaves the job as it is, so nothing is drawn anew: the radios are set by hand. */
function putBack(pressed: HTMLInputElement, value: string | undefined): void {
  for (const radio of pressed.closest('fieldset')?.querySelectorAll('input') ?? [])
    radio.checked = radio.value === value;
}
