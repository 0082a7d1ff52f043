/** Blocks: temperatures across, a temperature down, figures between; one block for each airflow. */
import { filledRow, newBook } from './book.ts';
import { kindOf } from './cell.ts';
import { type HeadRow, headRowAt } from './headRows.ts';
import { importLimits } from './limits.ts';
import { afterLine, nothingStated, type Stated, saysSomething } from './lines.ts';
import type { Group, Layout, Mention, Sheet, Spot } from './types.ts';
import { basisIn, isAxis, isFigure, roleIn } from './vocabulary.ts';

/** How many rows above a head may carry words that belong to it. */
const rowsAbove = 3;

/** The layout of a sheet of blocks; `null` where no row of it is the head of one. */
export function blocksIn(sheet: Sheet): Layout | null {
  const book = newBook();
  const groups: Group[] = [];
  const skipped: Spot[] = [];
  const words: string[] = [];
  const lines: string[] = [];
  let head: HeadRow | null = null;
  let stated: Stated = nothingStated;
  let inFigures = false;
  for (let row = 0; row < sheet.length && groups.length <= importLimits.figures; row++) {
    const cells = sheet[row] ?? [];
    if (cells.every((cell) => cell === '')) {
      inFigures = false;
      continue;
    }
    const text = cells.filter((cell) => cell !== '').join(' ');
    words.push(text);
    if (head && row < head.dataRow && !isLineOf(cells, head)) {
      // Heads of heads have words before them; a number there is that of a row whose figures are all spoilt.
      if (cells.slice(0, head.first).some((cell) => kindOf(cell) === 'number'))
        skipped.push({ row, column: head.first });
      continue;
    }
    const next = headRowAt(sheet, row, inFigures ? head : null);
    inFigures = false;
    if (next) {
      // The corner of a head may name the airflow of its block.
      stated = afterLine(book, cells.slice(0, next.first), row, stated);
      head = next;
      continue;
    }
    if (head && row >= head.dataRow && isFigureRow(cells, head)) {
      groups.push(...rowGroups(row, head));
      inFigures = true;
      continue;
    }
    lines.push(text);
    const after = afterLine(book, cells, row, stated);
    if (head && after === stated && !saysSomething(text)) {
      skipped.push({ row, column: cells.findIndex((cell) => cell !== '') });
    }
    stated = after;
  }
  if (groups.length === 0) return null;
  return { kind: 'blocks', meanings: book.close(lines.join(' ')), groups, skipped, basis: basisIn(words.join(' ')) };

  /** One group for each figure of a row. */
  function rowGroups(row: number, of: HeadRow): Group[] {
    const cells = sheet[row] ?? [];
    const places = [...stated.mentions.values(), ...rowHeads(row, of)];
    const label = cells.slice(0, of.first).find((cell) => kindOf(cell) === 'word' && isFigure(roleIn(cell)));
    const found: Group[] = [];
    for (let column = of.first; column < of.end; column++) {
      const text = cells[column] ?? '';
      const across = acrossAt(of, column);
      if (across === null || (text === '' && columnIsEmpty(of, column))) continue;
      const { title, under } = columnWords(of, column);
      const said = label ?? (isFigure(roleIn(title)) ? title : stated.figures || title);
      const meaning = book.note(`figures:${said}`, 'figures', said, text);
      found.push([...places, across, ...under, { meaning, row, column }]);
    }
    return found;
  }

  function rowHeads(row: number, of: HeadRow): Mention[] {
    return Array.from({ length: of.first }, (_, column): Mention[] => {
      const from = filledRow(sheet, { row, column }, of.dataRow);
      const text = from === null ? '' : (sheet[from]?.[column] ?? '');
      if (from === null || kindOf(text) !== 'number') return [];
      const meaning = book.note(`column:${column}`, 'column', headWords(of, column), text);
      return [{ meaning, row, column, ...(from === row ? {} : { from }) }];
    }).flat();
  }

  /** The temperature over a column: its own, or that of the merged cell which it lies under. */
  function acrossAt(of: HeadRow, column: number): Mention | null {
    const at = of.columns.findLast((one) => one <= column);
    if (at === undefined) return null;
    const text = sheet[of.row]?.[at] ?? '';
    const over = wordsAbove(of, (one) => one >= of.first).find((line) => isAxis(roleIn(line)));
    const corner = (sheet[of.row] ?? []).slice(0, of.first).find((cell) => roleIn(cell) === 'outdoorDryBulb');
    const meaning = book.note('across', 'across', over ?? corner ?? '', text, 'outdoorDryBulb');
    return { meaning, row: of.row, column: at };
  }

  /** Figure words over or under the heads of a column, and the dry bulb that a second row of heads gives it. */
  function columnWords(of: HeadRow, column: number): { title: string; under: Mention[] } {
    const start = of.columns.findLast((one) => one <= column) ?? column;
    const titles: string[] = [];
    const under: Mention[] = [];
    for (let row = of.row + 1; row < of.dataRow; row++) {
      const cells = sheet[row] ?? [];
      const own = cells[column] ?? '';
      if (kindOf(own) === 'number') {
        const meaning = book.note('under', 'under', '', own, 'enteringDryBulb');
        under.push({ meaning, row, column });
        continue;
      }
      const at = lastFilled(cells, start, column);
      if (at !== null && kindOf(cells[at] ?? '') === 'word') titles.push(cells[at] ?? '');
    }
    for (let row = of.row - 1; row >= Math.max(0, of.row - rowsAbove); row--) {
      const cells = sheet[row] ?? [];
      const at = lastFilled(cells, of.first, column);
      if (at !== null && isFigure(roleIn(cells[at] ?? '')) && !isData(row, of)) titles.push(cells[at] ?? '');
    }
    return { title: titles.filter((title) => isFigure(roleIn(title)) || titles.length === 1).join(' '), under };
  }

  function isData(row: number, of: HeadRow): boolean {
    return (sheet[row] ?? []).slice(of.first).some((cell) => kindOf(cell) === 'number');
  }

  function headWords(of: HeadRow, column: number): string {
    const lines: string[] = [];
    for (let row = Math.max(0, of.row - 1); row < of.dataRow; row++) {
      const cells = sheet[row] ?? [];
      const cell = cells[column] ?? '';
      if (kindOf(cell) === 'word' && !isLineOf(cells, of)) lines.push(cell);
    }
    return lines.join(' ');
  }

  function wordsAbove(of: HeadRow, where: (column: number) => boolean): string[] {
    const lines: string[] = [];
    for (let row = of.row - 1; row >= Math.max(0, of.row - rowsAbove); row--) {
      lines.push(...(sheet[row] ?? []).filter((cell, column) => where(column) && kindOf(cell) === 'word'));
    }
    return lines;
  }

  function columnIsEmpty(of: HeadRow, column: number): boolean {
    return (sheet[of.dataRow]?.[column] ?? '') === '' && (sheet[of.dataRow + 1]?.[column] ?? '') === '';
  }
}

function lastFilled(cells: readonly string[], from: number, to: number): number | null {
  for (let at = to; at >= from; at--) if ((cells[at] ?? '') !== '') return at;
  return null;
}

/** A line between the heads and their figures, such as the airflow of the first block: it has nothing over the figures. */
function isLineOf(cells: readonly string[], { first }: HeadRow): boolean {
  return cells.slice(first).every((cell) => cell === '') && cells.some((cell) => /\d/.test(cell));
}

/** Figures under the heads: more of them than words, and not a line of one cell. */
function isFigureRow(cells: readonly string[], { first, end }: HeadRow): boolean {
  const kinds = cells.slice(first, end).map(kindOf);
  const numbers = kinds.filter((kind) => kind === 'number' || kind === 'none').length;
  const words = kinds.filter((kind) => kind === 'word').length;
  return numbers > 0 && kinds.includes('number') && numbers >= words;
}
