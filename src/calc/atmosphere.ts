import { standardPressureAtSeaLevel } from './constants.ts';
import { within } from './errors.ts';
import { equationRanges } from './limits.ts';

const lapse = 2.25577e-5;
const exponent = 5.2559;

/** Station pressure of the standard atmosphere, Pa, at an altitude in m. ASHRAE Fundamentals ch. 1, Eq. 3. */
export function standardPressure(altitude: number): number {
  within('altitude', altitude, equationRanges.standardPressure);
  return standardPressureAtSeaLevel * (1 - lapse * altitude) ** exponent;
}
