/** What is said of single cells: words among figures, figures in another unit, empty ones, rows that are all alike. */
import { unitLabel } from '../format.ts';
import type { Good } from '../read.ts';
import type { UnitKey } from '../types.ts';
import { isFormula, kindOf } from './cell.ts';
import { finding, quoted } from './finding.ts';
import { readCell } from './reading.ts';
import type { CellRead } from './rows.ts';
import type { Finding, FindingCode, Meaning } from './types.ts';
import { isAxis, isFigure, unitsOf } from './vocabulary.ts';

/** Alike in so many rows, a column may have been filled down by accident. */
const flatFrom = 4;
/** How far beyond the others a figure in its right unit may be: a share of a capacity, kelvins of a temperature. */
const reach = { share: 0.5, kelvins: 8 } as const;

export function cellFindings(cells: readonly CellRead[]): Finding[] {
  const groups = new Map<string, { readonly found: Finding; readonly cells: CellRead[]; readonly texts: string[] }>();
  const ranges = new Map<string, readonly [number, number]>();
  for (const cell of cells) {
    const one = judged(cell, ranges, cells);
    if (one === null) continue;
    const key = `${one.found.code} ${one.found.fix === null ? '' : cell.meaning.id}`;
    const group = groups.get(key) ?? { found: one.found, cells: [], texts: [] };
    groups.set(key, group);
    group.cells.push(cell);
    group.texts.push(one.text);
  }
  const gathered = [...groups.values()].map(({ found, cells: having, texts }): Finding => {
    const fixed = having.map(({ row, column }, at) => ({ row, column, text: texts[at] ?? '' }));
    return { ...found, count: having.length, fix: found.fix && { kind: 'cells', cells: fixed } };
  });
  return [...gathered, ...flat(cells)];
}

interface Judged {
  readonly found: Finding;
  /** What would stand in the cell after the fix. */
  readonly text: string;
}

function judged(
  cell: CellRead,
  ranges: Map<string, readonly [number, number]>,
  cells: readonly CellRead[],
): Judged | null {
  const { text, read, meaning, filled } = cell;
  const say = (code: FindingCode, weight: Finding['weight'], reading = '', fixed = ''): Judged => {
    const fix: Finding['fix'] = fixed === '' ? null : { kind: 'cells', cells: [] };
    return { found: finding(code, weight, { spot: cell, ...quoted(text), reading, fix }), text: fixed };
  };
  if (filled) return say('filled', 'note', text);
  if (isFormula(text)) return say('formula', 'doubt');
  const kind = kindOf(text);
  if (read.state === 'empty' || kind === 'none')
    return isFigure(meaning.role) ? say('holes', 'note') : say('headMissing', 'doubt');
  const range = ranges.get(meaning.id) ?? rangeOf(meaning, cells);
  ranges.set(meaning.id, range);
  if (read.state === 'read' && read.usual) return null;
  const other = inOtherUnit(cell, range);
  if (other !== null) return say('cellInOtherUnit', 'doubt', other, other);
  if (read.state === 'read') return null;
  if (read.code !== 'notANumber' && read.code !== 'twoNumbers' && read.code !== 'wrongUnit')
    return say('impossible', 'doubt');
  const number = /[+-]?\d[\d.,' ]*\d|\d/.exec(text)?.[0] ?? '';
  const without = number === '' ? null : readCell(number, meaning.role, meaning.unit);
  return without?.state === 'read' ? say('strayWord', 'doubt', number, number) : say('notANumber', 'doubt');
}

/** The least and the most of the usual figures of a kind, SI. */
function rangeOf(meaning: Meaning, cells: readonly CellRead[]): readonly [number, number] {
  const values = cells.flatMap(({ meaning: own, read }) =>
    own.id === meaning.id && read.state === 'read' && read.usual ? [read.si] : [],
  );
  return [Math.min(...values), Math.max(...values)];
}

/** The cell with another unit behind it, where that puts it among the others; `null` where none does. */
function inOtherUnit({ text, meaning, read }: CellRead, [low, high]: readonly [number, number]): string | null {
  if (!Number.isFinite(low) || kindOf(text) !== 'number') return null;
  const slack = isAxis(meaning.role) && meaning.role !== 'airflow' ? reach.kelvins : low * reach.share;
  const among = (si: number, more: number) => si >= low - more && si <= high + more;
  if (read.state === 'read' && among(read.si, 0)) return null;
  for (const unit of unitsOf(meaning.role)) {
    if (unit === meaning.unit) continue;
    const other = readCell(text, meaning.role, unit);
    if (isUsual(other) && among(other.si, slack)) return withUnitBehind(text, unit);
  }
  return null;
}

const isUsual = (read: ReturnType<typeof readCell>): read is Good => read.state === 'read' && read.usual;
const withUnitBehind = (text: string, unit: UnitKey) =>
  `${text} ${unitLabel(unit) || (unit === 'mbh' ? 'MBh' : '')}`.trim();

/** Totals that do not change over so many rows. */
function flat(cells: readonly CellRead[]): Finding[] {
  const columns = new Map<string, CellRead[]>();
  for (const cell of cells) {
    if (cell.meaning.role !== 'total' || cell.read.state !== 'read') continue;
    const key = `${cell.meaning.id} ${cell.column}`;
    const column = columns.get(key) ?? [];
    column.push(cell);
    columns.set(key, column);
  }
  const level = [...columns.values()].filter((column) => {
    const values = column.map(({ read }) => (read.state === 'read' ? read.si : 0));
    return column.length >= flatFrom && values.every((value) => value === values[0]);
  });
  const [first] = level[0] ?? [];
  return first ? [finding('flat', 'doubt', { spot: first, ...quoted(first.text), count: level.length })] : [];
}
