import { CalcError, toProblem } from './errors.ts';
import type { Outcome, Problem } from './types.ts';

export type Failure = Extract<Outcome<never>, { readonly ok: false }>;

/** Still waits for these fields of the test. */
export function waitingFor(...fields: readonly string[]): Failure {
  return { ok: false, waiting: fields, problem: null };
}

/** The value of a piece of work, or its `CalcError` as a `Problem`; `field` names the quantity as the test does. */
export function attempt<T>(work: () => T, field: (quantity: string) => string = (quantity) => quantity): Outcome<T> {
  try {
    return { ok: true, value: work() };
  } catch (error) {
    if (!(error instanceof CalcError)) throw error;
    return { ok: false, waiting: [], problem: asPlain(toProblem(error), field) };
  }
}

/** Numbers that JSON cannot keep become 0: the code says already that there was no number. */
function asPlain(problem: Problem, field: (quantity: string) => string): Problem {
  const kept = (value: number) => (Number.isFinite(value) ? value : 0);
  const { code, quantity, value, min, max } = problem;
  return { code, quantity: field(quantity), value: kept(value), min: kept(min), max: kept(max) };
}

/** One failure of several outcomes of which at least one is not there. */
export function failureOf(...outcomes: readonly Outcome<unknown>[]): Failure {
  return lacking(...outcomes) ?? waitingFor();
}

/** What several outcomes together still wait for, each field once, and the first problem; `null` when all are there. */
export function lacking(...outcomes: readonly Outcome<unknown>[]): Failure | null {
  const failures = outcomes.filter((outcome): outcome is Failure => !outcome.ok);
  if (failures.length === 0) return null;
  return {
    ok: false,
    waiting: [...new Set(failures.flatMap(({ waiting }) => waiting))],
    problem: failures.find(({ problem }) => problem)?.problem ?? null,
  };
}

export function orNull<T>(outcome: Outcome<T>): T | null {
  return outcome.ok ? outcome.value : null;
}
