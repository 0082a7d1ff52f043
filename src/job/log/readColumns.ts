/** The columns of a record as they were confirmed, in SI, and the cells that cannot be read. */
import type { Log } from '../../calc/confidence/steady.ts';
import type { HumidityMeasure } from '../../calc/sideBySide.ts';
import { toSi } from '../units.ts';
import { numberOf, type TemperatureUnit, unitInCell } from './logCells.ts';
import type { PressureUnit } from './logColumns.ts';
import type { OpenLog } from './openLog.ts';
import type { LogRole } from './roles.ts';
import { overMidnight, type TimeStyle, timeOf, timeStyleOf } from './times.ts';

/** What a person confirmed of the columns of a record. */
export interface ColumnsSaid {
  readonly roles: readonly LogRole[];
  readonly temperatures: TemperatureUnit;
  readonly pressures: PressureUnit;
  readonly humidityAs: HumidityMeasure;
}

/** A cell that cannot be read, by its line in the file. */
export interface BadCell {
  readonly line: number;
  readonly text: string;
  readonly role: LogRole;
}

export interface ReadColumns {
  readonly time: readonly number[];
  readonly columns: Log['columns'];
  readonly clock: TimeStyle['kind'];
  /** The first of the bad cells. */
  readonly bad: readonly BadCell[];
}

export type ColumnsRefusal = 'noTime' | 'noFigures';
const shownBad = 5;

/** What cannot be read is not a number there, and among `bad`. */
export function readColumns(open: OpenLog, said: ColumnsSaid): ReadColumns | ColumnsRefusal {
  const timeColumn = said.roles.indexOf('time');
  const used = said.roles.flatMap((role, index) => (role === 'none' || role === 'time' ? [] : [{ role, index }]));
  if (timeColumn < 0) return 'noTime';
  if (used.length === 0) return 'noFigures';
  const texts = open.rows.map((row) => row[timeColumn] ?? '');
  const style = timeStyleOf(texts);
  if (!style) return 'noTime';
  const noted: BadCell[] = [];
  const counts: Partial<Record<LogRole, number>> = {};
  const note = (row: number, text: string, role: LogRole) => {
    const before = counts[role] ?? 0;
    counts[role] = before + 1;
    if (before < shownBad) noted.push({ line: open.firstLine + row, text: text.trim().slice(0, 24), role });
  };
  const raw = texts.map((text, row) => {
    const time = timeOf(text, style);
    if (!Number.isFinite(time)) note(row, text, 'time');
    return time;
  });
  const columns = Object.fromEntries(
    used.map(({ role, index }) => {
      const unit = open.ownUnits?.[index] ?? said.temperatures;
      const values = open.rows.map((row, at) => {
        const text = row[index] ?? '';
        const value = inSi(role, numberOf(text, open.comma), unitInCell(text) ?? unit, said);
        if (!Number.isFinite(value)) note(at, text, role);
        return value;
      });
      return [role, values];
    }),
  ) as Log['columns'];
  return {
    time: style.kind === 'clock' ? overMidnight(raw) : raw,
    columns,
    clock: style.kind,
    bad: noted.sort((one, other) => one.line - other.line).slice(0, shownBad),
  };
}

/** Pa. No duct has more. */
const mostStatic = 2500;

function inSi(role: LogRole, number: number, unit: TemperatureUnit, { pressures, humidityAs }: ColumnsSaid): number {
  if (role === 'supplyStatic') {
    const pascals = toSi(number, pressures);
    return Math.abs(pascals) < mostStatic ? pascals : Number.NaN;
  }
  const isHumidity = role.endsWith('humidity') && humidityAs === 'relativeHumidity';
  if (isHumidity) return number >= 0 && number <= 100 ? number / 100 : Number.NaN;
  const celsius = unit === 'degF' ? (number - 32) / 1.8 : number;
  return celsius > -60 && celsius < 90 ? celsius : Number.NaN;
}
