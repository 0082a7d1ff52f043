import { humidityRatio } from './humidityRatio.ts';
import { given } from './readings.ts';
import { humidityCompared, measureOf, remainingErrors } from './sideBySide.ts';
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
 * (u = limit/√3, JCGM 100, 4.3.7), and the humidity ratio is taken to first order by finite differences. Unchecked, each probe
 * errs on its own; after a side-by-side check both share that error, and each keeps a small remainder. `null` when the limits
 * are no numbers of zero or more.
 */
export function probeSpread(test: Test, entering: MoistAir, leaving: MoistAir): ProbeSpread | null {
  const { dryBulb, relativeHumidity, wetBulb } = test.probeLimits;
  if (![dryBulb, relativeHumidity, wetBulb].every((limit) => Number.isFinite(limit) && limit >= 0)) return null;
  const slopes = [slopesOf(test.entering, entering), slopesOf(test.leaving, leaving)] as const;
  const checked = given(test.sideBySide);
  const shared = (one: number, other: number) => (checked ? (one - other) ** 2 : one ** 2 + other ** 2);
  const humidityShared = humidityCompared(test);
  const of = (reading: AirReading) => test.probeLimits[measureOf(reading)];
  const rest = remainingErrors;
  const temperature =
    shared(slopes[0].dryBulb * dryBulb, slopes[1].dryBulb * dryBulb) / 3 +
    (checked ? (slopes[0].dryBulb ** 2 + slopes[1].dryBulb ** 2) * rest.dryBulb ** 2 : 0);
  const [first, second] = [slopes[0].humidity * of(test.entering), slopes[1].humidity * of(test.leaving)];
  const humidity = humidityShared
    ? (first - second) ** 2 / 3 +
      (slopes[0].humidity ** 2 + slopes[1].humidity ** 2) * rest[measureOf(test.entering)] ** 2
    : (first ** 2 + second ** 2) / 3;
  return {
    dryBulb: nineInTen * Math.SQRT2 * (checked ? rest.dryBulb : dryBulb / Math.sqrt(3)),
    humidityRatio: nineInTen * Math.sqrt(temperature + humidity),
  };
}

/** How the humidity ratio at a probe goes with its two readings. */
function slopesOf(reading: AirReading, air: MoistAir): { readonly dryBulb: number; readonly humidity: number } {
  const { dryBulb: t, wetBulb, relativeHumidity, humidityRatio: W, pressure: p } = air;
  if (given(reading.wetBulb)) {
    // The wet bulb is moved together with the dry bulb, because it may not rise above it.
    const dryBulb = (humidityRatioFromWetBulb(t + step, wetBulb, p) - W) / step;
    const both = (humidityRatioFromWetBulb(t + step, wetBulb + step, p) - W) / step;
    return { dryBulb, humidity: both - dryBulb };
  }
  const drier = relativeHumidity > 0.5 ? -step : step;
  return {
    dryBulb: (humidityRatio(t + step, relativeHumidity, p) - W) / step,
    humidity: (humidityRatio(t, relativeHumidity + drier, p) - W) / drier,
  };
}
