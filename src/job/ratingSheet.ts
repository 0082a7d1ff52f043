/** A whole table of the maker, as pasted, in SI: its rows, and those of them that a test reads. */
import { standardAirDensity } from '../calc/constants.ts';
import type { AirflowMultiplier, RatingRow } from '../calc/types.ts';
import { entered, siOf } from './entered.ts';
import type { QuantityKey } from './quantities.ts';
import { wetBulbEntering } from './ratingGrid.ts';
import { read } from './read.ts';
import { meanReading } from './readings.ts';
import { readRatio } from './readRatio.ts';
import { cellText } from './tables.ts';
import type { ReadSheet } from './toRating.ts';
import type { Job, TypedTable } from './types.ts';
import { units } from './units.ts';

const axes = ['outdoorDryBulb', 'enteringWetBulb', 'enteringDryBulb', 'dryAirFlow'] as const;
type Axis = (typeof axes)[number];

/** The column and the quantity that an axis is read as; temperatures of the sheet have the limits of its heads. */
const columns: Readonly<Record<Axis, readonly [column: string, quantity: QuantityKey]>> = {
  outdoorDryBulb: ['outdoorDryBulb', 'rating.outdoorLow'],
  enteringWetBulb: ['enteringWetBulb', 'rating.wetBulbLow'],
  enteringDryBulb: ['enteringDryBulb', 'rating.enteringDryBulb'],
  dryAirFlow: ['airflow', 'rating.airflow'],
};
/** A grid with more places is none; the import refuses it, and a record from outside is held to it here. */
const largestGrid = 12_000;

/** Rounding of heads, K. */
const hair = 1e-6;

const known = new WeakMap<TypedTable, readonly RatingRow[]>();

/** All rows of a sheet, every place of its grid once, a figure that is missing or cannot be read as `null`. */
export function sheetRows(table: TypedTable): readonly RatingRow[] {
  const before = known.get(table);
  if (before) return before;
  const rows = filledGrid(table.rows.flatMap((texts) => rowIn(table, texts) ?? []));
  known.set(table, rows);
  return rows;
}

/** The same with the dry bulb and the airflow of the step's own fields, where the sheet states none. */
export function sheetRowsOf(job: Job): readonly RatingRow[] {
  const table = job.tables.ratingSheet;
  if (!table) return [];
  const rows = sheetRows(table);
  const [first] = rows;
  const enteringDryBulb = entered(job, 'rating.enteringDryBulb');
  const flow = entered(job, 'rating.airflow');
  const more = {
    ...(first?.enteringDryBulb === undefined && enteringDryBulb !== null ? { enteringDryBulb } : {}),
    // The airflow of a maker's table is in standard air.
    ...(first?.dryAirFlow === undefined && flow !== null ? { dryAirFlow: flow * standardAirDensity } : {}),
  };
  return Object.keys(more).length === 0 ? rows : rows.map((row) => ({ ...row, ...more }));
}

/**
 * The rows around the conditions of the job, with the ends of an axis that they lie beyond; all while those are not known. A
 * return air beyond the printed dry bulbs gets the nearest of them: totals do not hang on it, and the sensible is moved from there.
 */
export function sheetRowsHere(job: Job): readonly RatingRow[] {
  const rows = sheetRowsOf(job);
  const outdoors = entered(job, 'outdoorDryBulb');
  const wetBulb = wetBulbEntering(job);
  if (outdoors === null || typeof wetBulb !== 'number') return rows;
  const near = around(around(rows, 'outdoorDryBulb', outdoors), 'enteringWetBulb', wetBulb);
  const { dryBulb } = meanReading(job, 'entering');
  const printed = near.map(({ enteringDryBulb }) => enteringDryBulb).filter((one) => one !== undefined);
  const low = Math.min(...printed);
  const high = Math.max(...printed);
  if (dryBulb === null || printed.length === 0 || (dryBulb >= low - hair && dryBulb <= high + hair)) return near;
  return near.filter(({ enteringDryBulb }) => enteringDryBulb === (dryBulb < low ? low : high));
}

function around(rows: readonly RatingRow[], axis: 'outdoorDryBulb' | 'enteringWetBulb', at: number) {
  const values = [...new Set(rows.map((row) => row[axis]))].sort((a, b) => a - b);
  const above = values.findIndex((value) => value >= at);
  const high = above < 0 ? values.length - 1 : Math.max(1, above);
  const kept = new Set(values.slice(Math.max(0, high - 1), high + 1));
  const beyond = at < (values[0] ?? at) || at > (values.at(-1) ?? at);
  for (const end of beyond ? [values[0], values.at(-1)] : []) if (end !== undefined) kept.add(end);
  return rows.filter((row) => kept.has(row[axis]));
}

/**
 * The sheet with the rows that this job reads, and on either side of them the next ones; as it is while the conditions are not
 * known. Lines that cannot be read are left out.
 */
