/** Readings of both probes out of their records, taken over into the lines of one air. */
import type { ProbePair, ProbeReading } from '../../calc/confidence/compareProbes.ts';
import type { HumidityMeasure } from '../../calc/sideBySide.ts';
import { said } from '../choices.ts';
import { format } from '../format.ts';
import { quantityOf, unitOf } from '../quantities.ts';
import { measuredHere } from '../readings.ts';
import type { Edit, Job, QuantityKey, System, UnitKey } from '../types.ts';
import { joinSure } from './join.ts';
import type { PairAir } from './pairs.ts';

joinSure();

/** Whether the humidities of a record are of the kind that the job reads; they are where it has not said which. */
export function sameMeasure(job: Job, measure: HumidityMeasure): boolean {
  return said(job, 'humidityAs') === null || measuredHere(job)[1] === measure;
}

/**
 * The edits that put these readings in the place of the lines of an air, a digit finer than they are typed. Humidities of the
 * other kind than the job reads stay out: a measurement does not become another one.
 */
export function takenPairs(
  job: Job,
  air: PairAir,
  pairs: readonly ProbePair[],
  { measure, system, dated }: { readonly measure: HumidityMeasure; readonly system: System; readonly dated: boolean },
): readonly Edit[] {
  const whole = pairs.every(({ entering, leaving }) => entering.humidity !== null && leaving.humidity !== null);
  const humid = whole && sameMeasure(job, measure);
  const wet = measure === 'wetBulb';
  const dryBulb = columnOf('state.dryBulb', system);
  const humidity = columnOf(wet ? 'state.wetBulb' : 'state.relativeHumidity', system);
  const columns = (['entering', 'leaving'] as const).flatMap((place) => [
    { key: `${place}DryBulb`, unit: dryBulb.unit },
    ...(humid ? [{ key: `${place}${wet ? 'WetBulb' : 'RelativeHumidity'}`, unit: humidity.unit }] : []),
  ]);
  const texts = (reading: ProbeReading) => [
    dryBulb.text(reading.dryBulb),
    ...(humid ? [humidity.text(reading.humidity as number)] : []),
  ];
  const rows = pairs.map(({ time, entering, leaving }) => [
    dated ? new Date(time * 1000).toISOString() : '',
    ...texts(entering),
    ...texts(leaving),
  ]);
  const to = { columns: [{ key: 'time', unit: 'count' as const }, ...columns], rows };
  return [
    { slot: 'tables', key: `pairs.${air}`, to },
    ...(humid && said(job, 'humidityAs') === null ? [{ slot: 'chosen', key: 'humidityAs', to: measure } as const] : []),
    ...(said(job, 'sideBySide') === null ? [{ slot: 'chosen', key: 'sideBySide', to: 'yes' } as const] : []),
  ];
}

function columnOf(key: QuantityKey, system: System): { readonly unit: UnitKey; readonly text: (si: number) => string } {
  const unit = unitOf(key, system);
  const decimals = quantityOf(key).decimals[system] + 1;
  return { unit, text: (si) => format(si, unit, decimals) };
}
