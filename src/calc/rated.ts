import { CalcError, within } from './errors.ts';
import { axisOrder, axisRange, checkTable, usableSensible } from './tableCheck.ts';
import type { Axis, Rated, RatingConditions, RatingTable } from './types.ts';

/** A point this close to a printed row stands on it, and this close to the edge is inside, in the unit of the axis. */
const onTheRow = 1e-9;

export type Beyond = 'refuse' | 'extend';

/** Where a point lies: for each axis the row below it and how far it is from that one to the next, 0 to 1 inside the table. */
export interface Place {
  readonly low: readonly number[];
  readonly fraction: readonly number[];
  /** Where the low corner stands in the list of figures, and how far on each axis the high one is from it; 0 on a printed row. */
  readonly base: number;
  readonly offset: readonly number[];
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
  const total = figureAt(table.total, place);
  const sensible = usableSensible(table);
  const cell = cellOf(table, place);
  if (total === null || (beyond === 'refuse' && place.outside.length > 0)) {
    const outside = total === null ? axisOrder.filter((axis) => table.axes[axis].length > 0) : place.outside;
    return { total: null, sensible: null, power: null, cell, outside };
  }
  return {
    total,
    sensible: sensible && figureAt(sensible, place),
    power: table.power && figureAt(table.power, place),
    cell,
    outside: place.outside,
  };
}

/** A place while it is being found. */
interface Finding {
  readonly low: number[];
  readonly fraction: number[];
  readonly offset: number[];
  base: number;
  outside: readonly Axis[];
}

const nowhere: readonly Axis[] = [];
const ranges = axisOrder.map((axis) => axisRange[axis]);

/**
 * The cell around a point. On a printed row both of its sides are that row, so that a hole beside it does no harm. Another wet
 * bulb or airflow than that of the conditions may be given: a chain of steps reads one table at several.
 */
export function locate(
  table: RatingTable,
  conditions: RatingConditions,
  wetBulb: number = conditions.enteringWetBulb,
  dryAirFlow: number | undefined = conditions.dryAirFlow,
): Place {
  checkTable(table);
  const { outdoorDryBulb, enteringWetBulb, enteringDryBulb, dryAirFlow: flows } = table.axes;
  const place = { low: [0, 0, 0, 0], fraction: [0, 0, 0, 0], offset: [0, 0, 0, 0], base: 0, outside: nowhere };
  const bulbStride = Math.max(1, flows.length);
  const wetStride = bulbStride * Math.max(1, enteringDryBulb.length);
  onAxis(place, 0, outdoorDryBulb, conditions.outdoorDryBulb, wetStride * Math.max(1, enteringWetBulb.length));
  onAxis(place, 1, enteringWetBulb, wetBulb, wetStride);
  onAxis(place, 2, enteringDryBulb, conditions.enteringDryBulb, bulbStride);
  onAxis(place, 3, flows, dryAirFlow, 1);
  return place;
}

/** Where `at` lies among the rows of an axis whose neighbours stand `stride` apart in the list of figures. */
function onAxis(place: Finding, i: number, rows: readonly number[], at: number | undefined, stride: number): void {
  const axis = axisOrder[i] as Axis;
  if (at !== undefined) within(axis, at, ranges[i] as readonly [number, number]);
  const last = rows.length - 1;
  if (last < 1) return;
  if (at === undefined) throw new CalcError('missing', axis, 0, rows[0] as number, rows[last] as number);
  if (at < (rows[0] as number) - onTheRow || at > (rows[last] as number) + onTheRow) {
    place.outside = [...place.outside, axis];
  }
  let upper = 1;
  while (upper < last && at > (rows[upper] as number)) upper++;
  const from = rows[upper - 1] as number;
  const to = rows[upper] as number;
  const onLow = Math.abs(at - from) <= onTheRow;
  const onHigh = Math.abs(at - to) <= onTheRow;
  const low = onHigh ? upper : upper - 1;
  place.low[i] = low;
  place.base += low * stride;
  if (onLow || onHigh) return;
  place.fraction[i] = (at - from) / (to - from);
  place.offset[i] = stride;
}

/** The row above a point on an axis, by its place in `axisOrder`: the row itself where the point stands on one. */
export function highRow(place: Place, axis: number): number {
  return (place.low[axis] as number) + (place.offset[axis] === 0 ? 0 : 1);
}

/** The corners of one cell while a figure is read from them: at most two on each of four axes. */
const corners = new Float64Array(16);
const where = new Int32Array(16);

/**
 * A column of the table at a place, linear between its corners; `null` where one of them is not printed. `onLow` is the place in
 * `axisOrder` of an axis on which the lower row alone is read.
 */
export function figureAt(values: readonly (number | null)[], place: Place, onLow?: number): number | null {
  const { fraction, offset } = place;
  let size = 1;
  where[0] = place.base;
  for (let axis = 0; axis < 4; axis++) {
    if (fraction[axis] === 0 || axis === onLow) continue;
    const apart = offset[axis] as number;
    for (let i = size - 1; i >= 0; i--) {
      const at = where[i] as number;
      where[2 * i] = at;
      where[2 * i + 1] = at + apart;
    }
    size *= 2;
  }
  for (let i = 0; i < size; i++) {
    const figure = values[where[i] as number] as number | null;
    if (figure === null) return null;
    corners[i] = figure;
  }
  for (let axis = 3; size > 1; axis--) {
    const share = fraction[axis] as number;
    if (share === 0 || axis === onLow) continue;
    size /= 2;
    for (let i = 0; i < size; i++) {
      const low = corners[2 * i] as number;
      corners[i] = low + share * ((corners[2 * i + 1] as number) - low);
    }
  }
  return corners[0] as number;
}

function cellOf(table: RatingTable, place: Place): Rated['cell'] {
  const cell: Partial<Record<Axis, readonly [number, number]>> = {};
  for (let i = 0; i < 4; i++) {
    const axis = axisOrder[i] as Axis;
    if (table.axes[axis].length > 0) cell[axis] = [place.low[i] as number, highRow(place, i)];
  }
  return cell;
}
