import { resultsOf } from '../assess.ts';
import { CalcError } from '../errors.ts';
import { attempt } from '../outcome.ts';
import { corrected, measureOf, remainingErrors } from '../sideBySide.ts';
import type { Budget, Outcome, Test } from '../types.ts';
import { combined } from './budget.ts';
import { usual } from './defaults.ts';
import type { Effect } from './effects.ts';
import { type TestEffects, testEffects } from './sure.ts';

/** A result with what each of its causes of error does to it, signs and all. */
export interface Found {
  readonly value: number;
  readonly effects: readonly Effect[];
}

/** Whether a cause is in a group, and what of its uncertainty is a new error at each visit all the same: from nothing to all of it, 1. */
interface SameRule {
  readonly has: (name: string) => boolean;
  readonly own: (name: string, test: Test) => number;
}

/**
 * What may have been the same at two tests, and which causes of error come with it. What differs from reading to reading
 * (scatter, flutter, a check side by side, the weather) is never the same, nor is reading a table between other rows.
 */
export const sameCauses = {
  /** The two probes, each in its place. What a check side by side leaves to each of them is new at each visit. */
  probes: {
    has: (name) => /^(entering|leaving|shared)\./.test(name),
    own: (name, { probeLimits, entering }) => {
      if (name.startsWith('shared.')) return 0;
      const what = name.endsWith('dryBulb') ? 'dryBulb' : measureOf(entering);
      return Math.min(1, remainingErrors[what] / (probeLimits[what] / Math.sqrt(3)));
    },
  },
  /** The instrument of the airflow, used in the same way at the same place. */
  airflow: {
    has: (name) => /^airflow\b/.test(name) && !/flutter|clocking/.test(name),
    own: () => usual.newAtEachVisit.airflow,
  },
  /** Where the supply probe sat: how far its air is from the mean of the plane. */
  place: { has: (name) => name === 'supplyMixing', own: () => usual.newAtEachVisit.supplyMixing },
  /** The system with its table, its lines, its blower. */
  system: { has: (name) => /^(rating\.|blower)/.test(name) && name !== 'rating.interpolation', own: () => 0 },
} as const satisfies Readonly<Record<string, SameRule>>;

export type SameCause = keyof typeof sameCauses;

/**
 * The difference of two results, the later less the earlier, to first order (JCGM 100:2008, 5.2.2 and F.1.2.3): a cause that
 * both share is one error that moves both, and only what it does to them differently is left; every other cause counts twice,
 * once for each. Of several causes of one name the first goes with the first, the second with the second. `ownOf` says what of
 * a cause is new at each of the two, from 0 (all of it is shared) to 1 (it is none that they share).
 */
export function differenceOf(before: Found, after: Found, ownOf: (name: string) => number, confidence: number): Budget {
  const waiting = new Map<string, Effect[]>();
  for (const effect of before.effects) waiting.set(effect.name, [...(waiting.get(effect.name) ?? []), effect]);
  // The same name would put an unshared cause of both tests together as one with common degrees of freedom.
  const own = (when: string, effect: Effect, part: number): Effect => ({
    ...effect,
    name: `${when}.${effect.name}`,
    u: effect.u * part,
  });
  const effects = after.effects.flatMap((effect) => {
    const part = ownOf(effect.name);
    const same = part < 1 ? waiting.get(effect.name)?.shift() : undefined;
    if (!same) return [own('after', effect, 1)];
    const common = (effect.u - same.u) * Math.sqrt(1 - part * part);
    return [{ ...effect, u: common }, own('after', effect, part), own('before', same, part)];
  });
  for (const left of [...waiting.values()].flat()) effects.push(own('before', left, 1));
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
    // A probe that was checked keeps an error of its own that is new each time; what both probes share is in both tests or in none.
    const checked = isChecked(before.value) || isChecked(after.value);
    const ownOf = (name: string) => {
      const group = same.find((one) => sameCauses[one].has(name));
      if (!group || (checked && /^(entering|leaving)\./.test(name))) return 1;
      return (sameCauses[group] as SameRule).own(name, later);
    };
    const of = (what: 'ratio' | 'total') => {
      const [first, second] = [before.value[what], after.value[what]];
      return first && second ? differenceOf(first, second, ownOf, confidence) : null;
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
