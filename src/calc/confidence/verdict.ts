import type { Budget, Improvement, Interval, Verdict } from '../types.ts';
import { conformance } from './conformance.ts';

/** No system makes that much more than its rating; the readings say more than it can. Our choice. */
const mostItCanMake = 1.1;
/** The remark that says so, and the reason of the verdict. */
export const tooHigh = 'higherThanItCanMake';

const rounding = 1e-9;

/** The ends of a range as they are shown and as they decide: rounded outward to whole per cents. */
export function outward({ low, high }: Pick<Interval, 'low' | 'high'>): {
  readonly low: number;
  readonly high: number;
} {
  return { low: Math.floor(low * 100 + rounding) / 100, high: Math.ceil(high * 100 - rounding) / 100 };
}

interface Ends {
  readonly low: number;
  readonly high: number;
}

const meets = ({ low }: Ends, line: number) => low >= line - rounding;
const isShort = ({ high }: Ends, line: number) => high < line - rounding;

/** Whether a range is clear of the line. */
export function decides(ends: Ends, line: number): boolean {
  return meets(ends, line) || isShort(ends, line);
}

/** More than the system can make: above 110 %, or above 100 % by more than its range. */
export function isTooHigh({ value, interval }: Pick<Budget, 'value' | 'interval'>): boolean {
  return value > mostItCanMake || outward(interval).low > 1 + rounding;
}

export interface VerdictOn {
  readonly ratio: Pick<Budget, 'value' | 'u' | 'degreesOfFreedom' | 'interval'>;
  readonly line: number;
  readonly improvements: readonly Improvement[];
  /** How long a check may take to be one that can be made on this visit, s. */
  readonly thisVisit: number;
  readonly by: Verdict['by'];
  readonly estimateOnly: boolean;
  /** The chance of a true ratio at or above the line, where it was counted among draws. */
  readonly counted?: number;
}

/**
 * The verdict on a ratio against a line: it meets when the whole range is at or past the line, it is short when the whole range
 * is below, else these readings cannot tell. The chance and the guarded limits stand beside it (JCGM 106:2012, 7.3 and 8.3).
 */
export function verdictOn({ ratio, line, improvements, thisVisit, by, estimateOnly, counted }: VerdictOn): Verdict {
  const confidence = ratio.interval.probability;
  const guarded = conformance({ ...ratio, u: Math.max(ratio.u, rounding) }, { lower: line, confidence });
  const ends = outward(ratio.interval);
  const common = {
    line,
    confidence,
    ...ends,
    probability: counted ?? guarded.probability,
    acceptFrom: guarded.acceptFrom as number,
    rejectBelow: guarded.rejectBelow as number,
    by,
    estimateOnly,
  };
  if (isTooHigh(ratio)) return { outcome: 'cannotTell', because: tooHigh, ...common };
  if (meets(ends, line)) return { outcome: 'meets', because: null, ...common };
  if (isShort(ends, line)) return { outcome: 'short', because: null, ...common };
  const decidable = improvements.some((one) => one.decides && one.takes <= thisVisit);
  return { outcome: 'cannotTell', because: decidable ? 'improvable' : 'tooNear', ...common };
}
