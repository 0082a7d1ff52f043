/** A difference in words: how much more or less, and between what. */
import type { Budget } from '~/calc/types.ts';
import { formatNumber } from '~/job/format.ts';
import { compareWords as words } from '~/words/en/compare.ts';
import { capacityText } from '../show.ts';

/** `meets`: the later is more, past doubt; `short`: less. The mark is the one of a verdict, its line standing for no difference. */
export type Outcome = 'meets' | 'short' | 'cannotTell';

export function outcomeOf({ interval: { low, high } }: Budget): Outcome {
  if (low > 0) return 'meets';
  return high < 0 ? 'short' : 'cannotTell';
}

export type Amount = (size: number) => string;
/** Of shares, in points of per cent. */
export const points: Amount = (size) => words.points(formatNumber(size * 100, 0));
export const capacities: Amount = capacityText;

const signed = (value: number, amount: Amount) => (value >= 0 ? words.more(amount(value)) : words.less(amount(-value)));

/** "15 points more". */
export const bySaid = ({ value }: Budget, amount: Amount): string => signed(value, amount);

/** "4 points and 26 points more", "3 points less and 12 points more": the smaller end first. */
export function endsSaid({ interval: { low, high } }: Budget, amount: Amount): string {
  if (low >= 0) return words.more(words.toBoth(amount(low), amount(high)));
  if (high <= 0) return words.less(words.toBoth(amount(-high), amount(-low)));
  return words.toBoth(signed(low, amount), signed(high, amount));
}

/** A difference of shares with its ends rounded outward to whole points. */
export function inPoints(budget: Budget): Budget {
  const { low, high } = budget.interval;
  const hair = 1e-9;
  const ends = { low: Math.floor(low * 100 + hair) / 100, high: Math.ceil(high * 100 - hair) / 100 };
  return { ...budget, interval: { ...budget.interval, ...ends } };
}
