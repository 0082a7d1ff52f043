import type { Interval } from '../types.ts';

/** Mean, standard deviation and range of draws. Their order is not kept. */
export function rangeOf(
  draws: Float64Array,
  confidence: number,
): { readonly value: number; readonly u: number; readonly interval: Interval } {
  let sum = 0;
  for (let i = 0; i < draws.length; i++) sum += draws[i] as number;
  const mean = sum / draws.length;
  let square = 0;
  for (let i = 0; i < draws.length; i++) square += ((draws[i] as number) - mean) ** 2;
  return { value: mean, u: Math.sqrt(square / (draws.length - 1)), interval: intervalOf(draws, confidence) };
}

/** The 1 − p and the p point of draws. Their order is not kept. */
export function intervalOf(draws: Float64Array, confidence: number): Interval {
  const from = pointOf(1 - confidence, draws.length);
  const low = smallest(draws, from, 0);
  const high = smallest(draws, pointOf(confidence, draws.length), from);
  return { probability: confidence, k: null, low, high };
}

/** The place of a quantile among `n` draws in order; 0 < p < 1 keeps it among them. */
function pointOf(p: number, n: number): number {
  return Math.round(p * n - 0.5);
}

/**
 * The value that would stand at `place` if the draws were in order, those before `from` being the smallest already; puts
 * smaller ones before it and larger ones behind.
 * C. A. R. Hoare's selection (Algorithm 65, 1961), the pivot the middle one of three.
 */
function smallest(draws: Float64Array, place: number, from: number): number {
  let left = from;
  let right = draws.length - 1;
  while (left < right) {
    const pivot = middleOf(draws[left] as number, draws[(left + right) >> 1] as number, draws[right] as number);
    let i = left - 1;
    let j = right + 1;
    for (;;) {
      do i++;
      while ((draws[i] as number) < pivot);
      do j--;
      while ((draws[j] as number) > pivot);
      if (i >= j) break;
      const swapped = draws[i] as number;
      draws[i] = draws[j] as number;
      draws[j] = swapped;
    }
    if (place <= j) right = j;
    else left = j + 1;
  }
  return draws[place] as number;
}

function middleOf(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
