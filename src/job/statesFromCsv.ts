/** A table from elsewhere as states of the air chart: all of it, or nothing and the reason. */
import { moistAir } from '../calc/moistAir.ts';
import { attempt } from '../calc/outcome.ts';
import { csvRows } from './csv.ts';
import { sitePressure } from './entered.ts';
import { unitLabel } from './format.ts';
import { type QuantityKey, unitOf } from './quantities.ts';
import { type BadCode, read } from './read.ts';
import { emptyStates, type HumidityMeasure, humidityMeasures, stateKeys } from './states.ts';
import { rowLimits } from './tables.ts';
import type { Edit, Job, System, TypedTable, UnitKey } from './types.ts';
import { units } from './units.ts';

/** The heads that a table may have, spelled without spaces; the last is what `pointAt` leaves out. */
const heads: readonly (readonly [string, 'name' | 'dryBulb' | HumidityMeasure | 'point'])[] = [
  ['relativehumidity', 'relativeHumidity'],
  ['humidityratio', 'humidityRatio'],
  ['drybulb', 'dryBulb'],
  ['wetbulb', 'wetBulb'],
  ['dewpoint', 'dewPoint'],
  ['temperature', 'dryBulb'],
  ['humidity', 'relativeHumidity'],
  ['rh', 'relativeHumidity'],
  ['name', 'name'],
  ['point', 'point'],
];

export type CsvProblem =
  | { readonly code: 'empty' | 'noTemperature' | 'noHumidity' | 'tooLong' }
  | { readonly code: 'tooMany'; readonly count: number; readonly room: number }
  | {
      readonly code: BadCode | 'missing' | 'cannotBe';
      readonly line: number;
      readonly column: string;
      readonly text: string;
    };

export type CsvStates =
  | { readonly ok: true; readonly edits: readonly Edit[]; readonly count: number; readonly leftOut: number }
  | { readonly ok: false; readonly problem: CsvProblem };

const longest = 20_000;

/**
 * The edit that puts the states of a table in place of the named ones. All or nothing: one cell that is no figure, or air
 * that cannot be, and nothing changes. Without a row of heads the columns are temperature and relative humidity, with the
 * name before or behind them. Rows of the job’s own air (points R and S) and of the ends of processes (1 to 8) are left out.
 */
export function statesFromCsv(job: Job, text: string, system: System): CsvStates {
  if (text.length > longest) return bad({ code: 'tooLong' });
  const all = csvRows(text);
  const [first] = all;
  if (first === undefined) return bad({ code: 'empty' });
  const headed = columnsOf(first, system);
  const rows = headed ? all.slice(1) : all;
  const found = headed ?? unheaded(first, system);
  if (!found.some(({ key }) => key === 'dryBulb')) return bad({ code: 'noTemperature' });
  if (!found.some(({ key }) => isHumidity(key))) return bad({ code: 'noHumidity' });
  const point = found.find(({ key }) => key === 'point');
  const own = rows.filter((row) => point && /^\s*[RS1-8]\s*$/i.test(row[point.index] ?? ''));
  const states = rows.filter((row) => !own.includes(row));
  if (states.length === 0) return bad({ code: 'empty' });
  const room = rowLimits.states ?? 0;
  if (states.length > room) return bad({ code: 'tooMany', count: states.length, room });
  const table = emptyStates(system);
  const filled: string[][] = [];
  for (const [index, row] of states.entries()) {
    const state = stateIn(row, found, all.indexOf(row) + 1, sitePressure(job));
    if ('code' in state) return bad(state);
    filled.push(asRow(table, { ...state.texts, key: stateKeys[index] ?? '' }));
  }
  const edits: readonly Edit[] = [{ slot: 'tables', key: 'states', to: { ...table, rows: filled } }];
  return { ok: true, edits, count: filled.length, leftOut: own.length };
}

const bad = (problem: CsvProblem): CsvStates => ({ ok: false, problem });

interface Column {
  readonly key: 'name' | 'dryBulb' | HumidityMeasure | 'point';
  readonly index: number;
  readonly unit: UnitKey;
}

