import { VerdictMark } from '~/parts/VerdictMark.tsx';
import { compareWords as words } from '~/words/en/compare.ts';
import { needNames } from '~/words/en/sheet.ts';
import { percent } from '../show.ts';
import { difference, sides, type Tested } from './model.ts';
import { bySaid, capacities, endsSaid, inPoints, outcomeOf, points } from './said.ts';

/** Whether the later differs from the earlier, in one sentence, then in figures. */
export function Differs() {
  const found = difference.value;
  const [before, after] = [sides.before.value, sides.after.value];
  if (!found || !before || !after) return null;
  if (!found.ok) return <Waits sides={[before, after]} />;
  const { total } = found.value;
  const ratio = found.value.ratio && inPoints(found.value.ratio);
  const outcome = outcomeOf(ratio ?? total);
  const [from, to] = [before, after].map(({ assessment }) => (assessment.ratio.ok ? assessment.ratio.value.value : 0));
  return (
    <section class="answer">
      <VerdictMark of={outcome} />
      <h2 class="answer-sentence">{sentenceOf(outcome, ratio !== null)}</h2>
      <p class="answer-plain" role="status">
        {ratio && words.shareWent(percent(from ?? 0), percent(to ?? 0), bySaid(ratio, points), endsSaid(ratio, points))}{' '}
        {words.capacityWent(bySaid(total, capacities), endsSaid(total, capacities))}{' '}
        {outcome !== 'cannotTell' && words.beyond}
      </p>
      <p class="note">
        {ratio ? words.weather : words.noShare} {isEstimate(before) || isEstimate(after) ? `${words.estimate} ` : ''}
        {words.odds(after.test.confidence > 0.92 ? words.chances.nineteen : words.chances.nine)}
      </p>
    </section>
  );
}

function sentenceOf(outcome: ReturnType<typeof outcomeOf>, ofShares: boolean): string {
  const { more, less, moreCapacity, lessCapacity, cannotTell } = words.answers;
  if (outcome === 'cannotTell') return cannotTell;
  if (outcome === 'meets') return ofShares ? more : moreCapacity;
  return ofShares ? less : lessCapacity;
}

const isEstimate = ({ test }: Tested) => test.rating?.from === 'generic';

function Waits({ sides: both }: { sides: readonly [Tested, Tested] }) {
  return (
    <section role="status">
      {both.map(({ assessment: { measured } }, index) => {
        if (measured.ok) return null;
        const name = index === 0 ? words.before : words.after;
        const needs = measured.waiting.map((need) => needNames[need] ?? need).join(', ');
        return <p key={name}>{needs === '' ? words.waitsAnything(name) : words.waits(name, needs)}</p>;
      })}
    </section>
  );
}
