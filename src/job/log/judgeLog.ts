/** A record judged: its columns as confirmed, in SI; whether it is steady and since when; what of it is drawn. */
import { type Log, type Steadiness, steady } from '../../calc/confidence/steady.ts';
import { CalcError } from '../../calc/errors.ts';
import type { HumidityMeasure } from '../../calc/sideBySide.ts';
import { numberOf, type OpenLog } from './openLog.ts';
import type { LogRole } from './roles.ts';
import { type TracePoint, thinTrace } from './thinTrace.ts';
import { overMidnight, timeOf, timeStyleOf } from './times.ts';

/** What a person confirmed of a record, and what the job knows beside it. */
export interface LogSaid {
  readonly roles: readonly LogRole[];
  readonly temperatures: 'degF' | 'degC';
  readonly humidityAs: HumidityMeasure;
  /** Pa. */
  readonly pressure: number;
  /** s since 1970; `null`: not known. */
  readonly startedAt: number | null;
  readonly changedAt: number | null;
}

/** A cell that cannot be read, by its line in the file. */
export interface BadCell {
  readonly line: number;
  readonly text: string;
  readonly role: LogRole;
}

export interface JudgedLog {
  readonly steadiness: Steadiness;
  readonly trace: readonly TracePoint[];
  /** The first of the bad cells, and how many rows there are in all. */
  readonly bad: readonly BadCell[];
  /** Whether the times have a date, so that the start of the test can be held against them. */
  readonly dated: boolean;
}

export type JudgeRefusal = 'noTime' | 'noFigures' | 'noRows';
const shownBad = 5;

export function judgeLog(open: OpenLog, said: LogSaid): JudgedLog | JudgeRefusal {
  const timeColumn = said.roles.indexOf('time');
  const used = said.roles.flatMap((role, index) => (role === 'none' || role === 'time' ? [] : [{ role, index }]));
  if (timeColumn < 0) return 'noTime';
  if (used.length === 0) return 'noFigures';
  const texts = open.rows.map((row) => row[timeColumn] ?? '');
  const style = timeStyleOf(texts);
  if (!style) return 'noTime';
  const noted: BadCell[] = [];
  const note = (row: number, text: string, role: LogRole) => {
    if (noted.filter((one) => one.role === role).length >= shownBad) return;
    noted.push({ line: open.firstLine + row, text: text.trim().slice(0, 24), role });
  };
  const raw = texts.map((text, row) => {
    const time = timeOf(text, style);
    if (!Number.isFinite(time)) note(row, text, 'time');
    return time;
  });
  const time = style.kind === 'clock' ? overMidnight(raw) : raw;
  const columns = Object.fromEntries(
    used.map(({ role, index }) => [
      role,
      open.rows.map((row, at) => {
        const text = row[index] ?? '';
        const value = inSi(role, numberOf(text, open.comma), said);
        if (!Number.isFinite(value)) note(at, text, role);
        return value;
      }),
    ]),
  ) as Log['columns'];
  const bad = noted.sort((one, other) => one.line - other.line).slice(0, shownBad);
  const dated = style.kind === 'dated' || style.kind === 'epoch';
  const changes = dated && said.changedAt !== null ? [said.changedAt] : [];
  const startedAt = dated ? said.startedAt : null;
  const log: Log = { time, columns, measure: said.humidityAs, pressure: said.pressure, startedAt, changes };
  return judged(log, bad, dated);
}

/** The same of a record that is in SI already. */
export function judged(log: Log, bad: readonly BadCell[], dated: boolean): JudgedLog | JudgeRefusal {
  try {
    const steadiness = steady(log);
    return { steadiness, trace: thinTrace(log, steadiness), bad, dated };
  } catch (error) {
    if (error instanceof CalcError) return 'noRows';
    throw error;
  }
}

function inSi(role: LogRole, number: number, { temperatures, humidityAs }: LogSaid): number {
  const isHumidity = role.endsWith('humidity') && humidityAs === 'relativeHumidity';
  if (isHumidity) return number >= 0 && number <= 100 ? number / 100 : Number.NaN;
  const celsius = temperatures === 'degF' ? (number - 32) / 1.8 : number;
  return celsius > -60 && celsius < 90 ? celsius : Number.NaN;
}
