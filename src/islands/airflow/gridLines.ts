/** How the cells of a grid are laid out to be typed into. */
import { type GridPlace, gridRows } from '~/job/airflow/grid.ts';
import type { AirflowTableKey } from '~/job/airflow/tables.ts';
import { gridWords } from '~/words/en/airflowGrid.ts';
import { job } from '../jobStore.ts';

/** One line as it is shown: its head and its cells, each with the name that it is heard by. */
export interface GridLine {
  readonly head: string;
  readonly cells: readonly (GridPlace & { readonly name: string })[];
}

export interface GridColumn {
  readonly column: string;
  readonly head: string;
}

/** A row of the table a line, in the order of its columns. */
export function plainLines(
  rows: number,
  columns: readonly GridColumn[],
  rowHead: (row: number) => string,
): readonly GridLine[] {
  return Array.from({ length: rows }, (_, row) => ({
    head: rowHead(row),
    cells: columns.map(({ column, head }) => ({ row, column, name: gridWords.cell(rowHead(row), head) })),
  }));
}

/** The same where a row is too long for a phone: in pieces under one another. `pieceHead` names the row and its first and last cell. */
export function brokenLines(
  lines: readonly GridLine[],
  most: number,
  pieceHead: (row: number, first: number, last: number) => string,
): readonly GridLine[] {
  return lines.flatMap(({ cells }, row) => {
    const pieces = Math.ceil(cells.length / most);
    const each = Math.ceil(cells.length / pieces);
    return Array.from({ length: pieces }, (_, piece) => {
      const own = cells.slice(piece * each, (piece + 1) * each);
      return { head: pieceHead(row, piece * each + 1, piece * each + own.length), cells: own };
    });
  });
}

/** All places of some columns, for a block that is put in. */
export function allPlaces(rows: number, columns: readonly string[]): readonly (readonly GridPlace[])[] {
  return Array.from({ length: rows }, (_, row) => columns.map((column) => ({ row, column })));
}

/** How many rows of a grid are open to be typed into: those that are filled and one more. */
export function openRows(table: AirflowTableKey, most: number, least = 1): number {
  return Math.min(most, Math.max(least, gridRows(job.value, table) + 1));
}
