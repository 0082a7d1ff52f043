import { airflowRules } from './airflowRemarks.ts';
import { airRules } from './airRemarks.ts';
import { sureRules } from './confidence/sureRemarks.ts';
import { type Facts, type Rule, ranked, remarksBy } from './facts.ts';
import { figureRemarks } from './figureRemarks.ts';
import { ratingRules } from './ratingRemarks.ts';
import type { Remark } from './types.ts';

/** Every remark that a test can get, in the order in which they are made. */
export const remarkRules: readonly Rule[] = [...airRules, ...airflowRules, ...ratingRules, ...sureRules];

/** What is odd about a test, the weightiest first. Figures of the table that nobody has typed yet are no remark. */
export function remarksOf(facts: Facts): readonly Remark[] {
  // What published curves make of themselves is nobody's slip.
  const typed = facts.rating?.table.from === 'table' ? facts.rating.table : null;
  // The few figures around a test have no neighbours enough to be odd among: that is looked for in the whole table.
  const table = typed ? figureRemarks(typed).filter(({ code }) => code !== 'hole') : [];
  return ranked([...remarksBy(remarkRules, facts), ...table]);
}
