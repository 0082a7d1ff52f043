import { figureRemarks } from './figureRemarks.ts';
import { oddFigures } from './oddFigures.ts';
import type { RatingTable, Remark } from './types.ts';

/**
 * What a careful reader finds odd in a whole table: what `figureRemarks` and `oddFigures` find, in this order. Remarks, never
 * refusals; the amounts of each begin with the place of its figure on every axis that the table states.
 */
export function tableRemarks(table: RatingTable): readonly Remark[] {
  return [...figureRemarks(table), ...oddFigures(table)];
}
