import { listedReadings } from '~/job/readings.ts';
import { Echo } from '~/parts/Echo.tsx';
import { pointWords } from '~/words/en/moistAirSteps.ts';
import { typing } from '../../fields.ts';
import { job } from '../../jobStore.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { returnAir, supplyAir } from '../points.ts';
import { AirProblem } from './AirProblem.tsx';

type Side = 'entering' | 'leaving';

/** Return or supply air of the job, by the same two fields as on its sheet. */
export function JobAirBody({ side }: { side: Side }) {
  const outcome = (side === 'entering' ? returnAir : supplyAir).value;
  const measure = job.value.chosen.humidityAs === 'wetBulb' ? 'wetBulb' : 'relativeHumidity';
  const readings = listedReadings(job.value, side).length;
  return (
    <>
      <div class="field-row">
        <QuantityField of={`${side}.dryBulb`} />
        <QuantityField of={`${side}.${measure}`} />
      </div>
      {typing.value?.startsWith(side) ? null : <AirProblem outcome={outcome} />}
      <Echo>{readings > 0 ? pointWords.mean(readings + (outcome.ok ? 1 : 0)) : pointWords.move}</Echo>
    </>
  );
}
