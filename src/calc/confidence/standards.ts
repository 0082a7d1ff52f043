import type { HumidityMeasure } from '../sideBySide.ts';
import { fahrenheitDegree } from '../units.ts';

/**
 * What a probe can be held against, and the half-width to which that is known. The limits are common practice, no source; the
 * humidity over saturated table salt at 25 °C (Greenspan 1977, J. Res. NBS 81A) is from memory.
 */
export const standards = {
  salt: { relativeHumidity: 0.753, limit: 0.01 },
  aspirated: { limit: { relativeHumidity: 0.01, wetBulb: 0.3 * fahrenheitDegree } },
  iceBath: { dryBulb: 0, limit: 0.2 * fahrenheitDegree },
} as const satisfies {
  salt: object;
  aspirated: { limit: Readonly<Record<HumidityMeasure, number>> };
  iceBath: object;
};

/** By how much of itself an error found in a standard may differ in the air of a test. Our judgement. */
const carriedOver = 0.25;

/** What the probes showed of a standard, less what it is; `null`: not held against it. */
export interface Shown {
  readonly entering: number | null;
  readonly leaving: number | null;
}

export interface HeldAgainst {
  /** The error that both share once the difference between them is taken off. */
  readonly error: number;
  /** What of it is taken off both readings: all of it, or nothing. */
  readonly correction: number;
  /** Half-width of what is left of the shared error. */
  readonly limit: number;
}

/**
 * What a standard says of the error that two probes share, `difference` being the return probe less the supply probe and
 * `leavingShare` how much of it the supply reading is moved by. One probe is enough: the other is told by the difference. A known
 * systematic effect is corrected, and the uncertainty of the correction kept (JCGM 100:2008, 3.2.4, 6.3.1): so is an error larger
 * than the standard's own limit. A smaller one cannot be told from none; it stays where it is, as part of the limit, which is never
 * wider than that of the probes. `null` where neither was held against it.
 */
export function heldAgainst(
  { entering, leaving }: Shown,
  difference: number,
  leavingShare: number,
  { standard, probes }: { readonly standard: number; readonly probes: number },
): HeldAgainst | null {
  if (entering === null && leaving === null) return null;
  const first = entering ?? (leaving as number) + difference;
  const second = leaving ?? (entering as number) - difference;
  // Each reading is moved onto this mean of the two probes.
  const error = leavingShare * first + (1 - leavingShare) * second;
  const size = Math.abs(error);
  return size > standard
    ? { error, correction: error, limit: standard + carriedOver * size }
    : { error, correction: 0, limit: Math.min(probes, standard + size) };
}
