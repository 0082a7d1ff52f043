/** The end of a steady record as a job keeps it: at most sixty moments of its last hour, for a picture of how steady it was. */
import { rollingTrend } from '../../calc/confidence/rolling.ts';
import type { Steadiness } from '../../calc/confidence/steady.ts';
import { steadyRule } from '../../calc/confidence/steadyRule.ts';
import type { HumidityMeasure } from '../../calc/sideBySide.ts';
import { isMeanTaken } from '../sure/steadyMeans.ts';
import { sureTables } from '../sure/tables.ts';
import { cellText, rowLimits } from '../tables.ts';
import type { Edit, Job, TypedTable, UnitKey } from '../types.ts';
import { evenly, fineTrace, type TracePoint } from './thinTrace.ts';

const key = 'log.trace';
const readings = ['entering.dryBulb', 'entering.humidity', 'leaving.dryBulb', 'leaving.humidity'] as const;
type Column = (typeof sureTables)[typeof key][number];

/** What a job keeps of a record. Times in s, rising: since 1970 where they are dated, else on a clock of their own. */
export interface KeptTrace {
  readonly rows: readonly TracePoint[];
  readonly measure: HumidityMeasure;
  readonly dated: boolean;
  /** The window that was judged, and the moment since which it is steady; `null`: it was not. */
  readonly window: { readonly from: number; readonly to: number };
  readonly since: number | null;
  /** The change of the capacity over the window, relative, by the rows that are kept. */
  readonly trend: number | null;
}

/** The edit that keeps what was drawn of a record whose means are taken over. */
export function traceEdit(drawn: readonly TracePoint[], { since, window }: Steadiness, measure: HumidityMeasure): Edit {
  const end = drawn.filter(({ time }) => time >= window.to - fineTrace && time <= window.to);
  const kept = evenly(end, rowLimits[key] as number);
  const columns = sureTables[key].filter(
    (column) => !isReading(column) || kept.every((point) => Number.isFinite(point.readings[column])),
  );
  const unitOf = (column: Column): UnitKey => {
    if (column === 'time' || column === 'since') return 'second';
    return column.endsWith('dryBulb') || (column.endsWith('humidity') && measure === 'wetBulb') ? 'degC' : 'one';
  };
  const textOf = (point: TracePoint, column: Column): string => {
    if (column === 'time') return point.time.toFixed(0);
    if (column === 'since') return since === null ? '' : since.toFixed(0);
    const value = column === 'capacity' ? point.capacity : point.readings[column];
    return typeof value === 'number' ? value.toFixed(4) : '';
  };
  const to: TypedTable = {
    columns: columns.map((column) => ({ key: column, unit: unitOf(column) })),
    rows: kept.map((point) => columns.map((column) => textOf(point, column))),
  };
  return { slot: 'tables', key, to: kept.length === 0 ? undefined : to };
}

/** The trace of a job, SI; `null` without one, and once every reading that came from its record was typed anew. */
export function traceOf(job: Job): KeptTrace | null {
  const table = job.tables[key];
  if (!table || !isMeanTaken(job)) return null;
  const rows = risingRows(table);
  const [first, last] = [rows[0]?.time, rows.at(-1)?.time];
  if (first === undefined || last === undefined || first === last) return null;
  const since = numberIn(table, table.rows[0] ?? [], 'since');
  const humidity = table.columns.find(({ key: column }) => column.endsWith('humidity'));
  return {
    rows,
    measure: humidity?.unit === 'degC' ? 'wetBulb' : 'relativeHumidity',
    dated: last > 1e8,
    window: { from: Math.max(first, last - steadyRule.window), to: last },
    since: since === null || since > last ? null : since,
    trend: trendOf(rows),
  };
}

const isReading = (column: string): column is (typeof readings)[number] => readings.some((one) => one === column);

/** The rows that have a time after the one before. A record from outside may hold anything. */
function risingRows(table: TypedTable): readonly TracePoint[] {
  let latest = -Infinity;
  return table.rows.flatMap((row): TracePoint[] => {
    const time = numberIn(table, row, 'time');
    if (time === null || time <= latest) return [];
    latest = time;
    const read = readings.flatMap((column) => {
      const value = numberIn(table, row, column);
      return value === null ? [] : [[column, value] as const];
    });
    return [{ time, capacity: numberIn(table, row, 'capacity'), readings: Object.fromEntries(read) }];
  });
}

function numberIn(table: TypedTable, row: readonly string[], column: string): number | null {
  const text = cellText(table, row, column).trim();
  const number = text === '' ? Number.NaN : Number(text);
  return Math.abs(number) < 1e11 ? number : null;
}

function trendOf(rows: readonly TracePoint[]): number | null {
  const known = rows.filter(({ capacity }) => capacity !== null);
  if (known.length < 3) return null;
  const time = Float64Array.from(known, (row) => row.time);
  const capacity = Float64Array.from(known, (row) => 1 + (row.capacity as number));
  const trend = rollingTrend(time, capacity, steadyRule.window).at(-1);
  return trend !== undefined && Number.isFinite(trend) ? trend : null;
}
