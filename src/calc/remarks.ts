import { airflowRules } from './airflowRemarks.ts';
import { airRules } from './airRemarks.ts';
import type { Facts, Rule } from './facts.ts';
import { figureRemarks } from './figureRemarks.ts';
import { ratingRules } from './ratingRemarks.ts';
import type { Remark } from './types.ts';

/** Every remark that a test can get, in the order in which they are made. */
export const remarkRules: readonly Rule[] = [...airRules, ...airflowRules, ...ratingRules];

/**
 * What is odd about a test, stops first, then doubts, then notes. Figures of the table that nobody has typed yet are no remark,
 * and neither is a value that is no number: that is the problem of its field.
 */
export function remarksOf(facts: Facts): readonly Remark[] {
  const found = remarkRules.flatMap(({ code, weight, about, amounts }): Remark[] => {
    const list = amounts(facts);
    return list?.every(({ value }) => Number.isFinite(value)) ? [{ code, weight, about, amounts: list }] : [];
  });
  // The few figures around a test have no neighbours enough to be odd among: that is looked for in the whole table.
  const table = facts.rating ? figureRemarks(facts.rating.table).filter(({ code }) => code !== 'hole') : [];
  const rank = { stop: 0, doubt: 1, note: 2 } as const;
  return [...found, ...table].sort((a, b) => rank[a.weight] - rank[b.weight]);
}
