import { given } from './readings.ts';
import type { AirReading, SideBySide, Test } from './types.ts';
import { fahrenheitDegree } from './units.ts';

/** How a probe says its humidity. */
export type HumidityMeasure = 'relativeHumidity' | 'wetBulb';

/** What remains of each probe's own error after a side-by-side check, standard uncertainties. Common practice, no source. */
export const remainingErrors = {
  dryBulb: 0.2 * fahrenheitDegree,
  relativeHumidity: 0.007,
  wetBulb: 0.2 * fahrenheitDegree,
} as const;

export function measureOf({ wetBulb }: AirReading): HumidityMeasure {
  return given(wetBulb) ? 'wetBulb' : 'relativeHumidity';
}

/** How much of a difference each reading is moved by: half, or all of it onto a probe that is taken as right. */
export function weightsOf(reference: SideBySide['reference']): { readonly entering: number; readonly leaving: number } {
  if (reference === 'entering') return { entering: 0, leaving: 1 };
  if (reference === 'leaving') return { entering: 1, leaving: 0 };
  return { entering: 0.5, leaving: 0.5 };
}

/** Whether a side-by-side check said something of the humidity that a test reads: both probes in one measure. */
export function humidityCompared({ sideBySide, entering, leaving }: Test): boolean {
  return given(sideBySide?.returnAir.humidity) && measureOf(entering) === measureOf(leaving);
}

/**
 * A test with its readings moved by what the side-by-side check found: the return probe by the difference in return air, the
 * supply probe by that in supply air, where it was looked at there; and both by the error that a standard showed them to share.
 * A humidity is not moved beyond saturation.
 */
export function corrected(test: Test): Test {
  const { sideBySide, entering, leaving } = test;
  if (!given(sideBySide)) return test;
  const { returnAir, supplyAir, reference, shared } = sideBySide;
  const weights = weightsOf(reference);
  const compared = humidityCompared(test);
  const inSupply = {
    dryBulb: supplyAir?.dryBulb ?? returnAir.dryBulb,
    humidity: supplyAir?.humidity ?? returnAir.humidity ?? 0,
  };
  const error = shared?.error;
  const dryBulb = error?.dryBulb ?? 0;
  const humidity = error?.humidity ?? 0;
  return {
    ...test,
    entering: moved(
      entering,
      -weights.entering * returnAir.dryBulb - dryBulb,
      compared ? -weights.entering * (returnAir.humidity ?? 0) - humidity : 0,
    ),
    leaving: moved(
      leaving,
      weights.leaving * inSupply.dryBulb - dryBulb,
      compared ? weights.leaving * inSupply.humidity - humidity : 0,
    ),
  };
}

function moved(reading: AirReading, dryBulbStep: number, humidityStep: number): AirReading {
  const dryBulb = given(reading.dryBulb) ? reading.dryBulb + dryBulbStep : reading.dryBulb;
  const { relativeHumidity, wetBulb } = reading;
  return {
    dryBulb,
    relativeHumidity: given(relativeHumidity) ? upTo(1, relativeHumidity, humidityStep) : relativeHumidity,
    wetBulb: given(wetBulb) && given(dryBulb) ? upTo(dryBulb, wetBulb, humidityStep) : wetBulb,
  };
}

/** A correction stops at saturation. A reading that was beyond it before is the problem of its own field. */
function upTo(most: number, reading: number, step: number): number {
  return reading > most ? reading : Math.min(most, reading + step);
}
