import { within } from './errors.ts';
import { equationRanges, limits } from './limits.ts';

/**
 * Coefficients of the enhancement factor f = 1 + A + p·[B + C·(t + D + E·p)²], °C and Pa. The form is Buck's (1981); the
 * figures are our own fit to two thirds of the real-gas states in tests/published (`node tests/published/printFit.ts` makes
 * them again). They also take up the bias of Eq. 5 and 6, up to 0.017 %: `f` times `saturationPressure` is closer to the
 * real gas than either alone.
 */
export const enhancement = { A: 3.109e-4, B: 3.813e-8, C: 5.447e-12, D: 48.31, E: -5.006e-4 } as const;

const { A, B, C, D, E } = enhancement;

/** The factor without a check of its arguments. */
export function factor(t: number, p: number): number {
  const shifted = t + D + E * p;
  return 1 + A + p * (B + C * shifted * shifted);
}

/** df/dt, 1/K. */
export function factorSlope(t: number, p: number): number {
  return 2 * p * C * (t + D + E * p);
}

/**
 * Enhancement factor: by how much more water vapour air holds at saturation than the saturation pressure alone says.
 * Temperature in °C, pressure in Pa. Form: A. L. Buck, J. Appl. Meteorol. 20, 1527 (1981); figures fitted to RP-1485.
 */
export function enhancementFactor(temperature: number, pressure: number): number {
  within('temperature', temperature, equationRanges.saturationPressure);
  within('pressure', pressure, limits.pressure);
  return factor(temperature, pressure);
}
