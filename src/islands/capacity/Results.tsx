import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { results } from '~/words/en/results.ts';
import type { WorkingGroup } from '~/words/en/working.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { capacity, percent } from '../show.ts';
import { assessment } from '../store.ts';
import { CapacityBlock } from './CapacityBlock.tsx';
import { CoolingAndDrying } from './CoolingAndDrying.tsx';
import { estimateBand } from './estimate.ts';
import { Folds } from './Folds.tsx';
import { HangTogether } from './HangTogether.tsx';
import { isDesk, workingAsked } from './model.ts';
import { nextStep } from './nextStep.ts';
import { Range } from './sure/Range.tsx';
import { Wait } from './Wait.tsx';

const AirChart = lazy(() => import('./AirChart.tsx').then((module) => module.AirChart));

/** What stands below the sentences once something is measured. */
export function Results() {
  if (!assessment.value.measured.ok) return null;
  return (
    <>
      <section class="answer">
        <Range />
        <AnswerLedger />
      </section>
      <section>
        <h2>{results.nextStep}</h2>
        <p>{nextStep.value}</p>
        <Wait />
      </section>
      <CoolingAndDrying />
      {isDesk.value && (
        <section>
          <h2>{results.coilDoes}</h2>
          <AirChart />
        </section>
      )}
      <HangTogether />
      <Folds />
      {!isDesk.value && (
        <LateFold summary={results.airChart}>
          <AirChart />
        </LateFold>
      )}
      {isDesk.value && <CapacityBlock />}
    </>
  );
}

function AnswerLedger() {
  const { measured, expected, ratio } = assessment.value;
  if (!measured.ok) return null;
  const makes = ratio.ok ? ratio.value.measured : measured.value.total;
  const net = measured.value.basis === 'gross' && ratio.ok;
  const lines: LedgerLine[] = [
    {
      name: <Result words={net ? results.itMakesNet : results.itMakes} group="measured" />,
      ...capacity(makes),
      source: '1',
    },
  ];
  if (expected.ok) {
    const words = estimateBand.value === null ? results.itShould : results.itShouldEstimate(estimateBand.value);
    const name = <Result words={words} group="expected" />;
    lines.push({ name, ...capacity(expected.value.total), source: '2' });
  }
  if (ratio.ok) {
    const [number = '', unit = ''] = percent(ratio.value.value).split('\u00a0');
    lines.push({ name: <Result words={results.shareOf} group="ratio" />, number, unit, sum: true, source: '3' });
  }
  return <Ledger caption={results.ledger} lines={lines} />;
}

/** The name of a result, which opens its working. */
function Result({ words, group }: { words: string; group: WorkingGroup }) {
  const open = () => {
    workingAsked.value = null;
    workingAsked.value = group;
  };
  return (
    <button type="button" class="plain-button result-key" aria-label={results.openWorking(words)} onClick={open}>
      {words}
    </button>
  );
}
