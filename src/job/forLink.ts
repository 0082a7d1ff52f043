import { ratingGrid } from './ratingGrid.ts';
import { headKey } from './ratingHeads.ts';
import { sheetNear } from './ratingSheet.ts';
import { cellText } from './tables.ts';
import type { Job, TypedTable } from './types.ts';
import { usesSheet } from './usesSheet.ts';

/**
 * The job as a link carries it: the maker's figures reduced to those that this job reads and the next ones beside them, and a
 * whole table left out where other figures are read, and the trace of a record left out. Every figure that the job gives stays the same.
 */
export function forLink(job: Job): Job {
  const { rating, ratingSheet, ratingAirflow, 'log.trace': _, ...tables } = job.tables;
  return {
    ...job,
    tables: {
      ...tables,
      ...(rating && { rating: cellsNear(job, rating) }),
      ...(ratingSheet &&
        usesSheet(job) && { ratingSheet: sheetNear(job, ratingSheet), ...(ratingAirflow && { ratingAirflow }) }),
    },
  };
}

/** The typed cells at the heads that are asked for, and on either side the next; all while those are not known. */
function cellsNear(job: Job, table: TypedTable): TypedTable {
  const grid = ratingGrid(job);
  if (grid.state === 'waiting') return table;
  const near = (column: string, heads: readonly { readonly si: number }[]): ReadonlySet<string> => {
    const asked = new Set(heads.map(({ si }) => headKey(si)));
    const places = new Set([...table.rows.map((row) => cellText(table, row, column)), ...asked]);
    const inOrder = [...places].sort((a, b) => Number(a) - Number(b));
    return new Set(inOrder.filter((_, at) => [at - 1, at, at + 1].some((one) => asked.has(inOrder[one] ?? ''))));
  };
  const outdoors = near('outdoorDryBulb', grid.outdoors);
  const wetBulbs = near('enteringWetBulb', grid.wetBulbs);
  const isNear = (row: readonly string[]) =>
    outdoors.has(cellText(table, row, 'outdoorDryBulb')) && wetBulbs.has(cellText(table, row, 'enteringWetBulb'));
  return { ...table, rows: table.rows.filter(isNear) };
}
