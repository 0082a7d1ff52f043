import { toSay } from '~/words/en/lessonQuestions.ts';
import { handWords } from '~/words/en/predict.ts';
import { slides } from '~/words/en/slides.ts';

interface Props {
  readonly id: string;
  readonly options: readonly string[];
  readonly chosen: number | null;
  readonly problem: string | null;
  readonly onChoose: (place: number) => void;
}

/** One of three, under the letters for which hands are raised. */
export function Few({ id, options, chosen, problem, onChoose }: Props) {
  return (
    <fieldset class="choices" aria-describedby={problem ? `${id}-check` : undefined}>
      <legend>{toSay.choice}</legend>
      <div class="choice-row">
        {options.map((option, place) => (
          <label key={option} class="choice">
            <input type="radio" name={id} checked={chosen === place} onChange={() => onChoose(place)} />
            <span>
              {handWords.letters[place]}: {option}
            </span>
          </label>
        ))}
      </div>
      {problem && (
        <p class="check" id={`${id}-check`}>
          <b>{slides.check}</b> {problem}
        </p>
      )}
    </fieldset>
  );
}
