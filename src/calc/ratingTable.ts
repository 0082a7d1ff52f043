import { CalcError, within } from './errors.ts';
import { axisOrder, axisRange, checkFigures, checkTable, gridSize } from './tableCheck.ts';
import type { AirflowMultiplier, Axis, Basis, Multipliers, RatingRow, RatingTable } from './types.ts';

export interface RatingOptions {
  readonly basis: Basis;
  /** Blower power inside the rating, W. */
  readonly blowerPower: number;
  readonly from?: 'table' | 'generic';
  /** Relative half-width of the sensible share that the source itself admits. */
  readonly sensibleBand?: number;
  readonly multipliers?: Multipliers;
}

/** A rating without corrections of its maker. */
export const noMultipliers: Multipliers = { airflow: [], indoorMatch: null, lineLength: null };

/** Values of an axis this close together are one row of the table, typed in two units. */
const sameRow = 1e-6;

/**
 * A `RatingTable` from rows in any order. SI: °C, kg/s, W. Throws a `CalcError`: `noRows`, `notFinite` or `outOfRange` for a
 * bad number, `notPositive` for a capacity that is not above zero, `axisOnSomeRows`, `repeatedRow` (its value is the place of
 * the row, from zero), `missingRow` (how many rows there are, and how many the grid needs). A `null` total is a hole in the
 * printed table. A sensible capacity above its total stands as printed; `tableRemarks` names it, and no reading uses it. The
 * lines of an airflow multiplier may come in any order; the flow that the rows state belongs to them, with the factor 1 unless
 * it is given.
 */
export function ratingTable(rows: readonly RatingRow[], options: RatingOptions): RatingTable {
  const { basis, blowerPower, from = 'table', sensibleBand = 0, multipliers = noMultipliers } = options;
  if (rows.length === 0) throw new CalcError('noRows', 'rows', 0, 1, 1e6);
  for (const row of rows) checkFigures(row.total, row.sensible, row.power);
  const axes = {
    outdoorDryBulb: axisOf(rows, 'outdoorDryBulb'),
    enteringWetBulb: axisOf(rows, 'enteringWetBulb'),
    enteringDryBulb: axisOf(rows, 'enteringDryBulb'),
    dryAirFlow: axisOf(rows, 'dryAirFlow'),
  };
  const grid = arrange(rows, axes);
  const table: RatingTable = {
    from,
    basis,
    blowerPower,
    axes,
    total: grid.map((row) => row.total ?? null),
    sensible: column(grid, 'sensible'),
    power: column(grid, 'power'),
    band: column(grid, 'band'),
    sensibleBand,
    multipliers: { ...multipliers, airflow: airflowLines(multipliers.airflow, axes.dryAirFlow) },
  };
  checkTable(table);
  return table;
}

/** The different values of an axis, ascending; none when no row states it. */
function axisOf(rows: readonly RatingRow[], axis: Axis): number[] {
  const values: number[] = [];
  for (const row of rows) {
    const value = row[axis];
    if (value === undefined) continue;
    within(axis, value, axisRange[axis]);
    values.push(value);
  }
  if (values.length > 0 && values.length < rows.length) {
    throw new CalcError('axisOnSomeRows', axis, values.length, rows.length, rows.length);
  }
  values.sort((a, b) => a - b);
  const different: number[] = [];
  for (const value of values) if (!(value - (different.at(-1) ?? -Infinity) <= sameRow)) different.push(value);
  return different;
}

/** The rows in the order of the grid, each point once. */
function arrange(rows: readonly RatingRow[], axes: RatingTable['axes']): RatingRow[] {
  const size = gridSize(axes);
  if (rows.length < size) throw new CalcError('missingRow', 'rows', rows.length, size, size);
  const grid: (RatingRow | undefined)[] = [];
  rows.forEach((row, i) => {
    const at = placeOf(row, axes);
    if (grid[at]) throw new CalcError('repeatedRow', 'rows', i, 0, rows.length - 1);
    grid[at] = row;
  });
  return grid as RatingRow[];
}

function placeOf(row: RatingRow, axes: RatingTable['axes']): number {
  return axisOrder.reduce((place, axis) => {
    const value = row[axis];
    if (value === undefined) return place;
    return place * axes[axis].length + axes[axis].findIndex((known) => Math.abs(known - value) <= sameRow);
  }, 0);
}

/** A column that at least one row states; `null` for a column that the table does not have. */
function column(grid: readonly RatingRow[], name: 'sensible' | 'power' | 'band'): (number | null)[] | null {
  const values = grid.map((row) => row[name] ?? null);
  return values.some((value) => value !== null) ? values : null;
}

/** The lines of an airflow multiplier, ascending, with the flow of the table among them. */
function airflowLines(lines: readonly AirflowMultiplier[], flows: readonly number[]): readonly AirflowMultiplier[] {
  const [stated] = flows;
  if (lines.length === 0) return lines;
  const own = lines.some(({ dryAirFlow }) => stated !== undefined && Math.abs(dryAirFlow - stated) <= sameRow);
  const base = stated === undefined || own ? [] : [{ dryAirFlow: stated, total: 1, sensible: 1 }];
  return [...base, ...lines].sort((a, b) => a.dryAirFlow - b.dryAirFlow);
}
