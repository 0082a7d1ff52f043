import { defaultBlowerPower } from './blowerHeat.ts';
import { blowerHere, kindOf } from './blowerHere.ts';
import { given } from './readings.ts';
import { prefixed } from './trace.ts';
import type { Test, Trace } from './types.ts';

/** Blower powers that a test is worked out with, W. */
export interface Blowers {
  /** This system's own. */
  readonly here: number;
  /** Inside the rating. */
  readonly inside: number;
  /** Which of the two nobody has given. */
  readonly assumed: 'none' | 'here' | 'inside' | 'both' | 'bothByKind';
}

/**
 * Both blowers. Where only one is known the other is the default for its airflow. Where neither is known and nobody knows their
 * kinds, both are taken equal, so that in a net table they cancel and nothing is corrected. A gross table has none inside.
 */
export function blowersOf(
  test: Test,
  rating: NonNullable<Test['rating']>,
  dryAirFlow: number | undefined,
  t?: Trace,
): Blowers {
  const here = blowerHere(test, dryAirFlow ?? null);
  const known = given(test.blower.power);
  if (rating.basis === 'gross') return { here, inside: 0, assumed: known ? 'none' : 'here' };
  if (given(rating.blowerPower)) return { here, inside: rating.blowerPower, assumed: known ? 'none' : 'here' };
  if (!known && !given(test.blower.kind) && !given(rating.blowerKind)) return { here, inside: here, assumed: 'both' };
  // Without an airflow in the table that of this system is there: `needsFlow` has waited for it.
  const stated = (rating.rows[0]?.dryAirFlow ?? rating.generic?.dryAirFlow ?? dryAirFlow) as number;
  const inside = defaultBlowerPower(stated, kindOf(rating.blowerKind), prefixed(t, 'rating'));
  return { here, inside, assumed: known ? 'inside' : 'bothByKind' };
}
