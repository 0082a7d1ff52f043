import { CalcError, within } from '../errors.ts';
import type { ProbePair, ProbeReading } from './compareProbes.ts';

/** A record of one probe: times in s, ascending. */
export interface ProbeLog {
  readonly time: readonly number[];
  readonly dryBulb: readonly number[];
  readonly humidity: readonly (number | null)[];
}

export interface Alignment {
  /** What to add to the second clock, s. */
  readonly shift: number;
  /** How well the two then follow each other, up to 1. */
  readonly correlation: number;
}

/** Below this the two temperatures do not follow each other, and no shift can be told. Our choice. */
const leastCorrelation = 0.7;
const mostPoints = 1500;

/**
 * How far the second clock is behind the first, from two temperatures that rise and fall together: the shift, within `most`
 * seconds either way, at which they go best together (Pearson's r, the peak between the steps by a parabola). `null` where they
 * do not: probes at rest in steady air say nothing of their clocks; and where they go best together at an end of what was tried,
 * because it may be better still beyond. Throws `noRows` for a record of fewer than three readings.
 */
export function alignClocks(
  first: ProbeLog,
  second: ProbeLog,
  { most = 600 }: { readonly most?: number } = {},
): Alignment | null {
  within('most', most, [1, 1e6]);
  for (const { time } of [first, second])
    if (time.length < 3) throw new CalcError('noRows', 'log', time.length, 3, 1e7);
  const step = Math.max(Math.min(spanOf(first), spanOf(second)) / mostPoints, most / 300, 1);
  const lags = Math.ceil(most / step);
  const found = Array.from({ length: 2 * lags + 1 }, (_, i) => agreement(first, second, (i - lags) * step, step));
  const best = found.reduce((top, r, i) => (r > (found[top] as number) ? i : top), 0);
  const peak = found[best] as number;
  const [before, after] = [found[best - 1], found[best + 1]];
  if (peak < leastCorrelation || before === undefined || after === undefined) return null;
  // The first of the best lies above the one before it: there is a bend.
  const between = (before - after) / (2 * (before - 2 * peak + after));
  return { shift: (best - lags + between) * step, correlation: peak };
}

/** Pearson's r of the two temperatures on a grid of times, the second clock moved; −1 where they hardly overlap. */
function agreement(first: ProbeLog, second: ProbeLog, shift: number, step: number): number {
  const from = Math.max(first.time[0] as number, (second.time[0] as number) + shift);
  const to = Math.min(first.time.at(-1) as number, (second.time.at(-1) as number) + shift);
  const shorter = Math.min(spanOf(first), spanOf(second));
  if (to - from < 0.5 * shorter) return -1;
  let n = 0;
  let x = 0;
  let y = 0;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  const readFirst = reader(first);
  const readSecond = reader(second);
  for (let t = from; t <= to; t += step) {
    const a = readFirst(t);
    const b = readSecond(t - shift);
    n++;
    x += a;
    y += b;
    xx += a * a;
    yy += b * b;
    xy += a * b;
  }
  const spread = Math.sqrt((xx - (x * x) / n) * (yy - (y * y) / n));
  return spread > 1e-9 ? (xy - (x * y) / n) / spread : -1;
}

function spanOf({ time }: ProbeLog): number {
  return (time.at(-1) as number) - (time[0] as number);
}

/** The temperature at rising times, straight between two readings. */
function reader({ time, dryBulb }: ProbeLog): (t: number) => number {
  let i = 1;
  return (t) => {
    while (i < time.length - 1 && (time[i] as number) < t) i++;
    const [t0, t1] = [time[i - 1] as number, time[i] as number];
    const [a, b] = [dryBulb[i - 1] as number, dryBulb[i] as number];
    return t1 > t0 ? a + ((b - a) * (t - t0)) / (t1 - t0) : b;
  };
}

/**
 * Pairs of readings from two records: to each of the first the nearest of the second, its clock moved by `shift`, no further
 * away than `apart` seconds.
 */
export function pairLogs(
  first: ProbeLog,
  second: ProbeLog,
  { shift, apart }: { readonly shift: number; readonly apart: number },
): readonly ProbePair[] {
  let j = 0;
  return first.time.flatMap((time, i): ProbePair[] => {
    const distance = (at: number) => Math.abs((second.time[at] as number) + shift - time);
    // Behind the last reading the distance is no number, which is neither nearer nor near enough.
    while (distance(j + 1) <= distance(j)) j++;
    if (!(distance(j) <= apart)) return [];
    const [entering, leaving] = [readingAt(first, i), readingAt(second, j)];
    return entering && leaving ? [{ time, entering, leaving }] : [];
  });
}

/** `null` where the temperature is no number; the humidity of a row is then not missed. */
function readingAt(log: ProbeLog, i: number): ProbeReading | null {
  const [dryBulb, humidity] = [log.dryBulb[i], log.humidity[i]];
  if (!Number.isFinite(dryBulb)) return null;
  return { dryBulb: dryBulb as number, humidity: Number.isFinite(humidity) ? (humidity as number) : null };
}
