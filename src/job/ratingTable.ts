/** The figures typed from the maker's table: tidy rows, each at its outdoor temperature, entering wet bulb and airflow block. */
import { chosen } from './choices.ts';
import { systemOf } from './entered.ts';
import { headKey } from './ratingHeads.ts';
import { ratingSeries } from './ratingSeries.ts';
import { cellText, tables } from './tables.ts';
import type { Edit, Job, TypedTable, UnitKey } from './types.ts';
import { toSi } from './units.ts';

export type Figure = 'total' | 'sensible';

const figures: readonly string[] = ['total', 'sensible'] satisfies Figure[];

/** Where a figure stands, in the texts of a row. */
export interface RatingPlace {
  readonly outdoorDryBulb: string;
  readonly enteringWetBulb: string;
  readonly block: string;
}

/** What a bare figure means: as chosen, else as the table has it, else the usual unit of the system. */
export function figureUnit(job: Job): UnitKey {
  const stored = job.tables.rating?.columns.find(({ key }) => key === 'total')?.unit;
  return chosen(job, 'rating.unit') ?? stored ?? (systemOf(job) === 'si' ? 'kw' : 'btuh');
}

/** The text typed for a figure; '' where there is none. */
export function figureText(job: Job, place: RatingPlace, figure: Figure): string {
  const table = job.tables.rating;
  const row = table?.rows.find((one) => isAt(table, one, place));
  return table === undefined || row === undefined ? '' : cellText(table, row, figure);
}

/**
 * The edits for a figure typed into a cell. Figures at other heads stay, so that they come back when the readings do. The
 * series is kept with the first figure, because it says what the heads were.
 */
export function setCell(
  job: Job,
  cell: { readonly key: string; readonly quantity: Figure },
  text: string,
): readonly Edit[] {
  const [outdoorDryBulb = '', enteringWetBulb = '', block = ''] = cell.key.split('/');
  const place = { outdoorDryBulb, enteringWetBulb, block };
  const table = complete(job);
  const at = table.rows.findIndex((row) => isAt(table, row, place));
  const blank: Readonly<Record<string, string>> = { ...place };
  const old = table.rows[at] ?? table.columns.map(({ key }) => blank[key] ?? '');
  const row = old.map((was, index) => (table.columns[index]?.key === cell.quantity ? text : was));
  const rows = at < 0 ? [...table.rows, row] : table.rows.map((other, index) => (index === at ? row : other));
  const kept = rows.filter((one) => figures.some((figure) => cellText(table, one, figure) !== ''));
  const to = kept.length === 0 ? undefined : { columns: table.columns, rows: kept };
  const series: Edit = { slot: 'chosen', key: 'rating.series', to: ratingSeries(job) };
  return [{ slot: 'tables', key: 'rating', to }, ...(job.chosen['rating.series'] === undefined ? [series] : [])];
}

function isAt(table: TypedTable, row: readonly string[], place: RatingPlace): boolean {
  const temperature = (column: 'outdoorDryBulb' | 'enteringWetBulb') => {
    const unit = table.columns.find(({ key }) => key === column)?.unit ?? 'degC';
    return headKey(toSi(Number(cellText(table, row, column)), unit));
  };
  return (
    temperature('outdoorDryBulb') === place.outdoorDryBulb &&
    temperature('enteringWetBulb') === place.enteringWetBulb &&
    (cellText(table, row, 'block') || '1') === place.block
  );
}

/** The table with every column that figures need, in the unit of a bare figure. */
function complete(job: Job): TypedTable {
  const unit = figureUnit(job);
  const usual: Readonly<Record<string, UnitKey>> = {
    outdoorDryBulb: 'degC',
    enteringWetBulb: 'degC',
    block: 'count',
    total: unit,
    sensible: unit,
  };
  const { columns, rows }: TypedTable = job.tables.rating ?? { columns: [], rows: [] };
  const missing = tables.rating.filter((key) => !columns.some((column) => column.key === key));
  const inUnit = columns.map((column) => (figures.includes(column.key) ? { ...column, unit } : column));
  return {
    columns: [...inUnit, ...missing.map((key) => ({ key, unit: usual[key] ?? 'count' }))],
    rows: rows.map((row) => [...row, ...missing.map((key) => (key === 'block' ? '1' : ''))]),
  };
}
