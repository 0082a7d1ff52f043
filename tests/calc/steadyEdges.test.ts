/** Where the end of a record just is steady and just is not, and what its window says, worked by hand. */
import { describe, expect, test } from 'vitest';
import { type Log, moistAir, steady, steadyRule } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const every = (step: number, to: number, from = 0) =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);
/** A record of the outdoor air alone, which stands still. */
const still = (time: readonly number[], change: Partial<Log> = {}): Log => {
  return {
    time,
    columns: { outdoorDryBulb: time.map(() => 30) },
    measure: 'relativeHumidity',
    startedAt: null,
    ...change,
  };
};
const outdoors = (time: readonly number[], values: readonly number[]): Log =>
  still(time, { columns: { outdoorDryBulb: values } });
const faults = (log: Log, rule = steadyRule) => steady(log, rule).notSteady;

describe('the last window of a record', () => {
  test('may begin fifteen minutes after the start or the last change, and a second sooner is too early', () => {
    const time = every(60, 1500);
    const early = [{ code: 'tooEarly', column: null, value: 1, most: 0 }];
    expect(faults(still(time, { startedAt: 0 }))).toEqual([]);
    expect(faults(still(time, { startedAt: 1 }))).toEqual(early);
    expect(faults(still(time, { changes: [0] }))).toEqual([]);
    expect(faults(still(time, { changes: [1, -50] }))).toEqual(early);
    expect(faults(still(time, { startedAt: -600, changes: [1] }))).toEqual(early);
    expect(steady(still(time)).notBefore).toBeNull();
    expect(steady(still(time, { startedAt: 5, changes: [70, 3] })).notBefore).toBe(970);
  });

  test('may be shorter than ten minutes by half of the longest gap, and no more', () => {
    expect(faults(still([...every(60, 480), 510]))).toEqual([]);
    expect(faults(still([...every(60, 480), 509]))).toEqual([
      { code: 'tooShort', column: null, value: 509, most: 600 },
    ]);
  });

  test('has five rows at least', () => {
    expect(faults(still(every(150, 600)))).toEqual([]);
    expect(faults(still(every(180, 540)))).toEqual([{ code: 'tooFewRows', column: null, value: 4, most: 5 }]);
  });

  test('has no gap longer than three minutes, be it between its last two rows', () => {
    const until = every(60, 1200);
    expect(faults(still([...until, 1380]))).toEqual([]);
    expect(faults(still([...until, 1381]))).toEqual([{ code: 'gap', column: null, value: 181, most: 180 }]);
    // A longer one just before it is none of its own.
    expect(faults(still([0, 60, 600, ...every(60, 1200, 660)]))).toEqual([]);
    expect(faults(still([0, 60, 600, 660, 860, ...every(60, 1200, 900)]))).toMatchObject([{ code: 'gap', value: 200 }]);
  });

  test('has every column within its range, the range itself allowed', () => {
    const rule = { ...steadyRule, ranges: [{ column: 'outdoorDryBulb', most: 1 }] } as const;
    const time = every(60, 1200);
    const jump = (by: number) =>
      outdoors(
        time,
        time.map((t) => (t === 1200 ? 30 + by : 30)),
      );
    expect(faults(jump(1), rule)).toEqual([]);
    expect(faults(jump(1.25), rule)).toEqual([{ code: 'range', column: 'outdoorDryBulb', value: 1.25, most: 1 }]);
    // By the rule as it stands two degrees Fahrenheit: 1.11 K.
    expect([faults(jump(1.11)).length, faults(jump(1.12)).length]).toEqual([0, 1]);
    const gauge = still(time, { columns: { supplyStatic: time.map((t) => (t === 1200 ? 112 : 100)) } });
    expect(faults(gauge)).toEqual([]);
    // 0.05 inch of water are 12.45 Pa.
    const puffed = still(time, { columns: { supplyStatic: time.map((t) => (t === 1200 ? 112.5 : 100)) } });
    expect(faults(puffed)).toMatchObject([{ code: 'range', column: 'supplyStatic' }]);
  });

  test('has a capacity whose line changes by 2 % at most, up or down, at the pressure of the place', () => {
    const time = every(60, 600);
    const drifting = (perWindow: number, pressure: number): Log => ({
      time,
      columns: {
        'entering.dryBulb': time.map(() => 24),
        'entering.humidity': time.map(() => 0.5),
        'leaving.dryBulb': time.map((t) => 13 + (perWindow * t) / 600),
        'leaving.humidity': time.map(() => 0.8),
      },
      measure: 'relativeHumidity',
      pressure,
      startedAt: null,
    });
    for (const pressure of [101_325, 75e3])
      for (const by of [0.4, -0.4]) {
        // Least squares by their definition, over the heat of a kilogram of air.
        const heat = time.map((t) => {
          const state = (dryBulb: number, relativeHumidity: number) =>
            moistAir({ dryBulb, relativeHumidity, pressure }).enthalpy;
          return state(24, 0.5) - state(13 + (by * t) / 600, 0.8);
        });
        const mean = heat.reduce((sum, one) => sum + one, 0) / heat.length;
        const slope =
          time.reduce((sum, t, i) => sum + (t - 300) * ((heat[i] as number) - mean), 0) /
          time.reduce((sum, t) => sum + (t - 300) ** 2, 0);
        const trend = (slope * 600) / mean;
        const found = steady(drifting(by, pressure));
        expect(found.trend).toBeCloseTo(trend, 9);
        expect(found.notSteady).toEqual([
          { code: 'trend', column: 'capacity', value: expect.closeTo(Math.abs(trend), 9), most: 0.02 },
        ]);
      }
    expect(steady(drifting(0.1, 101_325)).isSteady).toBe(true);
    expect(codeOf(() => steady(drifting(0.1, 1000)))).toBe('outOfRange');
  });
});

