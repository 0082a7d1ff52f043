/** The maker's factors on a base block: for other airflows, for the indoor unit, for the length of the lines. */
import { bareNumber, kindOf } from './cell.ts';
import type { Factors, Sheet, Spot } from './types.ts';
import { roleIn, unitIn } from './vocabulary.ts';

export interface FoundFactors {
  readonly factors: readonly Factors[];
  /** The sheet with their rows emptied, so that nobody takes them for figures. */
  readonly rest: Sheet;
}

const announced = /multipl|correction|\bfactors?\b/i;
const causes: readonly (readonly [Factors['cause'], RegExp])[] = [
  ['airflow', /air ?-?flow|air ?volume|\bs?cfm\b|\bl\/s\b|m[³3]\/h/i],
  ['lineLength', /\blines?\b|line ?set|pipe|piping|tubing|length/i],
  ['indoorMatch', /indoor|coil|air handler|match|evaporator/i],
];
/** What a factor of a maker can be. */
const least = 0.5;
const most = 1.5;
const longest = 40;

export function factorsIn(sheet: Sheet): FoundFactors {
  const factors: Factors[] = [];
  const taken = new Set<number>();
  for (let row = 0; row < sheet.length; row++) {
    const words = (sheet[row] ?? []).filter((cell) => kindOf(cell) === 'word').join(' ');
    if (taken.has(row) || !announced.test(words) || roleIn(words) === 'ratio') continue;
    const rows = rowsBelow(sheet, row);
    const found = across(sheet, row, rows, words) ?? down(sheet, row, rows, words);
    if (!found) continue;
    factors.push(found);
    for (const one of [row, ...rows]) taken.add(one);
  }
  return { factors, rest: taken.size === 0 ? sheet : sheet.map((cells, row) => (taken.has(row) ? [] : cells)) };
}

/** The rows under an announcement, to the first empty one. */
function rowsBelow(sheet: Sheet, row: number): number[] {
  const rows: number[] = [];
  for (let at = row + 1; rows.length < longest && (sheet[at] ?? []).some((cell) => cell !== ''); at++) {
    if (announced.test((sheet[at] ?? []).join(' ')) && rows.length > 1) break;
    rows.push(at);
  }
  return rows;
}

const causeIn = (words: string) => causes.find(([, sign]) => sign.test(words))?.[0];
const isFactor = (text: string) => {
  const number = kindOf(text) === 'number' ? bareNumber(text) : null;
  return number !== null && number >= least && number <= most;
};

/** Airflows or lengths across, a row of factors for the total and one for the sensible. */
function across(sheet: Sheet, row: number, rows: readonly number[], words: string): Factors | null {
  const head = [row, ...rows].find((at) => {
    const numbers = (sheet[at] ?? []).filter((cell) => kindOf(cell) === 'number');
    return numbers.length >= 2 && !numbers.some(isFactor);
  });
  if (head === undefined) return null;
  const below = rows.filter((at) => at > head && (sheet[at] ?? []).some(isFactor));
  const cause = causeIn(`${words} ${(sheet[head] ?? []).join(' ')}`);
  const sensible = below.find((at) => labelRole(sheet[at] ?? []) === 'sensible');
  const total = below.find((at) => at !== sensible);
  if (cause === undefined || total === undefined) return null;
  const columns = (sheet[head] ?? []).flatMap((cell, column) => (kindOf(cell) === 'number' ? [column] : []));
  const lines = columns
    .filter((column) => isFactor(sheet[total]?.[column] ?? ''))
    .map((column) => ({
      of: sheet[head]?.[column] ?? '',
      total: sheet[total]?.[column] ?? '',
      sensible: sensible === undefined ? '' : (sheet[sensible]?.[column] ?? ''),
    }));
  const unit = unitIn(`${words} ${(sheet[head] ?? []).join(' ')}`, 'airflow');
  return lines.length === 0 ? null : { cause, title: words, spot: spotOf(sheet, row), unit, lines };
}

/** One line for each airflow, length or model, its factors beside it. */
function down(sheet: Sheet, row: number, rows: readonly number[], words: string): Factors | null {
  const isLine = (at: number) => {
    const [, ...rest] = (sheet[at] ?? []).filter((cell) => cell !== '');
    return rest.length > 0 && rest.every(isFactor);
  };
  const lines = rows.filter(isLine);
  const heads = [row, ...rows].filter((at) => !isLine(at));
  const cause = causeIn(heads.map((at) => (sheet[at] ?? []).join(' ')).join(' '));
  if (lines.length === 0 || cause === undefined) return null;
  const sensibleFirst = heads.some((at) => {
    const roles = (sheet[at] ?? []).map(roleIn);
    return roles.includes('sensible') && roles.indexOf('sensible') < roles.indexOf('total');
  });
  return {
    cause,
    title: words,
    spot: spotOf(sheet, row),
    unit: unitIn(heads.map((at) => (sheet[at] ?? []).join(' ')).join(' '), 'airflow'),
    lines: lines.map((at) => {
      const [of = '', first = '', second = ''] = (sheet[at] ?? []).filter((cell) => cell !== '');
      return sensibleFirst ? { of, total: second, sensible: first } : { of, total: first, sensible: second };
    }),
  };
}

const labelRole = (cells: readonly string[]) => roleIn(cells.find((cell) => kindOf(cell) === 'word') ?? '');
const spotOf = (sheet: Sheet, row: number): Spot => ({
  row,
  column: Math.max(
    0,
    (sheet[row] ?? []).findIndex((cell) => cell !== ''),
  ),
});
