/** The expected half of the sheet: the maker's table, what it should make, the ratio and the verdict. One file, fetched when it is needed. */
export { assess } from '~/calc/assess.ts';
export { ratingGrid } from '~/job/ratingGrid.ts';
export { toTest } from '~/job/toTest.ts';
