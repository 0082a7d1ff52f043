/** The cells of a table that a person types into, read and typed. A row or a column that nobody has typed in is not stored. */
import { withOwnUnit } from './edit.ts';
import { systemOf } from './entered.ts';
import { type QuantityKey, unitOf } from './quantities.ts';
import { type Read, read } from './read.ts';
import { cellText, type TableKey } from './tables.ts';
import type { Edit, Job, TypedTable, UnitKey } from './types.ts';

/** A table with figures in its cells: its columns, and what the figures of each are; `null` for a column of words. */
export interface Grid {
  readonly key: TableKey;
  readonly columns: readonly string[];
  readonly quantity: (column: string) => QuantityKey | null;
}

export interface GridCell {
  readonly text: string;
  /** What a bare number in it means. */
  readonly unit: UnitKey;
  readonly read: Read;
}

export interface GridPlace {
  readonly row: number;
  readonly column: string;
}

/** One cell; an empty one where nothing is stored. */
export function cellOf(job: Job, grid: Grid, { row, column }: GridPlace): GridCell {
  const table = job.tables[grid.key];
  const quantity = grid.quantity(column);
  const unit = table?.columns.find(({ key }) => key === column)?.unit ?? usualUnit(job, quantity);
  const text = table?.rows[row] ? cellText(table, table.rows[row], column) : '';
  return { text, unit, read: quantity === null ? { state: 'empty' } : read(text, quantity, unit) };
}

/** How many rows are stored. */
export const rowsOf = (job: Job, { key }: Pick<Grid, 'key'>): number => job.tables[key]?.rows.length ?? 0;

/**
 * The edit for a text typed into a cell, a bare number in it being in `unit`: where the column is kept in another one, the
 * unit is written behind the number. Words for other cells of a row that has none there yet come along in `also`. Rows that are
 * empty at the end go.
 */
export function typedCell(
  job: Job,
  grid: Grid,
  at: GridPlace,
  text: string,
  unit: UnitKey,
  also: Readonly<Record<string, string>> = {},
): Edit {
  const table = complete(job, grid, at.column, unit);
  const index = table.columns.findIndex(({ key }) => key === at.column);
  const kept = table.columns[index]?.unit === unit ? text : withOwnUnit(text, unit);
  const blank = table.columns.map(() => '');
  const count = Math.max(table.rows.length, at.row + 1);
  const changed = (old: readonly string[]) =>
    old.map((was, one) => (one === index ? kept : was === '' ? (also[table.columns[one]?.key ?? ''] ?? '') : was));
  const rows = Array.from({ length: count }, (_, row) => {
    const old = table.rows[row] ?? blank;
    return row === at.row ? changed(old) : old;
  });
  const figures = table.columns.map(({ key }) => grid.quantity(key) !== null);
  const last = rows.findLastIndex((row) => row.some((cell, one) => figures[one] && cell !== ''));
  const to: TypedTable | undefined = last < 0 ? undefined : { columns: table.columns, rows: rows.slice(0, last + 1) };
  return { slot: 'tables', key: grid.key, to };
}

/** The table with all its columns; a column that is new is kept in the unit of what is typed into it first. */
function complete(job: Job, { key, columns, quantity }: Grid, column: string, unit: UnitKey): TypedTable {
  const old: TypedTable = job.tables[key] ?? { columns: [], rows: [] };
  const missing = columns.filter((name) => !old.columns.some((one) => one.key === name));
  const usual = (name: string) => (quantity(name) === quantity(column) ? unit : usualUnit(job, quantity(name)));
  return {
    columns: [...old.columns, ...missing.map((name) => ({ key: name, unit: usual(name) }))],
    rows: old.rows.map((row) => [...row, ...missing.map(() => '')]),
  };
}

const usualUnit = (job: Job, quantity: QuantityKey | null): UnitKey =>
  quantity === null ? 'count' : unitOf(quantity, systemOf(job));
