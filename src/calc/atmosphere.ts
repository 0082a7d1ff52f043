import { standardPressureAtSeaLevel } from './constants.ts';
import { within } from './errors.ts';
import { equationRanges } from './limits.ts';
import { amount } from './trace.ts';
import type { Trace } from './types.ts';

const lapse = 2.25577e-5;
const exponent = 5.2559;

/** Station pressure of the standard atmosphere, Pa, at an altitude in m. ASHRAE Fundamentals ch. 1, Eq. 3. */
export function standardPressure(altitude: number, t?: Trace): number {
  within('altitude', altitude, equationRanges.standardPressure);
  const pressure = standardPressureAtSeaLevel * (1 - lapse * altitude) ** exponent;
  t?.({
    id: 'standardPressure',
    equation: 'p = p₀·(1 − Z/Z₀)ⁿ',
    puts: [
      amount('p₀', 'pressure', standardPressureAtSeaLevel),
      amount('Z', 'length', altitude),
      amount('Z₀', 'length', 1 / lapse),
      amount('n', 'ratio', exponent),
    ],
    gives: amount('p', 'pressure', pressure),
    source: 'handbookPsychrometrics',
  });
  return pressure;
}
