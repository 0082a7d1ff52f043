/** Two clocks brought together by what their probes felt, and readings paired by them. */
import { describe, expect, test } from 'vitest';
import { random } from '../../src/calc/confidence/random.ts';
import { alignClocks, type ProbeLog, pairLogs } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

/** Still air, a fall into cold air, and a bump on the way. */
const curve = (t: number) =>
  24 - 6 * (1 - Math.exp(-Math.max(0, t - 300) / 200)) + 3 * Math.exp(-(((t - 1500) / 200) ** 2));
function logOf(step: number, late: number, scatter: number, from = 0, to = 2400): ProbeLog {
  const { normal } = random(100 * step + late);
  const time = Array.from({ length: Math.floor((to - from) / step) }, (_, i) => from + i * step);
  return {
    time,
    dryBulb: time.map((t) => curve(t + late) + scatter * normal()),
    humidity: time.map(() => 0.5),
  };
}
const still = (seed: number): ProbeLog => {
  const { normal } = random(seed);
  const time = Array.from({ length: 200 }, (_, i) => 10 * i);
  return { time, dryBulb: time.map(() => 24 + 0.05 * normal()), humidity: time.map(() => null) };
};
const plain = (time: readonly number[], dryBulb: readonly number[]): ProbeLog => {
  return { time, dryBulb, humidity: time.map(() => null) };
};

describe('two clocks', () => {
  test.each([0, 37, -142, 410, 590])('are brought together when one is %d s behind', (late) => {
    const found = alignClocks(logOf(5, 0, 0.02), logOf(7, late, 0.02));
    expect(Math.abs((found?.shift ?? Number.NaN) - late)).toBeLessThan(3);
    expect(found?.correlation).toBeGreaterThan(0.99);
  });

  test.each([37, -142.5, 60.4])('without scatter are told to a fraction of the step, %d s', (late) => {
    // Tried every 1.6 seconds; what lies between is drawn through three of them.
    const found = alignClocks(logOf(1, 0, 0), logOf(1, late, 0), { most: 160 });
    expect(Math.abs((found?.shift ?? Number.NaN) - late)).toBeLessThan(0.1);
    expect(found?.correlation).toBeGreaterThan(0.99999);
    expect(found?.correlation).toBeLessThanOrEqual(1 + 1e-12);
  });

  test('do not hang on what the thermometers read, only on how it rises and falls', () => {
    const first = logOf(5, 0, 0);
    const second = logOf(7, 61, 0);
    const other = { ...second, dryBulb: second.dryBulb.map((t) => 10 + 1.7 * t) };
    const [found, again] = [alignClocks(first, second, { most: 100 }), alignClocks(first, other, { most: 100 })];
    expect(again?.shift).toBeCloseTo(found?.shift ?? 0, 6);
    expect(again?.correlation).toBeCloseTo(found?.correlation ?? 0, 9);
  });

  test('say the same from either side', () => {
    const [first, second] = [logOf(5, 0, 0), logOf(7, 61, 0)];
    const most = { most: 100 };
    expect(alignClocks(first, second, most)?.shift).toBeCloseTo(-(alignClocks(second, first, most)?.shift ?? 0), 0);
  });

  test('are read straight between two readings, where a time stands twice too', () => {
    // Corners of a zigzag on both grids: between them it is straight, so that the two agree wholly at the right shift.
    const corners = [20, 20, 26, 22, 25, 21, 21, 27, 20, 20];
    const zigzag = (t: number) => {
      const i = Math.min(Math.max(Math.floor(t / 100), 0), 8);
      return (corners[i] as number) + (((corners[i + 1] as number) - (corners[i] as number)) * (t - 100 * i)) / 100;
    };
    const every = (step: number) => Array.from({ length: 900 / step + 1 }, (_, i) => i * step);
    const twice = every(50).flatMap((t) => [t, t]);
    const second = every(20).map((t) => t + 1000);
    const found = alignClocks(
      plain(twice, twice.map(zigzag)),
      plain(
        second,
        second.map((t) => zigzag(t - 1000)),
      ),
      { most: 1200 },
    );
    expect(found?.correlation).toBeCloseTo(1, 9);
    expect(found?.shift).toBeCloseTo(-1000, 1);
  });

  test('further apart than was tried are not told: what fits best at an end may fit better beyond', () => {
    for (const late of [62, 70, -70]) expect(alignClocks(logOf(5, 0, 0), logOf(5, late, 0), { most: 60 })).toBeNull();
    expect(alignClocks(logOf(5, 0, 0), logOf(5, 410, 0), { most: 300 })).toBeNull();
    expect(alignClocks(logOf(5, 0, 0), logOf(5, 410, 0), { most: 412 })?.shift).toBeCloseTo(410, 0);
    expect(codeOf(() => alignClocks(still(1), still(2), { most: 0.5 }))).toBe('outOfRange');
  });

  test('are not told from records of which less than half of the shorter goes together', () => {
    // The fall stands at the end of the one and at the beginning of the other: 300 s of 900 overlap when they are laid over it.
    const late = alignClocks(logOf(5, 0, 0, 0, 900), logOf(5, 0, 0, 300, 1200), { most: 200 });
    expect(late?.shift).toBeCloseTo(0, 0);
    const apart = { ...logOf(5, 0, 0, 600, 1500), time: logOf(5, 0, 0, 0, 900).time };
    expect(alignClocks(logOf(5, 0, 0, 0, 900), apart, { most: 800 })?.shift ?? 0).not.toBeCloseTo(600, -1);
    // A short record inside a long one counts by its own length.
    expect(alignClocks(logOf(5, 0, 0), logOf(5, 0, 0, 1300, 1700), { most: 100 })?.shift).toBeCloseTo(0, 0);
  });

  test('cannot be told from air that stands still, but from a record of which a part does', () => {
    expect(alignClocks(still(1), still(2))).toBeNull();
    const flat = logOf(10, 0, 0);
    expect(alignClocks({ ...flat, dryBulb: flat.dryBulb.map(() => 24) }, flat)).toBeNull();
    // Where the second is moved to the far end, only air that stood still is left of it.
    const later = (t: number) => (t < 1300 ? 24 : 20 + 4 * Math.exp(-(((t - 1900) / 200) ** 2)));
    const time = flat.time;
    expect(alignClocks(plain(time, time.map(later)), plain(time, time.map(later)), { most: 1150 })?.shift).toBeCloseTo(
      0,
      0,
    );
  });

  test('need three readings of each', () => {
    const three = plain([0, 1, 2], [20, 25, 20]);
    expect(alignClocks(three, three, { most: 1 })).toEqual({ shift: 0, correlation: expect.closeTo(1, 12) });
    const two = plain([0, 1], [20, 25]);
    for (const [first, second] of [
      [two, three],
      [three, two],
    ] as const)
      expect(codeOf(() => alignClocks(first, second))).toBe('noRows');
  });
});

