/** Rows of a sheet that carry temperatures across: the heads of blocks. */
import { bareNumber, kindOf } from './cell.ts';
import type { Sheet } from './types.ts';

export interface HeadRow {
  readonly row: number;
  /** The columns with a number, ascending. */
  readonly columns: readonly number[];
  /** The first column of figures, and the one behind the last. */
  readonly first: number;
  readonly end: number;
  /** The first row of figures below. */
  readonly dataRow: number;
}

/** Temperatures in either unit. */
const lowest = 10;
const highest = 130;
/** How many filled rows below a head are looked at for its figures: heads of heads, and units, come between. */
const subHeads = 4;

/**
 * The head row at a place, or `null` where there is none. `above`: the head of the figures directly above, if there are any: a
 * block that follows without a gap begins with the same head.
 */
export function headRowAt(sheet: Sheet, row: number, above: HeadRow | null): HeadRow | null {
  const cells = sheet[row] ?? [];
  if (kindOf(cells[0] ?? '') === 'number') return null;
  const columns = numbersIn(cells);
  const [first = 0] = columns;
  if (columns.length < 2 || !areTemperatures(cells, columns)) return null;
  if (above && !repeats(sheet, row, above, columns)) return null;
  const under = below(sheet, row);
  const at = under.findIndex((one) => isData(sheet, one, first));
  const dataRow = under[at];
  if (dataRow === undefined) return null;
  const span = sheet[dataRow] ?? [];
  const having = columns.filter(
    (column) => kindOf(span[column] ?? '') !== 'empty' && kindOf(span[column] ?? '') !== 'word',
  );
  if (having.length * 2 < columns.length) return null;
  return { row, columns, first, end: endOf(columns, span), dataRow };
}

/** Whether a row has figures: a number before them, or a label that a block repeats, and numbers from `first` on. */
export function isData(sheet: Sheet, row: number, first: number): boolean {
  const cells = sheet[row] ?? [];
  const before = cells.slice(0, first).some((cell) => kindOf(cell) === 'number');
  return before && cells.slice(first).some((cell) => kindOf(cell) === 'number');
}

export function numbersIn(cells: readonly string[]): number[] {
  return cells.flatMap((cell, column) => (kindOf(cell) === 'number' ? [column] : []));
}

function areTemperatures(cells: readonly string[], columns: readonly number[]): boolean {
  const values = columns.map((column) => bareNumber(cells[column] ?? '') ?? Number.NaN);
  if (!values.every((value) => value >= lowest && value <= highest)) return false;
  const different = values.filter((value, i) => value !== values[i - 1]);
  const [start] = different;
  if (new Set(different).size < 2) return false;
  const rising = different.every((value, i) => i === 0 || value > (different[i - 1] ?? 0) || value === start);
  const falling = different.every((value, i) => i === 0 || value < (different[i - 1] ?? 0) || value === start);
  return rising || falling;
}

function repeats(sheet: Sheet, row: number, above: HeadRow, columns: readonly number[]): boolean {
  const same = (column: number) =>
    bareNumber(sheet[row]?.[column] ?? '') === bareNumber(sheet[above.row]?.[column] ?? '');
  return columns.length === above.columns.length && columns.every(same);
}

function below(sheet: Sheet, row: number): number[] {
  const found: number[] = [];
  for (let at = row + 1; found.length < subHeads && at < sheet.length; at++) {
    if (sheet[at]?.some((cell) => cell !== '')) found.push(at);
  }
  return found;
}

/** Groups of columns are alike: the last is as wide as the narrowest of the others. */
function endOf(columns: readonly number[], data: readonly string[]): number {
  const widths = columns.slice(1).map((column, i) => column - (columns[i] ?? 0));
  const last = columns.at(-1) ?? 0;
  return Math.min(Math.max(data.length, last + 1), last + Math.min(...widths));
}
