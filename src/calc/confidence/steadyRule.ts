import { fahrenheitDegree, inchOfWater } from '../units.ts';
import type { LogColumn } from './logColumns.ts';

/** When a test is taken to be steady. Times in s. */
export interface SteadyRule {
  /** After full stage and full airflow, and after every change. */
  readonly settle: number;
  /** Over which the readings are looked at: several turns of the expansion valve. */
  readonly window: number;
  readonly leastRows: number;
  /** The longest time without a reading. */
  readonly gap: number;
  /** Highest less lowest in that time. */
  readonly ranges: readonly { readonly column: LogColumn; readonly most: number }[];
  /** Change of the computed capacity in that time, relative. */
  readonly trend: number;
}

/**
 * Our rule. Fifteen minutes are common practice (and California's RA3.2.2); the ranges are in the spirit of the operating
 * tolerances of 10 CFR 430 appendix M1, from memory: 2 °F of dry bulb, 0.05 inch of water; the humidities are ours. The trend
 * catches a slow drift that stays inside every range.
 */
export const steadyRule: SteadyRule = {
  settle: 900,
  window: 600,
  leastRows: 5,
  gap: 180,
  ranges: [
    { column: 'entering.dryBulb', most: 2 * fahrenheitDegree },
    { column: 'leaving.dryBulb', most: 2 * fahrenheitDegree },
    { column: 'outdoorDryBulb', most: 2 * fahrenheitDegree },
    { column: 'supplyStatic', most: 0.05 * inchOfWater },
  ],
  trend: 0.02,
};
