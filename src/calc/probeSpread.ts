import { humidityRatio } from './humidityRatio.ts';
import { given } from './readings.ts';
import type { AirReading, MoistAir, Test } from './types.ts';
import { humidityRatioFromWetBulb } from './wetBulb.ts';

/** Nine chances in ten that the truth lies on this side: the 90 % point of the normal distribution. */
const nineInTen = 1.282;
/** Step of the finite differences: K, or a fraction of relative humidity. */
const step = 1e-4;

/** What two probes cannot tell from zero, nine times in ten. */
export interface ProbeSpread {
  /** Difference of two dry bulbs, K. */
  readonly dryBulb: number;
  /** Difference of two humidity ratios, kg/kg dry air. */
  readonly humidityRatio: number;
}

/**
 * How small a difference between the two probes can be seen. Each limit is the half-width of a rectangular distribution
 * (u = limit/√3, JCGM 100, 4.3.7), each probe errs on its own, and the humidity ratio is taken to first order by finite
 * differences. `null` when the limits are no numbers of zero or more.
 */
export function probeSpread(test: Test, entering: MoistAir, leaving: MoistAir): ProbeSpread | null {
  const { dryBulb, relativeHumidity, wetBulb } = test.probeLimits;
  if (![dryBulb, relativeHumidity, wetBulb].every((limit) => Number.isFinite(limit) && limit >= 0)) return null;
  const variance = ratioVariance(test, test.entering, entering) + ratioVariance(test, test.leaving, leaving);
  return {
    dryBulb: nineInTen * Math.sqrt(2 / 3) * dryBulb,
    humidityRatio: nineInTen * Math.sqrt(variance),
  };
}

/** Variance of the humidity ratio at one probe. */
function ratioVariance({ probeLimits }: Test, reading: AirReading, air: MoistAir): number {
  const { dryBulb: t, wetBulb, relativeHumidity, humidityRatio: W, pressure: p } = air;
  if (given(reading.wetBulb)) {
    // The wet bulb is moved together with the dry bulb, because it may not rise above it.
    const byDryBulb = (humidityRatioFromWetBulb(t + step, wetBulb, p) - W) / step;
    const byBoth = (humidityRatioFromWetBulb(t + step, wetBulb + step, p) - W) / step;
    return ((byDryBulb * probeLimits.dryBulb) ** 2 + ((byBoth - byDryBulb) * probeLimits.wetBulb) ** 2) / 3;
  }
  const byDryBulb = (humidityRatio(t + step, relativeHumidity, p) - W) / step;
  const drier = relativeHumidity > 0.5 ? -step : step;
  const byHumidity = (humidityRatio(t, relativeHumidity + drier, p) - W) / drier;
  return ((byDryBulb * probeLimits.dryBulb) ** 2 + (byHumidity * probeLimits.relativeHumidity) ** 2) / 3;
}
