/** Where a figure of a table stands, and which figures stand beside it. */
import { axisSigns } from './ratedTrace.ts';
import { axisOrder } from './tableCheck.ts';
import { amount } from './trace.ts';
import type { Amount, Axis, RatingTable } from './types.ts';

/** The place of a figure on every axis that the table states. */
export function pointOf(table: RatingTable, at: number): Amount[] {
  return axisOrder
    .filter((axis) => table.axes[axis].length > 0)
    .map((axis) => {
      const { symbol, kind } = axisSigns[axis];
      return amount(symbol, kind, table.axes[axis][rowOf(table, at, axis)] as number);
    });
}

/** The index of a figure's row on an axis. */
export function rowOf(table: RatingTable, at: number, axis: Axis): number {
  return Math.floor(at / stride(table, axis)) % Math.max(1, table.axes[axis].length);
}

/** How far apart two neighbours on an axis stand in the list of figures. */
export function stride(table: RatingTable, axis: Axis): number {
  return axisOrder
    .slice(axisOrder.indexOf(axis) + 1)
    .reduce((size, later) => size * Math.max(1, table.axes[later].length), 1);
}