const isHumidity = (key: string): key is HumidityMeasure => (humidityMeasures as readonly string[]).includes(key);
const isMeasured = (key: Column['key']): key is 'dryBulb' | HumidityMeasure => key === 'dryBulb' || isHumidity(key);
const quantity = (key: 'dryBulb' | HumidityMeasure): QuantityKey => `state.${key}`;
const unitFor = (key: Column['key'], system: System): UnitKey =>
  isMeasured(key) ? unitOf(quantity(key), system) : 'count';

/** The columns that a row of heads names; `null` when it is no row of heads: it has a figure, or no head that is known. */
function columnsOf(row: readonly string[], system: System): readonly Column[] | null {
  if (row.some((cell) => /^\s*[+\-\u2212]?\d/.test(cell))) return null;
  const columns = row.flatMap((title, index): Column[] => {
    const [words = '', unit = ''] = title.split('(');
    const spelled = words.toLowerCase().replace(/[^a-z]/g, '');
    const key = heads.find(([head]) => spelled.startsWith(head))?.[1];
    return key === undefined ? [] : [{ key, index, unit: unitIn(unit, key, system) }];
  });
  return columns.some(({ key }) => isMeasured(key)) ? columns : null;
}

/** The unit between the brackets of a head. */
function unitIn(text: string, key: Column['key'], system: System): UnitKey {
  const usual = unitFor(key, system);
  const spelled = text.replace(/[)\s]/g, '').toLowerCase();
  const found = (Object.keys(units) as UnitKey[]).find(
    (unit) =>
      units[unit].kind === units[usual].kind &&
      units[unit].suffixes.some((suffix) => suffix.toLowerCase().replace(/\s/g, '') === spelled),
  );
  return found ?? usual;
}

/** Without heads: temperature and humidity, with the name before them or, where two figures begin the row, behind. */
function unheaded(row: readonly string[], system: System): readonly Column[] {
  const isFigure = (index: number) => /^\s*[+\-\u2212]?[\d.]/.test(row[index] ?? '');
  const nameFirst = row.length > 2 && !(isFigure(0) && isFigure(1));
  const order = nameFirst
    ? (['name', 'dryBulb', 'relativeHumidity'] as const)
    : (['dryBulb', 'relativeHumidity', 'name'] as const);
  return order.slice(0, row.length).map((key, index) => ({ key, index, unit: unitFor(key, system) }));
}

type Texts = Readonly<Record<string, string>>;

function stateIn(
  row: readonly string[],
  found: readonly Column[],
  line: number,
  pressure: number,
): { readonly texts: Texts } | CsvProblem {
  const text = ({ index }: Column) => (row[index] ?? '').trim();
  const name = found.find(({ key }) => key === 'name');
  const dryBulb = found.find(({ key }) => key === 'dryBulb');
  const humidity = humidityMeasures.flatMap((measure) => found.find(({ key }) => key === measure) ?? []);
  const given = humidity.find((column) => text(column) !== '');
  const cells = [dryBulb, given ?? humidity[0]].filter((column) => column !== undefined);
  const numbers: Record<string, number> = {};
  const texts: Record<string, string> = { name: name ? text(name).slice(0, 40) : '' };
  for (const column of cells) {
    if (!isMeasured(column.key)) continue;
    const reading = read(text(column), quantity(column.key), column.unit);
    const where = { line, column: column.key, text: text(column).slice(0, 24) };
    if (reading.state === 'empty') return { code: 'missing', ...where };
    if (reading.state === 'bad') return { code: reading.code, ...where };
    numbers[column.key] = reading.si;
    texts[column.key] = ownText(text(column), column);
  }
  const { dryBulb: t = Number.NaN, ...humid } = numbers;
  const air = attempt(() => moistAir({ dryBulb: t, pressure, ...humid }));
  return air.ok
    ? { texts }
    : { code: 'cannotBe', line, column: given?.key ?? 'dryBulb', text: row.join(' ').slice(0, 24) };
}

/** The text with the unit of its column behind it, unless it has one. */
function ownText(text: string, { unit }: Column): string {
  return /[\p{L}%°]/u.test(text) ? text : `${text} ${unitLabel(unit)}`;
}

function asRow(table: TypedTable, texts: Texts): string[] {
  return table.columns.map(({ key, unit }) => {
    const text = texts[key] ?? '';
    // A bare number means the unit of the column here too, so it needs none behind it.
    const label = ` ${unitLabel(unit)}`;
    return label !== ' ' && text.endsWith(label) ? text.slice(0, -label.length) : text;
  });
}
