import { standardPressureAtSeaLevel } from '../constants.ts';
import { enthalpyAt } from '../enthalpy.ts';
import { CalcError, within } from '../errors.ts';
import { limits } from '../limits.ts';
import type { HumidityMeasure } from '../sideBySide.ts';
import type { ErrorSource, TestInput } from '../types.ts';
import { batchCount, batchMeans, meanOf } from './batches.ts';
import { type CleanLog, cleanLog, clockRange, type LogCounts } from './cleanLog.ts';
import type { LogColumn } from './logColumns.ts';
import { rollingSpread, rollingTrend } from './rolling.ts';
import { type SteadyRule, steadyRule } from './steadyRule.ts';

/** A record of a test, column by column, SI; what was not recorded is left out, what could not be read is no number. */
export interface Log {
  /** s, from any start. */
  readonly time: readonly number[];
  readonly columns: Readonly<Partial<Record<LogColumn, readonly number[]>>>;
  readonly measure: HumidityMeasure;
  /** Pa; sea level when left out. */
  readonly pressure?: number;
  /** When full stage and full airflow began, on the clock of the log; `null`: before the first row, not known when. */
  readonly startedAt: number | null;
  /** When anything was changed since: a thermostat, a damper, a panel. Each begins the wait anew. */
  readonly changes?: readonly number[];
}

/** Why the end of a record is not steady. */
export interface NotSteady {
  readonly code: 'tooEarly' | 'tooShort' | 'tooFewRows' | 'gap' | 'range' | 'trend';
  readonly column: LogColumn | 'capacity' | null;
  readonly value: number;
  readonly most: number;
}

export interface Steadiness {
  readonly isSteady: boolean;
  /** Where the steady stretch begins that lasts to the end, s on the clock of the log. */
  readonly since: number | null;
  /** No window begins before this; `null` when nobody knows when it started. */
  readonly notBefore: number | null;
  readonly notSteady: readonly NotSteady[];
  /** The last window, what it holds, and what is read from it. */
  readonly window: { readonly from: number; readonly to: number; readonly rows: number };
  readonly means: Readonly<Partial<Record<LogColumn, number>>>;
  readonly spreads: Readonly<Partial<Record<LogColumn, number>>>;
  /** Change of the computed capacity over the window, relative; `null` without the four readings. */
  readonly trend: number | null;
  /** For the test: five batch means, each moving what was recorded together. */
  readonly scatter: readonly ErrorSource<TestInput>[];
  readonly counts: LogCounts;
}

/**
 * Whether a record has become steady, since when, and what its last window says. Rows that cannot be read, that repeat a time or
 * that go back in time are left out and counted. Throws `noRows` when no row is left, `wrongLength` for columns of another
 * length than the times.
 */
export function steady(log: Log, rule: SteadyRule = steadyRule): Steadiness {
  within('pressure', log.pressure ?? standardPressureAtSeaLevel, limits.pressure);
  for (const moment of begunAt(log)) within('startedAt', moment, clockRange);
  const clean = cleanLog(log, rule.gap);
  const { time, columns } = clean;
  const last = time.length - 1;
  if (last < 0) throw new CalcError('noRows', 'log', 0, 1, 1e7);
  const capacity = capacityOf(clean);
  const notBefore = settledFrom(log, rule);
  const spreads = rule.ranges.flatMap(({ column, most }) => {
    const values = columns[column];
    return values ? [{ column, most, spread: rollingSpread(time, values, rule.window) }] : [];
  });
  const trend = capacity && rollingTrend(time, capacity, rule.window);
  const faultsAt = (i: number): readonly NotSteady[] => {
    const faults = windowFaults(clean, i, notBefore, rule);
    const note = (code: NotSteady['code'], column: NotSteady['column'], value: number, most: number) => {
      if (value > most) faults.push({ code, column, value, most });
    };
    for (const { column, most, spread } of spreads) note('range', column, spread[i] as number, most);
    if (trend) note('trend', 'capacity', Math.abs(trend[i] as number), rule.trend);
    return faults;
  };
  const notSteady = faultsAt(last);
  let first = last;
  while (notSteady.length === 0 && first > 0 && faultsAt(first - 1).length === 0) first--;
  const to = time[last] as number;
  const from = clean.windowStart(last, rule.window);
  const inWindow = (values: Float64Array) => Array.from(values.subarray(from, last + 1));
  const kept = Object.entries(columns) as [LogColumn, Float64Array][];
  return {
    isSteady: notSteady.length === 0,
    since: notSteady.length === 0 ? Math.max((time[first] as number) - rule.window, time[0] as number) : null,
    notBefore,
    notSteady,
    window: { from: time[from] as number, to, rows: last - from + 1 },
    means: Object.fromEntries(kept.map(([column, values]) => [column, meanOf(inWindow(values))])),
    spreads: Object.fromEntries(kept.map(([column, values]) => [column, spreadOf(inWindow(values))])),
    trend: trend ? (trend[last] as number) : null,
    scatter: scatterOf(kept.map(([column, values]) => [column, inWindow(values)])),
    counts: clean.counts,
  };
}

