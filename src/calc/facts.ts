import type { RatingHere } from './expectedHere.ts';
import type { MeasuredFlow } from './measuredFlow.ts';
import type { ProbeSpread } from './probeSpread.ts';
import type { Amount, CoilLoad, Expectation, MoistAir, Ratio, Remark, Test } from './types.ts';

/** What is known of a test when its remarks are made; `null` where it is not known yet. */
export interface Facts {
  readonly test: Test;
  readonly entering: MoistAir | null;
  readonly leaving: MoistAir | null;
  readonly spread: ProbeSpread | null;
  readonly flow: MeasuredFlow | null;
  readonly load: CoilLoad | null;
  readonly rating: RatingHere | null;
  readonly expected: Expectation | null;
  readonly ratio: Ratio | null;
}

/** One row of the table of remarks: when it is made, and with which amounts; `null` says that there is nothing to remark. */
export interface Rule {
  readonly code: string;
  readonly weight: Remark['weight'];
  readonly about: Remark['about'];
  readonly amounts: (facts: Facts) => readonly Amount[] | null;
}

/** The remarks that rules make. A value that is no number makes none: that is the problem of its field. */
export function remarksBy(rules: readonly Rule[], facts: Facts): readonly Remark[] {
  return rules.flatMap(({ code, weight, about, amounts }): Remark[] => {
    const list = amounts(facts);
    return list?.every(({ value }) => Number.isFinite(value)) ? [{ code, weight, about, amounts: list }] : [];
  });
}

/** Stops first, then doubts, then notes; of one weight in the order in which they were made. */
export function ranked(remarks: readonly Remark[]): readonly Remark[] {
  const rank = { stop: 0, doubt: 1, note: 2 } as const;
  return [...remarks].sort((a, b) => rank[a.weight] - rank[b.weight]);
}
