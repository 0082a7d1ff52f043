import { within } from '../errors.ts';
import type { ErrorSource, Interval } from '../types.ts';
import { confidenceRange, type Model, resultOf, usualConfidence } from './budget.ts';
import { rangeOf } from './rangeOf.ts';
import { sampler, take } from './sampler.ts';

export interface SimulateOptions<Input extends string> {
  readonly draws: number;
  readonly seed: number;
  /** Whether a draw can be at all; one that cannot is drawn again and counted. Left out, only the model says so. */
  readonly within?: (inputs: Readonly<Record<Input, number>>) => boolean;
  readonly confidence?: number;
}

export interface Simulated {
  /** Mean and standard deviation of the draws. */
  readonly value: number;
  readonly u: number;
  readonly interval: Interval;
  readonly draws: number;
  readonly redrawn: number;
}

/** How many draws a range can be counted from. */
export const drawRange = [100, 1e7] as const;

/**
 * The uncertainty of a result by Monte Carlo (JCGM 101:2008, clause 7), the same for the same seed. A draw that `within`
 * refuses, or for which the model throws a `CalcError` or gives no number, is drawn again and counted. The range runs from the
 * 1 − p to the p point of the draws. Throws what `budget` throws for a bad cause, and `hardlyPossible` when nearly every draw
 * has to be made again.
 */
export function simulate<Input extends string>(
  model: Model<Input>,
  at: Readonly<Record<Input, number>>,
  sources: readonly ErrorSource<Input>[],
  options: SimulateOptions<Input>,
): Simulated {
  const { draws, seed, within: can, confidence = usualConfidence } = options;
  within('draws', draws, drawRange);
  within('confidence', confidence, confidenceRange);
  const inputs = Object.keys(at) as Input[];
  const values = new Float64Array(inputs.length);
  const point: Record<Input, number> = { ...at };
  const results = new Float64Array(Math.floor(draws));
  const base = Float64Array.from(inputs, (input) => at[input]);
  const redrawn = take(sampler(inputs, base, sources, seed), values, results.length, (kept) => {
    for (let i = 0; i < inputs.length; i++) point[inputs[i] as Input] = values[i] as number;
    if (can && !can(point)) return false;
    const result = resultOf(model, point);
    results[kept] = result;
    return Number.isFinite(result);
  });
  return { ...rangeOf(results, confidence), draws: results.length, redrawn };
}
