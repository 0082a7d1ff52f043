import { CalcError, within } from './errors.ts';
import { axisOrder, axisRange, checkTable, usableSensible } from './tableCheck.ts';
import type { Axis, Rated, RatingConditions, RatingTable } from './types.ts';

/** A point this close to a printed row stands on it, and this close to the edge is inside, in the unit of the axis. */
const onTheRow = 1e-9;

export type Beyond = 'refuse' | 'extend';

/** Where a point lies: for each axis the rows on either side and how far it is from the low one, 0 to 1 inside the table. */
export interface Place {
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly fraction: readonly number[];
  readonly outside: readonly Axis[];
}

/**
 * A table read at a point: linear inside each cell, in the table's own axes. An axis with one value is stated, not varied, and
 * never outside. Beyond the table the values are `null` (`refuse`), or run on in the line of the last cell (`extend`); either
 * way `outside` names the axes. A point that needs a figure the printed table does not have is outside on every axis that the
 * table states; `sensible` is `null` where it would need one above its total. Throws a `CalcError` for a condition that is no number or that the table varies with and that is not given,
 * and for a table that is no grid.
 */
export function rated(
  table: RatingTable,
  conditions: RatingConditions,
  { beyond }: { readonly beyond: Beyond },
): Rated {
  const place = locate(table, conditions);
  const total = figureAt(table.total, table, place);
  const sensible = usableSensible(table);
  const cell = cellOf(table, place);
  if (total === null || (beyond === 'refuse' && place.outside.length > 0)) {
    const outside = total === null ? axisOrder.filter((axis) => table.axes[axis].length > 0) : place.outside;
    return { total: null, sensible: null, power: null, cell, outside };
  }
  return {
    total,
    sensible: sensible && figureAt(sensible, table, place),
    power: table.power && figureAt(table.power, table, place),
    cell,
    outside: place.outside,
  };
}

/** The cell around a point. On a printed row both of its sides are that row, so that a hole beside it does no harm. */
export function locate(table: RatingTable, conditions: RatingConditions): Place {
  checkTable(table);
  const low = [0, 0, 0, 0];
  const high = [0, 0, 0, 0];
  const fraction = [0, 0, 0, 0];
  const outside: Axis[] = [];
  for (let i = 0; i < axisOrder.length; i++) {
    const axis = axisOrder[i] as Axis;
    const rows = table.axes[axis];
    const at = conditions[axis];
    if (at !== undefined) within(axis, at, axisRange[axis]);
    if (rows.length < 2) continue;
    const first = rows[0] as number;
    const last = rows[rows.length - 1] as number;
    if (at === undefined) throw new CalcError('missing', axis, 0, first, last);
    if (at < first - onTheRow || at > last + onTheRow) outside.push(axis);
    let upper = 1;
    while (upper < rows.length - 1 && at > (rows[upper] as number)) upper++;
    const from = rows[upper - 1] as number;
    const to = rows[upper] as number;
    const onLow = Math.abs(at - from) <= onTheRow;
    const onHigh = Math.abs(at - to) <= onTheRow;
    low[i] = onHigh ? upper : upper - 1;
    high[i] = onLow ? upper - 1 : upper;
    fraction[i] = onLow || onHigh ? 0 : (at - from) / (to - from);
  }
  return { low, high, fraction, outside };
}

/** A column of the table at a place, linear between its corners; `null` where one of them is not printed. */
export function figureAt(values: readonly (number | null)[], table: RatingTable, place: Place): number | null {
  return along(values, table, place, 0, 0);
}

/** The figure with the axes from `i` on still open; `before` is the place that the earlier ones fixed. */
function along(
  values: readonly (number | null)[],
  table: RatingTable,
  place: Place,
  i: number,
  before: number,
): number | null {
  const axis = axisOrder[i];
  if (axis === undefined) return values[before] as number | null;
  const start = before * Math.max(1, table.axes[axis].length);
  const low = along(values, table, place, i + 1, start + (place.low[i] as number));
  const fraction = place.fraction[i] as number;
  if (fraction === 0 || low === null) return low;
  const high = along(values, table, place, i + 1, start + (place.high[i] as number));
  return high === null ? null : low + fraction * (high - low);
}

function cellOf(table: RatingTable, place: Place): Rated['cell'] {
  const cell: Partial<Record<Axis, readonly [number, number]>> = {};
  for (let i = 0; i < 4; i++) {
    const axis = axisOrder[i] as Axis;
    if (table.axes[axis].length > 0) cell[axis] = [place.low[i] as number, place.high[i] as number];
  }
  return cell;
}
