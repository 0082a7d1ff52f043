/** A record of any logger, taken apart: where its rows begin, what each column seems to be. Nothing here throws. */
import Papa from 'papaparse';
import { numberPattern, type TemperatureUnit, usesComma } from './logCells.ts';
import { columnOf, ownUnitsOf, type PressureUnit, pressureUnitOf, rolesOf, temperatureUnitOf } from './logColumns.ts';
import type { LogRole } from './roles.ts';
import { isDate } from './times.ts';

export interface LogHead {
  readonly title: string;
  readonly role: LogRole;
  /** What stands in its first rows. */
  readonly sample: string;
}

export interface OpenLog {
  readonly heads: readonly LogHead[];
  readonly rows: readonly (readonly string[])[];
  /** The line of the file on which the first row stands, from one. */
  readonly firstLine: number;
  /** Whether a comma is the decimal mark. */
  readonly comma: boolean;
  readonly temperatures: TemperatureUnit;
  /** The unit of each column, where they say different ones: those stand, whatever the others are in. */
  readonly ownUnits: readonly (TemperatureUnit | null)[] | null;
  readonly pressures: PressureUnit;
  readonly humidityAs: 'relativeHumidity' | 'wetBulb';
}

export type LogRefusal = 'empty' | 'notText' | 'noRows' | 'tooLong';
export const logLimits = { letters: 60_000_000, columns: 60 } as const;
const looked = 400;

/**
 * `together`: both probes stood in one air, so that figures do not tell them apart: where titles do not either, the first is the
 * return's.
 */
export function openLog(text: string, together = false): OpenLog | LogRefusal {
  if (text.length > logLimits.letters) return 'tooLong';
  if (text.trim() === '') return 'empty';
  if (text.slice(0, 4000).includes('\0')) return 'notText';
  const all = Papa.parse<string[]>(text, { skipEmptyLines: false, delimitersToGuess: [',', ';', '\t', '|'] }).data;
  const at = firstRow(all);
  if (at < 0) return 'noRows';
  const rows = all.slice(at);
  while (rows.length > 0 && (rows.at(-1) ?? []).every((cell) => cell.trim() === '')) rows.pop();
  const width = Math.min(logLimits.columns, Math.max(...rows.slice(0, looked).map((row) => row.length)));
  const titles = Array.from({ length: width }, (_, column) => titleOf(all, at, column));
  const texts = titles.map((_, column) => rows.slice(0, looked).map((row) => row[column] ?? ''));
  const comma = usesComma(texts.flat());
  const columns = titles.map((title, column) => columnOf(title, texts[column] ?? [], comma));
  const roles = rolesOf(columns, together);
  const wet = columns.some(({ title, kind }) => kind === 'wetBulb' && /wet|wb/i.test(title));
  return {
    heads: columns.map(({ title }, column) => ({
      title,
      role: roles[column] ?? 'none',
      sample: (texts[column] ?? []).slice(0, 3).join(', '),
    })),
    rows,
    firstLine: at + 1,
    comma,
    temperatures: temperatureUnitOf(columns),
    ownUnits: ownUnitsOf(columns),
    pressures: pressureUnitOf(columns),
    humidityAs: wet && !columns.some(({ kind }) => kind === 'humidity') ? 'wetBulb' : 'relativeHumidity',
  };
}

/** The first row of figures: two numbers at least, or a time and a number, and the like in the row below it, where there is one. */
function firstRow(all: readonly (readonly string[])[]): number {
  const isFigure = (cell: string) => numberPattern.test(cell) || isDate(cell) || /^\s*\d{1,2}:\d\d/.test(cell);
  const figures = (row: readonly string[] = []) =>
    row.some((cell) => numberPattern.test(cell)) ? row.filter(isFigure).length : 0;
  return all.slice(0, looked).findIndex((row, at) => {
    return figures(row) >= 2 && (at + 1 >= all.length || figures(all[at + 1]) >= 2 || all[at + 1]?.join('') === '');
  });
}

/** What stands above a column: its head, or the two rows of heads. */
function titleOf(all: readonly (readonly string[])[], at: number, column: number): string {
  const above = [all[at - 2]?.[column] ?? '', all[at - 1]?.[column] ?? ''].map((text) => text.trim());
  const one = above[1] !== '' && (all[at - 2]?.filter((cell) => cell.trim() !== '').length ?? 0) < 3;
  const said = (one ? [above[1]] : above).filter(Boolean).join(' ');
  return (said || `Column ${column + 1}`).slice(0, 60);
}
