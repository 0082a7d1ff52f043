/** Round steps, and the round values that lie in a range. */

/** The smallest of 1, 2, 5, 10 … (times any power of ten) that is not below `least`. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const share = least / power;
  return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
}

/** The multiples of `step` from `low` to `high`, both included; rounding may not lose the last one. */
export function roundValues(low: number, high: number, step: number): number[] {
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => decimal((first + i) * step, step));
}

/** Decimals that a multiple of a step needs. */
export const decimalsOf = (step: number): number => Math.max(0, -Math.floor(Math.log10(step) + 1e-9));

/** Free of the dust of floating point: 0.30000000000000004 is 0.3. */
const decimal = (value: number, step: number): number => Number(value.toFixed(decimalsOf(step)));