export function sheetNear(job: Job, sheet: TypedTable): TypedTable {
  const read = sheetRowsHere({ ...job, tables: { ...job.tables, ratingSheet: sheet } });
  const near = (axis: 'outdoorDryBulb' | 'enteringWetBulb'): ReadonlySet<number> => {
    const values = [...new Set(sheetRows(sheet).map((row) => row[axis]))].sort((a, b) => a - b);
    const isRead = new Set(read.map((row) => row[axis]));
    return new Set(values.filter((_, at) => [at - 1, at, at + 1].some((one) => isRead.has(values[one] ?? Number.NaN))));
  };
  const [outdoors, wetBulbs] = [near('outdoorDryBulb'), near('enteringWetBulb')];
  const rows = sheet.rows.filter((texts) => {
    const row = rowIn(sheet, texts);
    return row !== null && outdoors.has(row.outdoorDryBulb) && wetBulbs.has(row.enteringWetBulb);
  });
  return { ...sheet, rows };
}

/** What a test takes from a whole table. */
export const readSheet: ReadSheet = (job) => ({ rows: sheetRowsHere(job), airflow: sheetMultipliers(job) });

/** The maker's factors for other airflows, kg/s of dry air. */
export function sheetMultipliers(job: Job): readonly AirflowMultiplier[] {
  const table = job.tables.ratingAirflow;
  if (!table) return [];
  const factor = (texts: readonly string[], column: string) =>
    siOf(read(cellText(table, texts, column), 'rating.indoorMatch', 'fraction'));
  return table.rows.flatMap((texts): AirflowMultiplier[] => {
    const dryAirFlow = axisIn(table, texts, 'dryAirFlow');
    const total = factor(texts, 'total');
    return dryAirFlow === null || total === null ? [] : [{ dryAirFlow, total, sensible: factor(texts, 'sensible') }];
  });
}

function rowIn(table: TypedTable, texts: readonly string[]): RatingRow | null {
  const row: { -readonly [Key in keyof RatingRow]: RatingRow[Key] } = {
    outdoorDryBulb: Number.NaN,
    enteringWetBulb: Number.NaN,
    total: null,
  };
  for (const axis of axes) {
    if (!table.columns.some(({ key }) => key === columns[axis][0])) continue;
    const value = axisIn(table, texts, axis);
    if (value === null) return null;
    row[axis] = value;
  }
  if (Number.isNaN(row.outdoorDryBulb + row.enteringWetBulb)) return null;
  const total = figure(table, texts, 'total');
  const ratio = units[unitOf(table, 'sensible')].kind === 'fraction';
  const share = ratio ? siOf(readRatio(cellText(table, texts, 'sensible'), unitOf(table, 'sensible'))) : null;
  row.total = total;
  row.sensible = ratio
    ? share !== null && total !== null
      ? share * total
      : null
    : figure(table, texts, 'sensible', total);
  row.power = figure(table, texts, 'power');
  return row;
}

const unitOf = (table: TypedTable, column: string) => table.columns.find(({ key }) => key === column)?.unit ?? 'count';

function axisIn(table: TypedTable, texts: readonly string[], axis: Axis): number | null {
  const [column, quantity] = columns[axis];
  const si = siOf(read(cellText(table, texts, column), quantity, unitOf(table, column)));
  return si === null ? null : axis === 'dryAirFlow' ? si * standardAirDensity : Math.round(si * 1e9) / 1e9;
}

function figure(
  table: TypedTable,
  texts: readonly string[],
  of: 'total' | 'sensible' | 'power',
  total: number | null = null,
) {
  const text = cellText(table, texts, of);
  return text === '' ? null : siOf(read(text, `rating.${of}`, unitOf(table, of), { total }));
}

/** Each place of the grid once, the first figure for it counting; where nothing is printed a hole. */
function filledGrid(rows: readonly RatingRow[]): readonly RatingRow[] {
  const [first] = rows;
  if (!first) return [];
  const stated = axes.filter((axis) => first[axis] !== undefined);
  const values = stated.map((axis) => [...new Set(rows.map((row) => row[axis] as number))]);
  if (values.reduce((size, { length }) => size * length, 1) > largestGrid) return [];
  const printed = new Map<string, RatingRow>();
  for (const row of rows) {
    const key = stated.map((axis) => row[axis]).join('/');
    if (!printed.has(key)) printed.set(key, row);
  }
  const places = values.reduce<number[][]>(
    (some, next) => some.flatMap((place) => next.map((value) => [...place, value])),
    [[]],
  );
  return places.map((place): RatingRow => {
    const found = printed.get(place.join('/'));
    const at = Object.fromEntries(stated.map((axis, i) => [axis, place[i]])) as Pick<RatingRow, Axis>;
    return found ?? { ...at, total: null, sensible: null, power: null };
  });
}
