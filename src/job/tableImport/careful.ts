/** A whole table read as a careful person would, before it is used. */
import { ratingTable } from '../../calc/ratingTable.ts';
import { tableRemarks } from '../../calc/tableRemarks.ts';
import type { Remark } from '../../calc/types.ts';
import { sheetRows } from '../ratingSheet.ts';
import type { TypedTable } from '../types.ts';

const rank = { stop: 0, doubt: 1, note: 2 } as const;

/** The remarks on a table of the job, doubts first; none for one that is no grid. */
export function carefulRemarks(table: TypedTable): readonly Remark[] {
  try {
    const rows = sheetRows(table);
    if (rows.length === 0) return [];
    const remarks = tableRemarks(ratingTable(rows, { basis: 'net', blowerPower: 0 }));
    return [...remarks].sort((a, b) => rank[a.weight] - rank[b.weight]);
  } catch {
    // Rows of which only some state an axis: that is said of the sheet already.
    return [];
  }
}
