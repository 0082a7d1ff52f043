import { sentences } from '~/words/en/report.ts';
import { shareWords } from '~/words/en/verdict.ts';
import { estimateBand } from '../capacity/estimate.ts';
import { deciding, narrowing } from '../capacity/sure/improvement.ts';
import { endsText, shown, verdict } from '../capacity/sure/verdict.ts';
import { capacityText, inUnitOf, joined, percent } from '../show.ts';
import { assessment, interpreted, job, system } from '../store.ts';
import { CamePlace, Figure } from './Came.tsx';
import { isNet, made, outcome, withheldBy } from './state.ts';

/** Three plain sentences: what was measured, what it should be, what follows. */
export function Sentences() {
  const found = verdict.value;
  return (
    <section class="report-sentences">
      <Measured />
      <Expected />
      <p>
        {followsFrom()} {found?.outcome === 'cannotTell' && sentences.notAFail}
      </p>
      {estimateBand.value !== null && <p>{shareWords.estimate(estimateBand.value)}</p>}
    </section>
  );
}

function Measured() {
  if (!made.value) return null;
  const figure = (
    <Figure at="measured" group="measured">
      {joined(made.value)}
    </Figure>
  );
  return (
    <CamePlace at="measured">
      <p>
        {sentences.measured(figure)} {isNet.value && sentences.net}{' '}
        {!assessment.value.ratio.ok && sentences.measuredOnly}
      </p>
    </CamePlace>
  );
}

function Expected() {
  const { expected } = assessment.value;
  const range = shown.value;
  const { outdoorDryBulb } = interpreted.value.test;
  if (!expected.ok || !range || outdoorDryBulb === null) return null;
  const chances = sentences.chances[range.confidence > 0.92 ? 'nineteen' : 'nine'];
  const parts = sentences.expected(
    joined(inUnitOf(outdoorDryBulb, system.value === 'ip' ? 'degF' : 'degC', 0)),
    <Figure at="expected" group="expected">
      {capacityText(expected.value.total)}
    </Figure>,
    <Figure at="expected" group="ratio">
      {percent(range.value)}
    </Figure>,
    <a class="report-figure" href="#report-sure">
      {sentences.between(...endsText(range))}
    </a>,
    chances,
  );
  return (
    <CamePlace at="expected">
      <p>{parts}</p>
    </CamePlace>
  );
}

/** What follows from the range and the line, or why nothing does. */
function followsFrom(): string {
  const came = outcome.value;
  if (came === 'withheld') return sentences.withheld(withheldBy.value ?? '');
  if (came === null) return '';
  if (came === 'higherThanItCanMake') return sentences.higherThanItCanMake;
  const line = lineText();
  if (came !== 'improvable') return sentences[came](line);
  return sentences.improvable(line, deciding.value ? narrowing(deciding.value) : '');
}

/** The line, and whether it was agreed on before anything was read. */
function lineText(): string {
  const line = percent(interpreted.value.test.line);
  const { entered } = job.value;
  const [set, read] = [entered.line?.at, entered['leaving.dryBulb']?.at];
  if (interpreted.value.assumed.includes('line')) return sentences.line.assumed(line);
  return set && read && set > read ? sentences.line.late(line) : sentences.line.agreed(line);
}
