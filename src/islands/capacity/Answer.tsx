import { ShareScale } from '~/charts/ShareScale.tsx';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { answer } from '~/words/en/answer.ts';
import type { WorkingGroup } from '~/words/en/working.ts';
import { capacity, capacityText, percent } from '../show.ts';
import { assessment, interpreted, job } from '../store.ts';
import { CoolingAndDrying } from './CoolingAndDrying.tsx';
import { Folds } from './Folds.tsx';
import { HangTogether } from './HangTogether.tsx';
import { expectedNeeds, isDesk, measuredNeeds, needText, workingAsked } from './model.ts';
import { nextStep } from './nextStep.ts';
import { stopReason } from './remarks.ts';

/** The answer: one sentence for anyone, the picture, the ledger, one next step, and what stands behind it. */
export function Answer() {
  const { measured } = assessment.value;
  return (
    <div class="sheet-answer" id="answer" tabIndex={-1}>
      <section class="answer" aria-labelledby="answer-head">
        <Sentence />
        <Share />
        <AnswerLedger />
      </section>
      {measured.ok && (
        <>
          <section>
            <h2>{answer.nextStep}</h2>
            <p>{nextStep.value}</p>
          </section>
          <CoolingAndDrying />
          <HangTogether />
          <Folds />
        </>
      )}
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
  if (!ratio.ok)
    return [answer.makes(capacityText(measured.value.total)), answer.makesLead(needText(expectedNeeds.value))];
  const share = percent(ratio.value.value);
  const advice = job.value.chosen.sideBySide === 'yes' ? answer.rangeChecked : answer.rangeAdvice;
  return [answer.share(share), `${answer.noVerdictYet} ${answer.rangeMissing(share)}`, advice];
}

function Share() {
  const { ratio } = assessment.value;
  if (!ratio.ok) return null;
  const { line } = interpreted.value.test;
  const words = {
    line: answer.scaleLine(percent(line)),
    should: answer.scaleShould,
    summary: answer.scaleSummary(percent(ratio.value.value), percent(line)),
  };
  return <ShareScale share={ratio.value.value} line={line} width={isDesk.value ? 600 : 358} words={words} />;
}

function AnswerLedger() {
  const { measured, expected, ratio } = assessment.value;
  if (!measured.ok) return null;
  const makes = ratio.ok ? ratio.value.measured : measured.value.total;
  const net = measured.value.basis === 'gross' && ratio.ok;
  const lines: LedgerLine[] = [
    {
      name: <Result words={net ? answer.itMakesNet : answer.itMakes} group="measured" />,
      ...capacity(makes),
      source: '1',
    },
  ];
  if (expected.ok) {
    const name = <Result words={answer.itShould} group="expected" />;
    lines.push({ name, ...capacity(expected.value.total), source: '2' });
  }
  if (ratio.ok) {
    const [number = '', unit = ''] = percent(ratio.value.value).split('\u00a0');
    lines.push({ name: <Result words={answer.shareOf} group="ratio" />, number, unit, sum: true, source: '3' });
  }
  return <Ledger caption={answer.ledger} lines={lines} />;
}

/** The name of a result, which opens its working. */
function Result({ words, group }: { words: string; group: WorkingGroup }) {
  const open = () => {
    workingAsked.value = null;
    workingAsked.value = group;
  };
  return (
    <button type="button" class="plain-button result-key" aria-label={answer.openWorking(words)} onClick={open}>
      {words}
    </button>
  );
}
