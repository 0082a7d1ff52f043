/** A record judged: its columns as confirmed, in SI; whether it is steady and since when; what of it is drawn. */
import { type Log, type Steadiness, steady } from '../../calc/confidence/steady.ts';
import { CalcError } from '../../calc/errors.ts';
import type { OpenLog } from './openLog.ts';
import { type BadCell, type ColumnsRefusal, type ColumnsSaid, readColumns } from './readColumns.ts';
import { type TracePoint, thinTrace } from './thinTrace.ts';

/** What a person confirmed of a record, and what the job knows beside it. */
export interface LogSaid extends ColumnsSaid {
  /** Pa. */
  readonly pressure: number;
  /** s since 1970; `null`: not known. */
  readonly startedAt: number | null;
  readonly changedAt: number | null;
}

export interface JudgedLog {
  readonly steadiness: Steadiness;
  readonly trace: readonly TracePoint[];
  /** The first of the bad cells, and how many rows there are in all. */
  readonly bad: readonly BadCell[];
  /** Whether the times have a date, so that the start of the test can be held against them. */
  readonly dated: boolean;
}

export type JudgeRefusal = ColumnsRefusal | 'noRows';

export function judgeLog(open: OpenLog, said: LogSaid): JudgedLog | JudgeRefusal {
  const read = readColumns(open, said);
  if (typeof read === 'string') return read;
  const { time, columns, clock, bad } = read;
  const dated = clock === 'dated' || clock === 'epoch';
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
