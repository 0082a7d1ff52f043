import { noMultipliers } from './ratingTable.ts';
import type { Test } from './testTypes.ts';

/** A maker's table without rows, of which nothing is known: spread it, and put in what is printed. */
export const emptyRating: NonNullable<Test['rating']> = {
  rows: [],
  basis: 'unsure',
  blowerPower: null,
  blowerKind: null,
  beyond: 'refuse',
  from: 'table',
  stage: null,
  certified: null,
  generic: null,
  multipliers: noMultipliers,
};
