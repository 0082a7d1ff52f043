import { chosen } from '~/job/choices.ts';
import { entered } from '~/job/entered.ts';
import type { ChoiceKey, QuantityKey } from '~/job/types.ts';
import { choiceWords } from '~/words/en/choices.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { amountOf } from '../../fields.ts';
import { mostRead, ReadRows } from '../../ratingTable/ReadRows.tsx';
import { interpreted, job } from '../../store.ts';
import { isGeneric } from '../cells.ts';

/** What else the expectation is worked out from, of a table and of published curves. */
const ofBoth = ['rating.blowerPower', 'blower.power'] as const satisfies readonly QuantityKey[];
const ofTable = ['rating.indoorMatch', 'rating.lineLength'] as const satisfies readonly QuantityKey[];
const ofCurves = ['rating.certified', 'rating.certifiedAirflow'] as const satisfies readonly QuantityKey[];

/** On paper alone: the figures that were read, and what they mean, so that a printed sheet can be worked out again. */
export function PrintedRating() {
  const { rating } = interpreted.value.test;
  if (!rating) return null;
  const rows = rating.rows.filter(({ total }) => total !== null);
  const generic = isGeneric.value;
  const figures = [...(generic ? ofCurves : ofTable), ...ofBoth];
  const answers = generic ? (['equipment.stages', 'equipment.heatPump'] as const) : (['rating.basis'] as const);
  const said = [...answers.flatMap(answerLine), ...figures.flatMap(figureLine)];
  return (
    <div class="printed-rating">
      {rows.length > 0 && rows.length <= mostRead && <ReadRows rows={rows} />}
      {said.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

function answerLine(key: Extract<ChoiceKey, keyof typeof choiceWords>): string[] {
  const { ask, options } = choiceWords[key];
  const answer = chosen(job.value, key);
  return answer === undefined ? [] : [`${ask} ${(options as Readonly<Record<string, string>>)[answer]}`];
}

function figureLine(key: QuantityKey): string[] {
  const si = entered(job.value, key);
  return si === null ? [] : [`${quantityWords[key].name}: ${amountOf(key, si)}`];
}
