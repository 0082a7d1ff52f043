import { CalcError, within } from '../errors.ts';
import type { Budget, ErrorSource } from '../types.ts';
import { type Effect, effectsOf } from './effects.ts';
import { studentQuantile } from './student.ts';

/** What a result is worked out with: numbers in, a number out. Throws a `CalcError` for inputs that cannot be. */
export type Model<Input extends string> = (inputs: Readonly<Record<Input, number>>) => number;

/** Chances that a range may be asked for: its ends need a few draws beyond them. */
export const confidenceRange = [0.5, 0.999] as const;
/** Nine chances in ten on either side. */
export const usualConfidence = 0.9;

/**
 * The uncertainty of a result to first order (JCGM 100:2008, 5.1). Causes are independent of one another, so variances add up;
 * one that is shared moves all of its inputs together. Effective degrees of freedom by Welch and Satterthwaite (G.4.1), one
 * term a name. The range runs from the 1 − p to the p point, each end one-sided, by Student's t.
 *
 * Throws what the model throws at the point itself, `missing` for a cause that moves an input that is not there, `outOfRange`
 * for an uncertainty below nothing, and `notFinite` where the model cannot go to either side.
 */
export function budget<Input extends string>(
  model: Model<Input>,
  at: Readonly<Record<Input, number>>,
  sources: readonly ErrorSource<Input>[],
  { confidence = usualConfidence }: { readonly confidence?: number } = {},
): Budget {
  within('confidence', confidence, confidenceRange);
  const value = model(at);
  if (!Number.isFinite(value)) throw new CalcError('notFinite', 'model', value, -Infinity, Infinity);
  const inputs = Object.keys(at) as Input[];
  const point: Record<Input, number> = { ...at };
  const work = (values: Float64Array, out: Float64Array) => {
    for (let i = 0; i < inputs.length; i++) point[inputs[i] as Input] = values[i] as number;
    out[0] = resultOf(model, point);
  };
  const base = Float64Array.from(inputs, (input) => at[input]);
  const [effects = []] = effectsOf(work, inputs, base, Float64Array.of(value), sources);
  const lost = effects.find(({ u }) => !Number.isFinite(u));
  if (lost) throw new CalcError('notFinite', lost.name, lost.u, -Infinity, Infinity);
  return combined(value, effects, confidence);
}

/** The result, not a number where the model says that there is none. */
export function resultOf<Input extends string>(model: Model<Input>, point: Readonly<Record<Input, number>>): number {
  try {
    return model(point);
  } catch (error) {
    if (error instanceof CalcError) return Number.NaN;
    throw error;
  }
}

/** Independent effects put together around a value. */
export function combined(value: number, effects: readonly Effect[], confidence: number): Budget {
  const variances = new Map<string, { variance: number; degreesOfFreedom: number | null }>();
  for (const { name, u, degreesOfFreedom } of effects) {
    const known = variances.get(name) ?? { variance: 0, degreesOfFreedom };
    variances.set(name, { ...known, variance: known.variance + u * u });
  }
  const lines = [...variances].map(([name, line]) => ({ name, ...line }));
  const variance = lines.reduce((sum, line) => sum + line.variance, 0);
  const terms = lines.reduce(
    (sum, line) => (line.degreesOfFreedom === null ? sum : sum + line.variance ** 2 / line.degreesOfFreedom),
    0,
  );
  const degreesOfFreedom = terms > 0 ? variance ** 2 / terms : null;
  const u = Math.sqrt(variance);
  const k = studentQuantile(confidence, degreesOfFreedom);
  const shares = lines.map((line) => ({
    name: line.name,
    u: Math.sqrt(line.variance),
    share: variance > 0 ? line.variance / variance : 0,
  }));
  return {
    value,
    u,
    degreesOfFreedom,
    interval: { probability: confidence, k, low: value - k * u, high: value + k * u },
    shares: shares.sort((a, b) => b.share - a.share),
  };
}
