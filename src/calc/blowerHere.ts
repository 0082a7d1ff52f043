import { blowerHeat, defaultBlowerPower } from './blowerHeat.ts';
import { given } from './readings.ts';
import type { Test, Trace } from './types.ts';

/** This system's own blower, W: its power as given, else the default for its airflow (kg/s), else none. */
export function blowerHere({ blower }: Test, dryAirFlow: number | null, t?: Trace): number {
  const power = given(blower.power) ? blower.power : dryAirFlow === null ? 0 : defaultBlowerPower(dryAirFlow, t);
  return blowerHeat({ power }, t);
}
