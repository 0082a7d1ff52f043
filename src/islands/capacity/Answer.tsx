import { answer } from '~/words/en/answer.ts';
import { lazy } from '../lazy.tsx';
import { capacityText, percent } from '../show.ts';
import { assessment, expectedHalf, job } from '../store.ts';
import { estimateBand } from './estimate.ts';
import { expectedNeeds, measuredNeeds, needText } from './model.ts';
import { stopReason } from './remarks.ts';

const Results = lazy(() => import('./late.ts').then((late) => late.Results));

/** The answer: one sentence for anyone, then what stands behind it, which is fetched when there is something to show. */
export function Answer() {
  return (
    <div class="sheet-answer" id="answer" tabIndex={-1}>
      <section class="answer" aria-labelledby="answer-head">
        <Sentence />
      </section>
      {assessment.value.measured.ok && <Results />}
    </div>
  );
}

/** The biggest thing on the sheet, and the sentence below it for the technician. */
function Sentence() {
  const [first, second, third] = sentences();
  return (
    <>
      <h2 class="answer-sentence" id="answer-head">
        {first}
      </h2>
      <p class="answer-plain" role="status">
        {second}
      </p>
      {third && <p class="answer-note">{third}</p>}
    </>
  );
}

function sentences(): readonly [string, string, string?] {
  const { measured, ratio } = assessment.value;
  if (!measured.ok) return [answer.nothing, answer.nothingLead(needText(measuredNeeds.value))];
  const stop = stopReason.value;
  if (stop) return [answer.noVerdict, stop.say];
  if (!ratio.ok) return [answer.makes(capacityText(measured.value.total)), expectationSaid()];
  const share = percent(ratio.value.value);
  const band = estimateBand.value;
  const advice = job.value.chosen.sideBySide === 'yes' ? answer.rangeChecked : answer.rangeAdvice;
  return [
    answer.share(share),
    `${band === null ? '' : `${answer.estimate(band)} `}${answer.noVerdictYet} ${answer.rangeMissing(share)}`,
    advice,
  ];
}

/** What the expectation still needs, or that it cannot be had. It keeps its line while the assessment is on its way. */
function expectationSaid(): string {
  if (expectedHalf.value === null) return '\u00a0';
  const needs = needText(expectedNeeds.value);
  return needs === '' ? answer.noExpectation : answer.makesLead(needs);
}
