/** Tidy rows: every line has its temperatures and its figures, each in its own column. */
import { filledRow, newBook } from './book.ts';
import { kindOf } from './cell.ts';
import { importLimits } from './limits.ts';
import { afterLine, nothingStated, saysSomething } from './lines.ts';
import type { Group, Layout, Mention, Sheet, Spot } from './types.ts';
import { basisIn, roleIn } from './vocabulary.ts';

/** Rows above the first figures that may be heads. */
const headRows = 3;
const fewest = 3;

/** The layout of a sheet of tidy rows; `null` where there are no rows of figures. */
export function tidyIn(sheet: Sheet): Layout | null {
  const filled = sheet.flatMap((cells, row) => (countOf(cells) >= fewest ? [row] : []));
  const [sure] = filled;
  if (sure === undefined) return null;
  const columns = columnsIn(sheet, filled);
  const isRow = (cells: readonly string[]) => figuresIn(cells, columns) >= Math.max(2, columns.length / 3);
  let start = sure;
  while (isRow(sheet[start - 1] ?? [])) start--;
  const titles = new Map(columns.map((column) => [column, titleOf(sheet, start, column, columns)]));
  const book = newBook();
  const groups: Group[] = [];
  const skipped: Spot[] = [];
  const words: string[] = [];
  const lines: string[] = [];
  let stated = nothingStated;
  for (let row = 0; row < sheet.length && groups.length * columns.length <= importLimits.figures * 2; row++) {
    const cells = sheet[row] ?? [];
    const text = cells.filter((cell) => cell !== '').join(' ');
    if (text === '') continue;
    if (row >= start && isRow(cells)) {
      const own = columns.map((column): Mention => {
        const from = filledRow(sheet, { row, column }, start);
        const meaning = book.note(`column:${column}`, 'column', titles.get(column) ?? '', cells[column] ?? '');
        return { meaning, row, column, ...(from === null || from === row ? {} : { from }) };
      });
      groups.push([...stated.mentions.values(), ...own]);
      continue;
    }
    words.push(text);
    const isHead = row < start && row >= start - headRows && cells.filter((cell) => kindOf(cell) === 'word').length > 1;
    if (!isHead) lines.push(text);
    const after = isHead ? stated : afterLine(book, cells, row, stated);
    if (row > start && !isHead && after === stated && !saysSomething(text)) {
      skipped.push({ row, column: cells.findIndex((cell) => cell !== '') });
    }
    stated = after;
  }
  return { kind: 'tidy', meanings: book.close(lines.join(' ')), groups, skipped, basis: basisIn(words.join(' ')) };
}

const figuresIn = (cells: readonly string[], columns: readonly number[]) =>
  countOf(columns.map((column) => cells[column] ?? ''));
const countOf = (cells: readonly string[]) => cells.filter((cell) => kindOf(cell) === 'number').length;

/** The columns with figures in them, and those of words that a head calls a stage. */
function columnsIn(sheet: Sheet, filled: readonly number[]): number[] {
  const widest = filled.reduce((most, row) => Math.max(most, sheet[row]?.length ?? 0), 0);
  const [start = 0] = filled;
  const looked = filled.slice(0, 200);
  return Array.from({ length: widest }, (_, column) => column).filter((column) => {
    const numbers = looked.filter((row) => kindOf(sheet[row]?.[column] ?? '') === 'number').length;
    // A merged cell leaves most of its column empty.
    const words = looked.filter((row) => kindOf(sheet[row]?.[column] ?? '') === 'word').length;
    return numbers > words || (words > 0 && roleIn(titleOf(sheet, start, column, [])) === 'stage');
  });
}

/** The words over a column, in the rows of words directly above the first figures. */
function titleOf(sheet: Sheet, start: number, column: number, columns: readonly number[]): string {
  const lines: string[] = [];
  for (let row = start - 1; row >= Math.max(0, start - headRows); row--) {
    const cells = sheet[row] ?? [];
    const over = columns.length === 0 ? cells : columns.map((one) => cells[one] ?? '');
    if (over.filter((cell) => cell !== '').length < 2) break;
    const cell = cells[column] ?? '';
    if (kindOf(cell) === 'word') lines.unshift(cell);
  }
  return lines.join(' ');
}
