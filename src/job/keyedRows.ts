/** Tables whose rows have a key of their own: to find a row, to add one, to type in it, to take it out. */
import { withOwnUnit } from './edit.ts';
import { cellText } from './tables.ts';
import type { TypedTable, UnitKey } from './types.ts';

/** What is typed, by column. */
type Texts = Readonly<Partial<Record<string, string>>>;
/** The unit that a bare number in a column is typed in, given the unit that the column is kept in. */
type TypedIn = (column: string, kept: UnitKey) => UnitKey;

/** The place of the row with a key; −1 when there is none. */
export function rowOf(table: TypedTable, key: string): number {
  return table.rows.findIndex((row) => cellText(table, row, 'key') === key);
}

/** The table with all the columns of `fresh`, those that it lacks behind its own; `fresh` itself when there is none. */
export function complete(table: TypedTable | undefined, fresh: TypedTable): TypedTable {
  if (table === undefined) return fresh;
  const missing = fresh.columns.filter(({ key }) => !table.columns.some((column) => column.key === key));
  return { ...table, columns: [...table.columns, ...missing] };
}

/** The table with one row more. */
export function withRow(table: TypedTable, key: string, texts: Texts, typedIn: TypedIn): TypedTable {
  const row = table.columns.map((column) => (column.key === 'key' ? key : ''));
  return withTexts({ ...table, rows: [...table.rows, row] }, key, texts, typedIn);
}

/** The table without a row. */
export function withoutRow(table: TypedTable, key: string): TypedTable {
  const at = rowOf(table, key);
  return { ...table, rows: table.rows.filter((_, index) => index !== at) };
}

/** The table with texts in one of its rows; where a bare number would mean another unit there, its own is written behind it. */
export function withTexts(table: TypedTable, key: string, texts: Texts, typedIn: TypedIn): TypedTable {
  const at = rowOf(table, key);
  const changed = (row: readonly string[]) =>
    table.columns.map(({ key: column, unit }, index) => {
      const text = texts[column];
      if (text === undefined) return row[index] ?? '';
      const meant = typedIn(column, unit);
      return unit === meant ? text : withOwnUnit(text, meant);
    });
  return { ...table, rows: table.rows.map((row, index) => (index === at ? changed(row) : row)) };
}
