/** The expected half of the sheet: the maker's table, what it should make, the ratio and the verdict. One file, fetched when it is needed. */
export { assess } from '~/calc/assess.ts';
export { thisVisit } from '~/calc/confidence/improvements.ts';
export { outward } from '~/calc/confidence/verdict.ts';
export { ratingGrid } from '~/job/ratingGrid.ts';
export { classLimit } from '~/job/sure/limits.ts';
export { comparedIn } from '~/job/sure/pairs.ts';
export { toTest } from '~/job/toTest.ts';
