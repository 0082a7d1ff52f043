import type { Known, SourceKey } from '../../src/calc/index.ts';

/**
 * One figure from outside and the same figure from the package. No expected value is worked out by the code under test.
 * Plain data but for `ours`, so that a page can print the list and work it out before the reader's eyes.
 */
export interface Check {
  readonly title: string;
  readonly expected: number;
  /** Half-width, in the unit of `expected`. */
  readonly tolerance: number;
  readonly unit: string;
  readonly source: SourceKey | (string & {});
  readonly known: Known | 'read, converted' | 'memory, recomputed';
  /** Why the tolerance is wider than the rounding of the source. */
  readonly why?: string;
  readonly ours: () => number;
}

/** A tolerance of the source's own rounding and a share of the figure. */
export function allow(expected: number, rounding: number, share: number): number {
  return rounding + share * Math.abs(expected);
}
