import { parts } from '~/words/en/parts.ts';

export interface ChoicesProps {
  readonly id: string;
  readonly ask: string;
  readonly options: Readonly<Record<string, string>>;
  /** The one chosen, or the one assumed until somebody says otherwise. */
  readonly value: string | undefined;
  readonly assumed?: boolean;
  readonly onChoose: (value: string) => void;
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
            <input type="radio" name={id} value={key} checked={value === key} onChange={() => onChoose(key)} />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