describe('a steady stretch', () => {
  test('is counted from the beginning of its first window, and no sooner than the record', () => {
    const time = every(60, 3000);
    // From 900 s on a window may begin: the first that does ends at 1500.
    expect(steady(still(time, { startedAt: 0 })).since).toBe(900);
    expect(steady(still(time)).since).toBe(0);
    expect(steady(still(time.map((t) => t + 7)))).toMatchObject({
      since: 7,
      window: { from: 2407, to: 3007, rows: 11 },
    });
    // A step that the range does not let pass: steady again when the window is past it.
    const stepped = outdoors(
      time,
      time.map((t) => (t < 1200 ? 30 : 33)),
    );
    expect(steady(stepped).since).toBe(1200);
  });

  test('is none where the end is not steady, however long it was before', () => {
    const time = every(60, 3000);
    const broken = outdoors(
      time,
      time.map((t) => (t === 3000 ? 33 : 30)),
    );
    expect(steady(broken)).toMatchObject({ isSteady: false, since: null });
  });
});

describe('what the last window says', () => {
  const time = every(60, 540);
  const values = [1, 3, 2, 4, 3, 5, 4, 6, 5, 7];

  test('is means and spreads of each column, and five parts that scatter together', () => {
    const log = still(time, {
      columns: {
        outdoorDryBulb: values,
        'entering.dryBulb': values.map((one) => 20 + one / 100),
        supplyStatic: values,
      },
    });
    const { means, spreads, scatter, window } = steady(log);
    expect(window).toEqual({ from: 0, to: 540, rows: 10 });
    expect(means).toEqual({ outdoorDryBulb: 4, 'entering.dryBulb': expect.closeTo(20.04, 9), supplyStatic: 4 });
    expect(spreads).toEqual({ outdoorDryBulb: 6, 'entering.dryBulb': expect.closeTo(0.06, 9), supplyStatic: 6 });
    // Parts of two rows: means 2, 3, 4, 5, 6. A pressure that no result hangs on has no scatter of its own.
    expect(scatter).toEqual(
      [-2, -1, 0, 1, 2].map((part) => ({
        name: 'readings',
        u: expect.closeTo(1 / Math.sqrt(20), 12),
        shape: 'normal',
        degreesOfFreedom: 4,
        moves: { outdoorDryBulb: expect.closeTo(part, 9), 'entering.dryBulb': expect.closeTo(part / 100, 9) },
      })),
    );
  });

  test('has rows of the window alone', () => {
    const long = outdoors(
      every(60, 1200),
      every(60, 1200).map((t) => (t < 600 ? 50 : 30)),
    );
    expect(steady(long)).toMatchObject({ means: { outdoorDryBulb: 30 }, spreads: { outdoorDryBulb: 0 } });
  });

  test('has no scatter with fewer than five rows, nor of a pressure alone', () => {
    expect(steady(outdoors(every(180, 540), [1, 2, 3, 4])).scatter).toEqual([]);
    expect(steady(outdoors(every(150, 600), [1, 2, 3, 4, 5])).scatter.length).toBe(5);
    expect(steady(still(time, { columns: { supplyStatic: values } })).scatter).toEqual([]);
  });
});