describe('pairs of readings', () => {
  test('leave out what is no number', () => {
    const time = [0, 10, 20];
    const first: ProbeLog = { time, dryBulb: [24, Number.NaN, 24], humidity: [0.5, 0.5, Number.NEGATIVE_INFINITY] };
    const second: ProbeLog = { time, dryBulb: [25, 25, 25], humidity: [0.5, 0.5, 0.5] };
    expect(pairLogs(first, second, { shift: 0, apart: 1 })).toEqual([
      { time: 0, entering: { dryBulb: 24, humidity: 0.5 }, leaving: { dryBulb: 25, humidity: 0.5 } },
      { time: 20, entering: { dryBulb: 24, humidity: null }, leaving: { dryBulb: 25, humidity: 0.5 } },
    ]);
  });

  test('go with the nearest of the other clock, none further away than was said', () => {
    const first: ProbeLog = { time: [0, 10, 20], dryBulb: [20, 21, 22], humidity: [0.5, null, 0.5] };
    const second: ProbeLog = { time: [91, 103, 140], dryBulb: [20.1, 21.1, 25], humidity: [0.4, 0.4, 0.4] };
    const paired = (apart: number) =>
      pairLogs(first, second, { shift: -91, apart }).map(({ time, leaving }) => [time, leaving.dryBulb]);
    expect(paired(4)).toEqual([
      [0, 20.1],
      [10, 21.1],
    ]);
    // Two seconds away is as far as it may be, 1.9 is not far enough.
    expect(paired(2).length).toBe(2);
    expect(paired(1.9).length).toBe(1);
  });

  test('take the later of two that are as near, and none from an empty record', () => {
    const first = plain([10], [20]);
    expect(pairLogs(first, plain([5, 15], [1, 2]), { shift: 0, apart: 60 })[0]?.leaving.dryBulb).toBe(2);
    expect(pairLogs(first, plain([], []), { shift: 0, apart: 60 })).toEqual([]);
  });
});
