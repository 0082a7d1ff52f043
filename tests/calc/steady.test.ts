import { describe, expect, test } from 'vitest';
import { random } from '../../src/calc/confidence/random.ts';
import { type Log, steady, steadyRule } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

/** A start-up as a machine does it: the supply air falls with a time constant of four minutes. One row each ten seconds. */
interface Scene {
  readonly minutes?: number;
  readonly constant?: number;
  /** K of scatter at the supply probe. */
  readonly scatter?: number;
  /** K of supply air in an hour, after the start. */
  readonly drift?: number;
  /** K at a moment, s. */
  readonly step?: readonly [at: number, by: number];
  readonly valve?: number;
  readonly startedAt?: number | null;
  readonly changes?: readonly number[];
}

function record(scene: Scene = {}): { time: number[]; t2: number[]; log: (change?: Partial<Log>) => Log } {
  const noise = random(42).normal;
  const { minutes = 60, constant = 240, scatter = 0, drift = 0, step = [Infinity, 0], valve = 0 } = scene;
  const time = Array.from({ length: minutes * 6 + 1 }, (_, i) => 10 * i);
  const t2 = time.map(
    (t) =>
      13 +
      11 * Math.exp(-t / constant) +
      (drift * t) / 3600 +
      (t >= step[0] ? step[1] : 0) +
      valve * Math.sin((2 * Math.PI * t) / 150) +
      scatter * noise(),
  );
  const flat = (value: number) => time.map(() => value);
  return {
    time,
    t2,
    log: (change = {}) => ({
      time,
      columns: {
        'entering.dryBulb': flat(24),
        'entering.humidity': flat(0.5),
        'leaving.dryBulb': t2,
        'leaving.humidity': flat(0.88),
      },
      measure: 'relativeHumidity',
      startedAt: scene.startedAt === undefined ? 0 : scene.startedAt,
      changes: scene.changes ?? [],
      ...change,
    }),
  };
}
const codes = (log: Log) => steady(log).notSteady.map(({ code, column }) => [code, column]);

describe('a start-up', () => {
  test('is steady once the wait is over and the curve has flattened', () => {
    const found = steady(record().log());
    expect(found.isSteady).toBe(true);
    // Fifteen minutes, then a whole window in which 11·e^(−t/240) moves the capacity by less than 2 %.
    expect(found.notBefore).toBe(900);
    expect(found.since).toBeGreaterThanOrEqual(900);
    expect(found.since).toBeLessThan(1500);
    expect(found.window).toEqual({ from: 3000, to: 3600, rows: 61 });
    expect(found.means['leaving.dryBulb']).toBeCloseTo(13, 3);
  });

  test('is too early before that, however flat it is', () => {
    expect(codes(record({ minutes: 20, constant: 30 }).log())).toEqual([['tooEarly', null]]);
    expect(codes(record({ minutes: 20, constant: 30, startedAt: null }).log())).toEqual([]);
  });

  test('is not steady while it still falls, even within every range', () => {
    const found = steady(record({ minutes: 40, constant: 900 }).log());
    expect(found.notSteady.map(({ code }) => code)).toContain('trend');
    expect(found.since).toBeNull();
  });

  test('a change begins the wait anew', () => {
    const found = steady(record({ changes: [2400] }).log());
    expect(found.notBefore).toBe(3300);
    expect(found.notSteady[0]).toMatchObject({ code: 'tooEarly', value: 300 });
  });
});

describe('what a range would let pass', () => {
  test('a slow drift is caught by the trend of the capacity', () => {
    // 1.8 K in an hour is 0.3 K in the window, inside 1.1 K of range, and 3 % of the capacity.
    const found = steady(record({ constant: 60, drift: 1.8 }).log());
    expect(found.notSteady.map(({ code }) => code)).toEqual(['trend']);
    expect(found.trend).toBeLessThan(-0.02);
    expect(found.spreads['leaving.dryBulb']).toBeCloseTo(0.3, 2);
  });

  test('a step is caught by the range, and forgotten a window later', () => {
    expect(codes(record({ constant: 60, step: [3300, 1.5] }).log())).toContainEqual(['range', 'leaving.dryBulb']);
    const later = steady(record({ constant: 60, step: [2400, 1.5] }).log());
    expect(later.isSteady).toBe(true);
    expect(later.since).toBeGreaterThanOrEqual(2400 - 1e-9);
  });

  test('the noise of a sensor and the turns of a valve are let pass', () => {
    expect(steady(record({ constant: 60, scatter: 0.1 }).log()).isSteady).toBe(true);
    expect(steady(record({ constant: 60, valve: 0.15 }).log()).isSteady).toBe(true);
  });
});