/** What is wrong with the window that ends at a row, whatever its readings say. */
function windowFaults(clean: CleanLog, i: number, notBefore: number | null, rule: SteadyRule): NotSteady[] {
  const { time } = clean;
  const end = time[i] as number;
  const from = clean.windowStart(i, rule.window);
  const span = end - (time[0] as number);
  const rows = i - from + 1;
  const early = notBefore === null ? 0 : notBefore - (end - rule.window);
  const gap = clean.longestGap(from, i);
  const faults: NotSteady[] = [];
  const note = (code: NotSteady['code'], value: number, most: number) =>
    faults.push({ code, column: null, value, most });
  if (early > 0) note('tooEarly', early, 0);
  if (span < rule.window - rule.gap / 2) note('tooShort', span, rule.window);
  if (rows < rule.leastRows) note('tooFewRows', rows, rule.leastRows);
  if (gap > rule.gap) note('gap', gap, rule.gap);
  return faults;
}

const begunAt = ({ startedAt, changes = [] }: Log) => [...(startedAt === null ? [] : [startedAt]), ...changes];

/** The wait begins at full stage and full airflow, and anew at every change. */
function settledFrom(log: Log, rule: SteadyRule): number | null {
  const begun = begunAt(log);
  return begun.length === 0 ? null : Math.max(...begun) + rule.settle;
}

/** What the coil takes from a kilogram of air, J: the capacity but for the airflow; `null` without the four readings. */
function capacityOf({ time, columns, humidityRatios }: CleanLog): Float64Array | null {
  const { entering, leaving } = humidityRatios;
  if (!entering || !leaving) return null;
  const enteringDryBulb = columns['entering.dryBulb'] as Float64Array;
  const leavingDryBulb = columns['leaving.dryBulb'] as Float64Array;
  const capacity = new Float64Array(time.length);
  for (let i = 0; i < time.length; i++)
    capacity[i] =
      enthalpyAt(enteringDryBulb[i] as number, entering[i] as number) -
      enthalpyAt(leavingDryBulb[i] as number, leaving[i] as number);
  return capacity;
}

function spreadOf(values: readonly number[]): number {
  return (
    values.reduce((most, value) => Math.max(most, value), -Infinity) -
    values.reduce((least, value) => Math.min(least, value), Infinity)
  );
}

/** What was recorded together scatters together: one cause for each part of the window, all of one name. */
function scatterOf(columns: readonly (readonly [LogColumn, readonly number[]])[]): readonly ErrorSource<TestInput>[] {
  const parts = columns.flatMap(([column, values]) => {
    const means = column === 'supplyStatic' ? null : batchMeans(values);
    return means && means.parts.length === batchCount ? [{ column, parts: means.parts }] : [];
  });
  if (parts.length === 0) return [];
  return Array.from({ length: batchCount }, (_, i) => ({
    name: 'readings',
    u: 1 / Math.sqrt(batchCount * (batchCount - 1)),
    shape: 'normal',
    degreesOfFreedom: batchCount - 1,
    moves: Object.fromEntries(parts.map(({ column, parts: means }) => [column, means[i] as number])),
  }));
}
