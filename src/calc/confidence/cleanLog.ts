import { standardPressureAtSeaLevel } from '../constants.ts';
import { CalcError } from '../errors.ts';
import { limits } from '../limits.ts';
import { inside, ratioFrom } from './airAt.ts';
import type { LogColumn } from './logColumns.ts';
import type { Log } from './steady.ts';

/** What became of the rows of a record. */
export interface LogCounts {
  readonly rows: number;
  readonly used: number;
  /** No number where one is needed, or one that no air and no clock has. */
  readonly unreadable: number;
  /** The same time again. */
  readonly repeated: number;
  /** A clock that went back, for as long as it stayed behind. */
  readonly backwards: number;
  /** Times without a reading longer than the rule allows. */
  readonly gaps: number;
}

type Side = 'entering' | 'leaving';

export interface CleanLog {
  readonly time: Float64Array;
  readonly columns: Readonly<Partial<Record<LogColumn, Float64Array>>>;
  /** Humidity ratio of each side that was read whole. */
  readonly humidityRatios: Readonly<Partial<Record<Side, Float64Array>>>;
  readonly counts: LogCounts;
  /** The first row of the window of `width` seconds that ends at row `i`. */
  readonly windowStart: (i: number, width: number) => number;
  /** The longest time between two rows from `from` to `to`, where it is longer than the rule allows; else 0. */
  readonly longestGap: (from: number, to: number) => number;
}

/** The rows of a record that can be used, times rising. */
export function cleanLog(log: Log, gap: number): CleanLog {
  const { time, columns } = log;
  const names = (Object.keys(columns) as LogColumn[]).filter((name) => columns[name] !== undefined);
  for (const name of names) {
    const { length } = columns[name] as readonly number[];
    if (length !== time.length) throw new CalcError('wrongLength', name, length, time.length, time.length);
  }
  let unreadable = 0;
  let repeated = 0;
  let backwards = 0;
  let gaps = 0;
  // Before the first row nothing is repeated, goes back or is a gap.
  let latest = Number.NaN;
  const humidityRatios = ratiosOf(log);
  const isReading = readable(log, Object.values(humidityRatios));
  const kept: number[] = [];
  /** How many gaps there are up to each row that is kept. */
  const gapsBefore: number[] = [];
  for (let i = 0; i < time.length; i++) {
    const at = time[i] as number;
    if (!isReading(i)) {
      unreadable++;
      continue;
    }
    if (at === latest) repeated++;
    else if (at < latest) backwards++;
    else {
      if (at - latest > gap) gaps++;
      latest = at;
      kept.push(i);
      gapsBefore.push(gaps);
    }
  }
  const taken = (values: ArrayLike<number>) => {
    const some = new Float64Array(kept.length);
    for (let i = 0; i < kept.length; i++) some[i] = values[kept[i] as number] as number;
    return some;
  };
  const times = taken(time);
  return {
    time: times,
    columns: Object.fromEntries(names.map((name) => [name, taken(columns[name] as readonly number[])])),
    humidityRatios: Object.fromEntries(Object.entries(humidityRatios).map(([side, values]) => [side, taken(values)])),
    counts: { rows: time.length, used: kept.length, unreadable, repeated, backwards, gaps },
    windowStart: (i, width) => firstFrom(times, (times[i] as number) - width),
    longestGap: (from, to) => {
      if (gapsBefore[to] === gapsBefore[from]) return 0;
      let longest = 0;
      for (let i = from + 1; i <= to; i++) longest = Math.max(longest, (times[i] as number) - (times[i - 1] as number));
      return longest;
    },
  };
}

/** s either side of 1970: further off sums of times lose their seconds. */
export const clockRange = [-1e11, 1e11] as const;
/** Pa. */
const statics = [-1e5, 1e5] as const;

/** The humidity ratio of every row of each side that has both its readings; no number where no air has them. */
function ratiosOf({ columns, measure, pressure = standardPressureAtSeaLevel }: Log): CleanLog['humidityRatios'] {
  const sides = (['entering', 'leaving'] as const).flatMap((side) => {
    const [dryBulb, humidity] = [columns[`${side}.dryBulb`], columns[`${side}.humidity`]];
    if (!dryBulb || !humidity) return [];
    const ratioAt = (_: number, i: number) => ratioFrom(measure, dryBulb[i] as number, humidity[i] as number, pressure);
    return [[side, Float64Array.from(dryBulb, ratioAt)] as const];
  });
  return Object.fromEntries(sides);
}

/** Whether a row is a time and readings that air can have. A probe that got wet may show more than saturation: no air has that. */
function readable({ time, columns, measure }: Log, ratios: readonly Float64Array[]): (i: number) => boolean {
  const humidity = limits[measure];
  const ranges: Readonly<Record<LogColumn, readonly [number, number]>> = {
    'entering.dryBulb': limits.dryBulb,
    'entering.humidity': humidity,
    'leaving.dryBulb': limits.dryBulb,
    'leaving.humidity': humidity,
    outdoorDryBulb: limits.dryBulb,
    supplyStatic: statics,
  };
  const named = Object.entries(columns) as [LogColumn, readonly number[] | undefined][];
  const checks = named.flatMap(([name, values]) => (values ? [{ values, range: ranges[name] }] : []));
  return (i) =>
    inside(time[i] as number, clockRange) &&
    checks.every(({ values, range }) => inside(values[i] as number, range)) &&
    ratios.every((values) => Number.isFinite(values[i]));
}

/** The first row at or after a time, by halving. */
function firstFrom(times: Float64Array, at: number): number {
  let low = 0;
  let high = times.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((times[middle] as number) < at) low = middle + 1;
    else high = middle;
  }
  return low;
}