describe('a record that is not clean', () => {
  const clean = record({ constant: 60 });
  const columns = clean.log().columns;
  const rearranged = (order: readonly number[]): Log => ({
    ...clean.log(),
    time: order.map((i) => clean.time[i] as number),
    columns: Object.fromEntries(
      Object.entries(columns).map(([name, values]) => [
        name,
        order.map((i) => (values as readonly number[])[i] as number),
      ]),
    ),
  });
  const all = clean.time.map((_, i) => i);

  test('repeated times are left out and counted', () => {
    const twice = steady(rearranged(all.flatMap((i) => (i % 3 === 0 ? [i, i] : [i]))));
    expect(twice.counts.repeated).toBe(Math.ceil(all.length / 3));
    expect(twice.means).toEqual(steady(clean.log()).means);
  });

  test('a clock that goes back is left out until it has caught up', () => {
    const back = steady(rearranged([...all.slice(0, 200), ...all.slice(150)]));
    expect(back.counts).toMatchObject({ backwards: 49, repeated: 1, used: all.length });
    expect(back.means).toEqual(steady(clean.log()).means);
  });

  test('a gap in the window is a reason, one before it only counted', () => {
    expect(codes(rearranged(all.filter((i) => i < 310 || i > 340)))).toEqual([['gap', null]]);
    const before = steady(rearranged(all.filter((i) => i < 100 || i > 140)));
    expect([before.isSteady, before.counts.gaps]).toEqual([true, 1]);
  });

  test('what is no number is left out and counted', () => {
    const holed = { ...columns, 'leaving.dryBulb': clean.t2.map((t, i) => (i % 7 === 0 ? Number.NaN : t)) };
    const found = steady({ ...clean.log(), columns: holed });
    expect(found.counts.unreadable).toBe(Math.ceil(all.length / 7));
    expect(found.isSteady).toBe(true);
  });

  test('what no air has is left out and counted, and does not hide a trend', () => {
    const drifting = record({ drift: 12 }).log();
    const drenched = (drifting.columns['leaving.humidity'] as readonly number[]).map((h, i) => (i === 40 ? 1.02 : h));
    const found = steady({ ...drifting, columns: { ...drifting.columns, 'leaving.humidity': drenched } });
    expect(found.counts.unreadable).toBe(1);
    expect(found.notSteady.map(({ code }) => code)).toContain('trend');
    expect(codeOf(() => steady({ ...drifting, startedAt: Number.NEGATIVE_INFINITY }))).toBe('notFinite');
  });

  test('too short and too thin are said, and no row at all is refused', () => {
    const short = rearranged(all.slice(-30)).time.map((t) => t);
    expect(codes({ ...rearranged(all.slice(-30)), time: short })).toEqual([['tooShort', null]]);
    expect(codes(rearranged(all.filter((i) => i % 100 === 0)))).toContainEqual(['tooFewRows', null]);
    expect(codeOf(() => steady(rearranged([])))).toBe('noRows');
    expect(codeOf(() => steady({ ...clean.log(), time: [0] }))).toBe('wrongLength');
  });
});

describe('what a window is known to', () => {
  test('is the scatter of five parts, four degrees of freedom, moved together', () => {
    const { scatter } = steady(record({ constant: 60, scatter: 0.2 }).log());
    expect(scatter.length).toBe(5);
    for (const source of scatter)
      expect(source).toMatchObject({ name: 'readings', degreesOfFreedom: 4, shape: 'normal' });
    const u = Math.hypot(...scatter.map(({ u: one, moves }) => one * (moves['leaving.dryBulb'] ?? 0)));
    // 61 rows of 0.2 K: about 0.2/√61 when they are independent; four degrees of freedom leave it within a factor of 2.5.
    expect(u / (0.2 / Math.sqrt(61))).toBeGreaterThan(0.4);
    expect(u / (0.2 / Math.sqrt(61))).toBeLessThan(2.5);
    expect(Math.abs(scatter.reduce((sum, { moves }) => sum + (moves['leaving.dryBulb'] ?? 0), 0))).toBeLessThan(1e-9);
  });

  test('is not s/√n where readings follow one another', () => {
    const slow = record({ constant: 60 });
    const wave = slow.time.map((t) => 13 + 0.3 * Math.sin((2 * Math.PI * t) / 1700));
    const log = { ...slow.log(), columns: { ...slow.log().columns, 'leaving.dryBulb': wave } };
    const { scatter } = steady(log, { ...steadyRule, trend: 1 });
    const u = Math.hypot(...scatter.map(({ u: one, moves }) => one * (moves['leaving.dryBulb'] ?? 0)));
    expect(u).toBeGreaterThan((3 * 0.2) / Math.sqrt(61));
  });
});
