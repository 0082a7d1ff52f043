/** A record of any logger, taken apart: where its rows begin, what each column seems to be. Nothing here throws. */
import Papa from 'papaparse';
import type { LogRole } from './roles.ts';
import { isDate, timeStyleOf } from './times.ts';

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
  readonly temperatures: 'degF' | 'degC';
  readonly humidityAs: 'relativeHumidity' | 'wetBulb';
}

export type LogRefusal = 'empty' | 'notText' | 'noRows' | 'tooLong';
export const logLimits = { letters: 60_000_000, columns: 60 } as const;
const looked = 400;

export function openLog(text: string): OpenLog | LogRefusal {
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
  const roles = rolesOf(columns);
  const temperatures = unitOf(columns);
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
    temperatures,
    humidityAs: wet && !columns.some(({ kind }) => kind === 'humidity') ? 'wetBulb' : 'relativeHumidity',
  };
}

const numberPattern = /^\s*[-−+]?\d+(?:[.,]\d+)?\s*(?:°?\s*[CF]|%|%?\s*RH)?\s*$/i;

/** A cell as a number; not a number where it is none. */
export function numberOf(text: string, comma: boolean): number {
  if (!numberPattern.test(text)) return Number.NaN;
  const digits = /[-−+]?\d+(?:[.,]\d+)?/.exec(text)?.[0] ?? '';
  return Number(digits.replace('−', '-').replace(',', comma ? '.' : ''));
}

/** The first row of figures: two numbers at least, and as many in the row below it, where there is one. */
function firstRow(all: readonly (readonly string[])[]): number {
  const figures = (row: readonly string[] = []) => row.filter((cell) => numberPattern.test(cell)).length;
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

function usesComma(cells: readonly string[]): boolean {
  const decimals = (mark: string) =>
    cells.filter((cell) => new RegExp(`^\\s*[-−]?\\d+\\${mark}\\d+\\D*$`).test(cell)).length;
  return decimals(',') > decimals('.');
}

interface Column {
  readonly title: string;
  readonly kind: 'time' | 'temperature' | 'humidity' | 'wetBulb' | 'other';
  readonly mean: number;
}

function columnOf(title: string, texts: readonly string[], comma: boolean): Column {
  const numbers = texts.map((text) => numberOf(text, comma)).filter(Number.isFinite);
  const mean = numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
  const isTime = texts.some((text) => isDate(text) || text.includes(':')) && timeStyleOf(texts) !== null;
  if (isTime || (/time|date|zeit|datum|second|elapsed|timestamp/i.test(title) && timeStyleOf(texts) !== null))
    return { title, kind: 'time', mean };
  if (numbers.length === 0 || /dew|point|enthalp|grain|volt|batt|pressure|index|record|^#|no\.?$/i.test(title))
    return { title, kind: 'other', mean };
  if (/wet|\bwb\b/i.test(title)) return { title, kind: 'wetBulb', mean };
  if (/hum|\brh|feucht|%/i.test(title)) return { title, kind: 'humidity', mean };
  if (/temp|dry|°|\bdb\b|deg|\bt\b|[([]\s*[cf]\s*[)\]]/i.test(title) || (mean > -30 && mean < 130))
    return { title, kind: 'temperature', mean };
  return { title, kind: 'other', mean };
}

const places = [
  ['outdoor', /out(door|side)|ambient|condens/i],
  ['leaving', /supply|leaving|after|discharge|\bsa\b|\blat\b|taped/i],
  ['entering', /return|entering|before|inlet|\bra\b|\beat\b/i],
] as const;

/** By the words of the titles; where those say no place, the coldest temperature and the highest humidity are the supply's. */
function rolesOf(columns: readonly Column[]): readonly LogRole[] {
  const taken = new Set<LogRole>();
  const roles = columns.map((): LogRole => 'none');
  const give = (index: number, role: LogRole) => {
    if (index < 0 || taken.has(role)) return;
    taken.add(role);
    roles[index] = role;
  };
  const time = columns.findIndex(({ kind }) => kind === 'time');
  give(time, 'time');
  const isHumid = ({ kind }: Column) => kind === 'humidity' || kind === 'wetBulb';
  columns.forEach((column, index) => {
    const place = places.find(([, words]) => words.test(column.title))?.[0];
    if (!place) return;
    if (place === 'outdoor') {
      if (column.kind === 'temperature') give(index, 'outdoorDryBulb');
    } else if (column.kind === 'temperature') give(index, `${place}.dryBulb`);
    else if (isHumid(column)) give(index, `${place}.humidity`);
  });
  const open = (test: (column: Column) => boolean) =>
    columns
      .map((column, index) => ({ ...column, index }))
      .filter(({ index, ...column }) => roles[index] === 'none' && test(column))
      .sort((a, b) => a.mean - b.mean)
      .map(({ index }) => index);
  const cold = open(({ kind }) => kind === 'temperature');
  for (const role of ['leaving.dryBulb', 'entering.dryBulb', 'outdoorDryBulb'] as const)
    if (!taken.has(role)) give(cold.shift() ?? -1, role);
  const damp = open(isHumid);
  for (const role of ['leaving.humidity', 'entering.humidity'] as const)
    if (!taken.has(role)) give(damp.pop() ?? -1, role);
  return roles;
}

function unitOf(columns: readonly Column[]): 'degF' | 'degC' {
  const warm = columns.filter(({ kind }) => kind === 'temperature');
  const said = warm.map(({ title }) => /°?\s*([CF])\s*[)\]]?\s*$/i.exec(title)?.[1]?.toUpperCase()).find(Boolean);
  if (said && warm.some(({ title }) => /[°([]\s*[CF]/i.test(title) || /\b[CF]$/.test(title)))
    return said === 'C' ? 'degC' : 'degF';
  const highest = Math.max(...warm.map(({ mean }) => mean));
  return highest > 45 ? 'degF' : 'degC';
}
