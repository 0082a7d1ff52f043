/** What the columns of a record seem to be: by the words of their titles, and by their figures. */
import { numberOf, type TemperatureUnit, unitInCell, unitNamed } from './logCells.ts';
import type { LogRole } from './roles.ts';
import { isDate, timeStyleOf } from './times.ts';

export type PressureUnit = 'inwcDuct' | 'paDuct';

export interface Column {
  readonly title: string;
  readonly kind: 'time' | 'temperature' | 'humidity' | 'wetBulb' | 'static' | 'other';
  /** Of a temperature in °C, where the unit is said. */
  readonly mean: number;
  readonly unit: TemperatureUnit | null;
}

export function columnOf(title: string, texts: readonly string[], comma: boolean): Column {
  const numbers = texts.map((text) => numberOf(text, comma)).filter(Number.isFinite);
  const average = numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
  const unit = unitSaid(title, texts);
  const mean = unit === 'degF' ? (average - 32) / 1.8 : average;
  const isTime = texts.some((text) => isDate(text) || text.includes(':')) && timeStyleOf(texts) !== null;
  if (isTime || (/time|date|zeit|datum|second|elapsed|timestamp/i.test(title) && timeStyleOf(texts) !== null))
    return { title, kind: 'time', mean, unit };
  if (numbers.length > 0 && /static|in\.?\s?w\.?\s?[cg]\b|\besp\b|\btesp\b/i.test(title))
    return { title, kind: 'static', mean, unit };
  if (numbers.length === 0 || /dew|point|enthalp|grain|volt|batt|pressure|index|record|^#|no\.?$/i.test(title))
    return { title, kind: 'other', mean, unit };
  if (/wet|\bwb\b/i.test(title)) return { title, kind: 'wetBulb', mean, unit };
  if (/hum|\brh|feucht|%/i.test(title)) return { title, kind: 'humidity', mean, unit };
  if (/temp|dry|°|\bdb\b|deg|\bt\b|[([]\s*[cf]\s*[)\]]/i.test(title) || (mean > -30 && mean < 130))
    return { title, kind: 'temperature', mean, unit };
  return { title, kind: 'other', mean, unit };
}

export const places = [
  ['outdoor', /out(door|side)|ambient|condens/i],
  ['leaving', /supply|leaving|after|discharge|\bsa\b|\blat\b|taped/i],
  ['entering', /return|entering|before|inlet|\bra\b|\beat\b/i],
] as const;

/**
 * By the words of the titles; where those say no place, the coldest temperature and the highest humidity are the supply's, and of
 * probes that stand together the second ones.
 */
export function rolesOf(columns: readonly Column[], together: boolean): readonly LogRole[] {
  const taken = new Set<LogRole>();
  const roles = columns.map((): LogRole => 'none');
  const give = (index: number, role: LogRole) => {
    if (index < 0 || taken.has(role)) return;
    taken.add(role);
    roles[index] = role;
  };
  give(
    columns.findIndex(({ kind }) => kind === 'time'),
    'time',
  );
  give(
    columns.findIndex(({ kind }) => kind === 'static'),
    'supplyStatic',
  );
  const isHumid = ({ kind }: Column) => kind === 'humidity' || kind === 'wetBulb';
  columns.forEach((column, index) => {
    const place = places.find(([, words]) => words.test(column.title))?.[0];
    if (!place) return;
    if (place === 'outdoor') {
      if (column.kind === 'temperature') give(index, 'outdoorDryBulb');
    } else if (column.kind === 'temperature') give(index, `${place}.dryBulb`);
    else if (isHumid(column)) give(index, `${place}.humidity`);
  });
  const open = (test: (column: Column) => boolean, rising: number) =>
    columns
      .map((column, index) => ({ ...column, index }))
      .filter(({ index, ...column }) => roles[index] === 'none' && test(column))
      .sort((a, b) => (together ? a.index - b.index : rising * (a.mean - b.mean)))
      .map(({ index }) => index);
  const { dryBulbs, humidities } = together ? inOrder : byMean;
  const cold = open(({ kind }) => kind === 'temperature', 1);
  for (const role of dryBulbs) if (!taken.has(role)) give(cold.shift() ?? -1, role);
  const damp = open(isHumid, -1);
  for (const role of humidities) if (!taken.has(role)) give(damp.shift() ?? -1, role);
  return roles;
}

/** What columns without a place are taken for: from the coldest and from the dampest on, or as they stand. */
const byMean = {
  dryBulbs: ['leaving.dryBulb', 'entering.dryBulb', 'outdoorDryBulb'],
  humidities: ['leaving.humidity', 'entering.humidity'],
} as const;
const inOrder = {
  dryBulbs: ['entering.dryBulb', 'leaving.dryBulb'],
  humidities: ['entering.humidity', 'leaving.humidity'],
} as const;

/** By the title; else what no duct has in inches of water is in pascals. */
export function pressureUnitOf(columns: readonly Column[]): PressureUnit {
  const column = columns.find(({ kind }) => kind === 'static');
  if (!column || /w\.?\s?[cg]\b|inch|\bin\b/i.test(column.title)) return 'inwcDuct';
  return /\bpa\b/i.test(column.title) || Math.abs(column.mean) > 5 ? 'paDuct' : 'inwcDuct';
}

/** The unit that the title or the first figures of a column say for temperatures; `null` where neither does. */
function unitSaid(title: string, texts: readonly string[]): TemperatureUnit | null {
  const said = /(?:[°([]\s*|\bdeg\.?\s*|\b)([CF])\s*[)\]]?\s*$/i.exec(title)?.[1];
  return said ? unitNamed(said) : unitInCell(texts[0] ?? '');
}

const isWarm = ({ kind }: Column) => kind === 'temperature' || kind === 'wetBulb';

/** The unit of the temperatures: the first that is said, else by how high they are. */
export function temperatureUnitOf(columns: readonly Column[]): TemperatureUnit {
  const warm = columns.filter(isWarm);
  const said = warm.find(({ unit }) => unit !== null)?.unit;
  return said ?? (Math.max(...warm.map(({ mean }) => mean)) > 45 ? 'degF' : 'degC');
}

/** The unit of each column, where they say different ones; `null` where they do not. */
export function ownUnitsOf(columns: readonly Column[]): readonly (TemperatureUnit | null)[] | null {
  const said = columns.map((column) => (isWarm(column) ? column.unit : null));
  return said.includes('degF') && said.includes('degC') ? said : null;
}
