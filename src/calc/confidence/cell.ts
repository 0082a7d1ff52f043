import { highRow, locate } from '../rated.ts';
import { axisOrder } from '../tableCheck.ts';
import type { Axis, RatingConditions, RatingTable } from '../types.ts';

/** The rows of each axis, by index, that a small table keeps. */
type Kept = Record<Axis, readonly number[]>;

/**
 * The part of a table that decides how a reading moves with its inputs: the cell around the point alone, to be run on in its
 * own line. So a range does not hang on rows that the reading itself does not touch. A point on a printed row takes a
 * neighbouring row into the cell, the next one first, where all of its figures are printed; else that axis stands still.
 */
export function cellAround(table: RatingTable, conditions: RatingConditions): RatingTable {
  const place = locate(table, conditions);
  const kept: Kept = Object.fromEntries(
    axisOrder.map((axis, i) => {
      const [low, high] = [place.low[i] as number, highRow(place, i)];
      return [axis, table.axes[axis].length === 0 ? [] : low === high ? [low] : [low, high]];
    }),
  ) as Record<Axis, number[]>;
  for (const axis of axisOrder) {
    if (kept[axis].length !== 1) continue;
    const row = kept[axis][0] as number;
    const pair = [
      [row, row + 1],
      [row - 1, row],
    ].find((rowsTried) => whole(table, { ...kept, [axis]: rowsTried }));
    if (pair) kept[axis] = pair;
  }
  return part(table, kept);
}

/** Whether every figure of these rows is there. */
function whole(table: RatingTable, kept: Kept): boolean {
  return (
    axisOrder.every((axis) => kept[axis].every((row) => table.axes[axis][row] !== undefined)) &&
    places(table, kept).every((at) => table.total[at] !== null)
  );
}

function part(table: RatingTable, kept: Kept): RatingTable {
  const axes = Object.fromEntries(
    axisOrder.map((axis) => [axis, kept[axis].map((row) => table.axes[axis][row] as number)]),
  ) as Record<Axis, number[]>;
  const total = places(table, kept).map((at) => table.total[at] as number | null);
  return { ...table, axes, total, sensible: null, power: null };
}

/** Where the kept points stand in the table, row-major. */
function places(table: RatingTable, kept: Kept): readonly number[] {
  return axisOrder.reduce<readonly number[]>(
    (before, axis) => {
      const size = Math.max(1, table.axes[axis].length);
      const rows = kept[axis].length === 0 ? [0] : kept[axis];
      return before.flatMap((at) => rows.map((row) => at * size + row));
    },
    [0],
  );
}
