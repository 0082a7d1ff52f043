import { within } from './errors.ts';
import { equationRanges, limits } from './limits.ts';

/**
 * Coefficients of the enhancement factor for °C and bar (100 kPa). The form is Buck's (1981); the figures are our own fit to two
 * thirds of the real-gas states in tests/published (`node tests/published/printFit.ts` makes them again). They also
 * take up the bias of Eq. 5 and 6, 0 to 0.017 %, so `f` times `saturationPressure` is better than either.
 */
export const enhancement = { A: 0.0003109, B: 0.003813, C: 5.447e-7, D: 48.31, E: -50.06 } as const;

const { A, B, C, D, E } = enhancement;

/** The factor without a check of its arguments. */
export function factor(t: number, p: number): number {
  const bar = p * 1e-5;
  const shifted = t + D + E * bar;
  return 1 + A + bar * (B + C * shifted * shifted);
}

/** df/dt, 1/K. */
export function factorSlope(t: number, p: number): number {
  const bar = p * 1e-5;
  return 2 * bar * C * (t + D + E * bar);
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
