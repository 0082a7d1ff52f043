import { resultsOf } from '../assess.ts';
import { CalcError } from '../errors.ts';
import { attempt } from '../outcome.ts';
import { corrected } from '../sideBySide.ts';
import type { Budget, Outcome, Test } from '../types.ts';
import { combined } from './budget.ts';
import type { Effect } from './effects.ts';
import { type TestEffects, testEffects } from './sure.ts';

/** A result with what each of its causes of error does to it, signs and all. */
export interface Found {
  readonly value: number;
  readonly effects: readonly Effect[];
}

/**
 * What may have been the same at two tests, and which causes of error come with it. What differs from reading to reading
 * (scatter, flutter, a check side by side, the weather) is never the same, nor is reading a table between other rows.
 */
export const sameCauses = {
  /** The two probes, each in its place. */
  probes: (name: string) => /^(entering|leaving|shared)\./.test(name),
  /** The instrument of the airflow, used in the same way at the same place. */
  airflow: (name: string) => /^airflow\b/.test(name) && !/flutter|clocking/.test(name),
  /** Where the supply probe sat: how far its air is from the mean of the plane. */
  place: (name: string) => name === 'supplyMixing',
  /** The system with its table, its lines, its blower. */
  system: (name: string) => /^(rating\.|blower)/.test(name) && name !== 'rating.interpolation',
} as const;

export type SameCause = keyof typeof sameCauses;

/**
 * The difference of two results, the later less the earlier, to first order (JCGM 100:2008, 5.2.2 and F.1.2.3): a cause that
 * both share is one error that moves both, and only what it does to them differently is left; every other cause counts twice,
 * once for each. Of several causes of one name the first goes with the first, the second with the second.
 */
export function differenceOf(
  before: Found,
  after: Found,
  isShared: (name: string) => boolean,
  confidence: number,
): Budget {
  const waiting = new Map<string, Effect[]>();
  for (const effect of before.effects) waiting.set(effect.name, [...(waiting.get(effect.name) ?? []), effect]);
  const effects: Effect[] = [];
  for (const effect of after.effects) {
    const same = isShared(effect.name) ? waiting.get(effect.name)?.shift() : undefined;
    // The same name would put an unshared cause of both tests together as one with common degrees of freedom.
    effects.push(same ? { ...effect, u: effect.u - same.u } : { ...effect, name: `after.${effect.name}` });
  }
  for (const left of [...waiting.values()].flat()) effects.push({ ...left, name: `before.${left.name}` });
  const lost = effects.find(({ u }) => !Number.isFinite(u));
  if (lost) throw new CalcError('notFinite', lost.name, lost.u, -Infinity, Infinity);
  return combined(after.value - before.value, effects, confidence);
}

export interface Difference {
  /** Of the shares of what each should make; `null` where one of them has none. */
  readonly ratio: Budget | null;
  /** Of what was measured, W. */
  readonly total: Budget;
}

/**
 * Two tests compared: whether the later differs from the earlier by more than the two together are unsure. A probe that was
 * checked side by side at one test only had another error at the other: then the probes count as different ones. Bad arguments
 * are a `Problem`.
 */
export function compareTests(
  earlier: Test,
  later: Test,
  same: readonly SameCause[],
  confidence: number,
): Outcome<Difference> {
  const found = attempt(() => {
    const [before, after] = [workedOut(earlier), workedOut(later)];
    if (!before.ok) return before;
    if (!after.ok) return after;
    const alike = isChecked(before.value) === isChecked(after.value);
    const counted = same.filter((one) => one !== 'probes' || alike);
    const isShared = (name: string) => counted.some((one) => sameCauses[one](name));
    const of = (what: 'ratio' | 'total') => {
      const [first, second] = [before.value[what], after.value[what]];
      return first && second ? differenceOf(first, second, isShared, confidence) : null;
    };
    return { ok: true as const, value: { ratio: of('ratio'), total: of('total') as Budget } };
  });
  return found.ok ? found.value : found;
}

function workedOut(read: Test): Outcome<TestEffects> {
  const test = corrected(read);
  return testEffects(test, resultsOf(test));
}

const isChecked = ({ total }: TestEffects) => total.effects.some(({ name }) => name === 'shared.dryBulb');
