import { listedReadings } from '~/job/readings.ts';
import { Echo } from '~/parts/Echo.tsx';
import { Mark } from '~/parts/Mark.tsx';
import { Step } from '~/parts/Step.tsx';
import { airChart, stateWords } from '~/words/en/moistAir.ts';
import { stepNames } from '~/words/en/sheet.ts';
import { typing } from '../fields.ts';
import { job } from '../jobStore.ts';
import { QuantityField } from '../QuantityField.tsx';
import { AirProblem } from './AirProblem.tsx';
import { measureOf } from './keys.ts';
import { returnAir, supplyAir } from './points.ts';
import { spokenAir } from './said.ts';
import { openStep } from './view.ts';

type Side = 'entering' | 'leaving';

/** Return or supply air of the job, by the same two fields as on its sheet. */
export function JobAir({ side }: { side: Side }) {
  const outcome = (side === 'entering' ? returnAir : supplyAir).value;
  const measure = job.value.chosen.humidityAs === 'wetBulb' ? 'wetBulb' : 'relativeHumidity';
  const readings = listedReadings(job.value, side).length;
  const { term } = stepNames[side];
  return (
    <Step
      id={`point-${side}`}
      number={side === 'entering' ? 'R' : 'S'}
      name={side === 'entering' ? stateWords.return : stateWords.supply}
      term={term}
      mark={<Mark of={side} />}
      summary={outcome.ok ? spokenAir(outcome.value, measureOf(side)) : stateWords.empty}
      open={openStep.value === side}
      fixed={false}
      onToggle={() => {
        openStep.value = openStep.value === side ? null : side;
      }}
    >
      <div class="field-row">
        <QuantityField of={`${side}.dryBulb`} />
        <QuantityField of={`${side}.${measure}`} />
      </div>
      {typing.value?.startsWith(side) ? null : <AirProblem outcome={outcome} />}
      <Echo>{readings > 0 ? airChart.mean(readings + (outcome.ok ? 1 : 0)) : airChart.move}</Echo>
    </Step>
  );
}
