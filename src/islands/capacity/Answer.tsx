import { answer } from '~/words/en/answer.ts';
import { lazy } from '../lazy.tsx';
import { capacityText } from '../show.ts';
import { assessment, expectedHalf } from '../store.ts';
import { expectedNeeds, measuredNeeds, needText } from './model.ts';
import { stopReason } from './remarks.ts';
import { type Sentences, verdictSaid } from './said.ts';

const Results = lazy(() => import('./late.ts').then((late) => late.Results));

/** The answer: one sentence for anyone, then what stands behind it, which is fetched when there is something to show. */
export function Answer() {
  return (
    <div class="sheet-answer" id="answer" tabIndex={-1}>
      <section class="answer" role="status" aria-labelledby="answer-head">
        <Sentence />
      </section>
      {assessment.value.measured.ok && <Results />}
    </div>
  );
}

/** The biggest thing on the sheet, with the mark of a verdict before it, and the sentence below it for the technician. */
function Sentence() {
  const { mark, first, second, third } = sentences();
  return (
    <>
      {mark}
      <h2 class="answer-sentence" id="answer-head">
        {first}
      </h2>
      <p class="answer-plain">{second}</p>
      {third && <p class="answer-note">{third}</p>}
    </>
  );
}

function sentences(): Sentences {
  const { measured, ratio } = assessment.value;
  if (!measured.ok) return { first: answer.nothing, second: answer.nothingLead(needText(measuredNeeds.value)) };
  const stop = stopReason.value;
  if (stop) return { first: answer.noVerdict, second: stop.say };
  const said = ratio.ok && verdictSaid.value?.sentencesOfVerdict();
  return said || { first: answer.makes(capacityText(measured.value.total)), second: expectationSaid() };
}

/** What the expectation still needs, or that it cannot be had. It keeps its line while the assessment is on its way. */
function expectationSaid(): string {
  if (expectedHalf.value === null) return '\u00a0';
  const needs = needText(expectedNeeds.value);
  return needs === '' ? answer.noExpectation : answer.makesLead(needs);
}
