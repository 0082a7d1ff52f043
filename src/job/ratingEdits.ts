/** The edits of the figures of the maker's table. */
import { ratingSeries } from './ratingSeries.ts';
import { type Figure, figureUnit, isAt } from './ratingTable.ts';
import { cellText, tables } from './tables.ts';
import type { Edit, Job, TypedTable, UnitKey } from './types.ts';

const figures: readonly string[] = ['total', 'sensible'] satisfies Figure[];

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
