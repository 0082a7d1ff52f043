import { CalcError, within } from '../errors.ts';
import { confidenceRange, usualConfidence } from './budget.ts';
import { studentChance, studentQuantile } from './student.ts';

/** A measured value, its standard uncertainty, and how well that is known (`null`, or left out: without end). */
export interface Measured {
  readonly value: number;
  readonly u: number;
  readonly degreesOfFreedom?: number | null;
}

export interface Conformance {
  /** The chance that the truth lies within the limits. */
  readonly probability: number;
  /** Ends of what can be accepted with the confidence asked for: guarded on the inside. `null` where there is no limit. */
  readonly acceptFrom: number | null;
  readonly acceptTo: number | null;
  /** Ends of what cannot be rejected with it: guarded on the outside. */
  readonly rejectBelow: number | null;
  readonly rejectAbove: number | null;
}

/** Wide enough for anything, and no guard band leaves the numbers of a computer. */
const freedomRange = [0.1, Number.MAX_VALUE] as const;
const finite = [-1e100, 1e100] as const;

/**
 * Whether a measured value keeps to a lower limit, an upper one, or both (JCGM 106:2012, 7.3 and 8.3): the chance that it
 * does, and guard bands of k·u with k one-sided at `confidence`. Throws a `CalcError` without a limit, for limits that are not
 * in order, and for an uncertainty or degrees of freedom that are not above nothing.
 */
export function conformance(
  { value, u, degreesOfFreedom = null }: Measured,
  limits: { readonly lower?: number; readonly upper?: number; readonly confidence?: number },
): Conformance {
  const { lower, upper, confidence = usualConfidence } = limits;
  within('value', value, finite);
  within('u', u, [1e-100, finite[1]]);
  within('confidence', confidence, confidenceRange);
  if (degreesOfFreedom !== null) within('degreesOfFreedom', degreesOfFreedom, freedomRange);
  for (const limit of [lower, upper]) if (limit !== undefined) within('limit', limit, finite);
  if (lower === undefined && upper === undefined) throw new CalcError('missing', 'limits', 0, 1, 2);
  if (lower !== undefined && upper !== undefined && lower >= upper) {
    throw new CalcError('notAscending', 'upper', upper, lower, Number.MAX_VALUE);
  }
  const below = (limit: number) => studentChance((limit - value) / u, degreesOfFreedom);
  const guard = studentQuantile(confidence, degreesOfFreedom) * u;
  return {
    probability: (upper === undefined ? 1 : below(upper)) - (lower === undefined ? 0 : below(lower)),
    acceptFrom: lower === undefined ? null : lower + guard,
    acceptTo: upper === undefined ? null : upper - guard,
    rejectBelow: lower === undefined ? null : lower - guard,
    rejectAbove: upper === undefined ? null : upper + guard,
  };
}
