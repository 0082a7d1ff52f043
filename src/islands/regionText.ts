/** What the hatched regions of the job's process stand for, in words: a region without its limits would say more than is known. */
import { probeLimit } from '~/job/probeLimits.ts';
import { differenceUnit, displayUnit } from '~/job/units.ts';
import { regionWords } from '~/words/en/moistAirRegion.ts';
import { jobProcess } from './jobProcess.ts';
import { inUnitOf, joined } from './show.ts';
import { job, system } from './store.ts';

/** `null` while no region is drawn. */
export function regionText(): string | null {
  const sure = jobProcess.value?.uncertainty?.entering;
  if (!sure) return null;
  const [dryBulb, humidity] = [probeLimit(job.value, 'dryBulb'), probeLimit(job.value, sure.measure)];
  const step = differenceUnit(displayUnit.temperature[system.value]);
  const humidityUnit = sure.measure === 'wetBulb' ? step : 'percent';
  const limits = regionWords.limits(
    joined(inUnitOf(dryBulb.si, step)),
    joined(inUnitOf(humidity.si, humidityUnit, Number.isInteger(Math.round(humidity.si * 1000) / 10) ? 0 : 1)),
  );
  return regionWords.hatched(dryBulb.assumed || humidity.assumed ? regionWords.assumed(limits) : limits);
}
