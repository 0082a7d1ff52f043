import { type GuessRow, GuessScale } from '~/charts/GuessScale.tsx';
import type { Answered, Asked, Mark } from '~/job/classroom/lessons/types.ts';
import { unitLabel } from '~/job/format.ts';
import { fromSi, toSi } from '~/job/units.ts';
import { markNames, pictureOf, restCools } from '~/words/en/lessonQuestions.ts';
import { predict } from '~/words/en/predict.ts';
import { useWidth } from '../useWidth.ts';
import { answerText, guessUnit } from './said.ts';

interface Props {
  readonly asked: Asked;
  readonly ask: string;
  /** SI; `null` while nothing is said. */
  readonly guess: number | null;
  readonly answered: Answered | null;
  readonly isLarge: boolean;
  readonly onGuess: ((si: number) => void) | undefined;
}

/** The column of a phone, until the own one is known. */
const narrow = 358;

/** What is given, the guess and, once it may be seen, the answer, on one scale. */
export function Picture({ asked, ask, guess, answered, isLarge, onGuess }: Props) {
  const [box, wide] = useWidth();
  const { scale, control } = asked;
  const unit = guessUnit(scale.kind);
  const isRest = scale.look === 'rest';
  /** A loss is drawn as what is left. */
  const shown = (si: number) => fromSi(isRest ? 1 - si : si, unit);
  const plain = (si: number) => fromSi(si, unit);
  const decimals = control.by === 'choice' ? 0 : control.decimals;
  const text = (si: number) => answerText({ kind: scale.kind, decimals }, si);
  const given = ({ name, values }: Mark): GuessRow => ({
    label: [markNames[name], ...(values.length === 1 ? values.map(text) : [])].join(': '),
    by: name === 'agreedLine' ? 'agreed' : 'given',
    values: values.map(plain),
  });
  const rows: GuessRow[] = scale.given.map(given);
  if (control.by !== 'choice') {
    // After the answer a guess that was not made leaves no row.
    if (guess !== null || !answered)
      rows.push({
        label: guess === null ? predict.guessName : `${predict.guessName}: ${text(guess)}`,
        by: 'guess',
        values: guess === null ? [] : [shown(guess)],
        top: scale.top === null ? null : plain(scale.top),
      });
    if (answered)
      rows.push({
        label: `${predict.answerName}: ${text(answered.answer)}`,
        by: 'answer',
        values: [shown(answered.answer)],
        top: answered.top === null ? null : plain(answered.top),
      });
  }
  rows.push(...(answered?.marks ?? []).map(given));
  return (
    <div ref={box} class="predict-picture">
      <GuessScale
        look={scale.look === 'rest' ? 'bar' : scale.look}
        pen={scale.pen}
        ends={[plain(scale.ends[0]), plain(scale.ends[1])]}
        unit={unitLabel(unit)}
        rows={rows}
        rest={restCools}
        width={Math.round((wide || narrow) / (isLarge ? 1.5 : 1))}
        summary={pictureOf(ask, rows.map(({ label }) => label).join('; '))}
        onPlace={
          onGuess && control.by === 'barEnd'
            ? (value) => {
                const si = toSi(value, unit);
                onGuess(isRest ? 1 - si : si);
              }
            : undefined
        }
      />
    </div>
  );
}
