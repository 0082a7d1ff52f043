import { CalcError, within } from '../errors.ts';
import { limits } from '../limits.ts';
import type { HumidityMeasure } from '../sideBySide.ts';
import type { ProbeDifference } from '../types.ts';
import { type BatchMeans, batchMeans } from './batches.ts';
import { usual } from './defaults.ts';

export interface ProbeReading {
  readonly dryBulb: number;
  /** A fraction or °C, by the measure of the pair; `null`: only the temperature was read. */
  readonly humidity: number | null;
}

/** Both probes at one moment in one air. */
export interface ProbePair {
  /** s, from any start. */
  readonly time: number;
  readonly entering: ProbeReading;
  readonly leaving: ProbeReading;
}

export interface Compared {
  /** The return probe less the supply probe, as a test takes it. */
  readonly difference: ProbeDifference;
  readonly pairs: number;
  /** Whether probes of the trade mostly agree that well. Even so the difference is worth applying. */
  readonly isCommon: boolean;
  /** By how much the difference moved from the first fifth of the readings to the last; `null` with fewer than five. */
  readonly drift: { readonly dryBulb: number; readonly humidity: number } | null;
}

const rounding = 1e-9;

/**
 * What two probes in one air differ by, from stamped readings in any order. Humidities are compared where every pair has both.
 * The mean of the differences has the uncertainty of five batch means. Throws a `CalcError`: `noRows` without a pair,
 * `outOfRange` or `notFinite` for a reading that is none.
 */
export function compareProbes(
  pairs: readonly ProbePair[],
  { measure }: { readonly measure: HumidityMeasure },
): Compared {
  if (pairs.length === 0) throw new CalcError('noRows', 'pairs', 0, 1, 1e6);
  for (const pair of pairs) checkPair(pair, measure);
  const ordered = [...pairs].sort((a, b) => a.time - b.time);
  const dryBulbs = ordered.map(({ entering, leaving }) => entering.dryBulb - leaving.dryBulb);
  const humidities = ordered.flatMap(({ entering, leaving }) =>
    entering.humidity === null || leaving.humidity === null ? [] : [entering.humidity - leaving.humidity],
  );
  const whole = humidities.length === pairs.length;
  const dryBulb = batchMeans(dryBulbs);
  const humidity = whole ? batchMeans(humidities) : null;
  const difference: ProbeDifference = {
    dryBulb: dryBulb?.mean ?? (dryBulbs[0] as number),
    humidity: whole ? (humidity?.mean ?? (humidities[0] as number)) : null,
    scatter: dryBulb && {
      dryBulb: dryBulb.u,
      humidity: humidity?.u ?? 0,
      degreesOfFreedom: dryBulb.degreesOfFreedom,
    },
  };
  return {
    difference,
    pairs: pairs.length,
    isCommon:
      Math.abs(difference.dryBulb) <= usual.difference.dryBulb + rounding &&
      Math.abs(difference.humidity ?? 0) <= usual.difference[measure] + rounding,
    drift: pairs.length < 5 ? null : { dryBulb: moved(dryBulb), humidity: moved(humidity) },
  };
}

/** From the first part to the last, without sign. */
function moved(means: BatchMeans | null): number {
  return means ? Math.abs((means.parts.at(-1) as number) - (means.parts[0] as number)) : 0;
}

function checkPair({ time, entering, leaving }: ProbePair, measure: HumidityMeasure): void {
  within('time', time, [-Number.MAX_VALUE, Number.MAX_VALUE]);
  for (const { dryBulb, humidity } of [entering, leaving]) {
    within('dryBulb', dryBulb, limits.dryBulb);
    if (humidity !== null) within(measure, humidity, limits[measure]);
  }
}
