import { blowerHeat, defaultBlowerPower } from './blowerHeat.ts';
import { given } from './readings.ts';
import type { BlowerKind, Test, Trace } from './types.ts';

/** What stands for a kind that nobody knows. */
export const kindOf = (kind: BlowerKind | null | undefined): BlowerKind => kind ?? 'ratedCoilOnly';

/** This system's own blower, W: its power as given, else the default for its motor and airflow (kg/s), else none. */
export function blowerHere({ blower }: Test, dryAirFlow: number | null, t?: Trace): number {
  const power = given(blower.power)
    ? blower.power
    : dryAirFlow === null
      ? 0
      : defaultBlowerPower(dryAirFlow, kindOf(blower.kind), t);
  return blowerHeat({ power }, t);
}
