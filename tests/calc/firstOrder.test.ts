/** First order at its edges: ends of a model, sizes that just are allowed, degrees of freedom by name, shares of nothing. */
import { describe, expect, test } from 'vitest';
import { budget, CalcError, type ErrorSource, simulate } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

type Sources = readonly ErrorSource<'x' | 'y'>[];
const at = { x: 2, y: 3 };
const cause = (change: Partial<ErrorSource<'x' | 'y'>> = {}): ErrorSource<'x' | 'y'> => {
  return { name: 'a', u: 1, shape: 'normal', degreesOfFreedom: null, moves: { x: 1 }, ...change };
};
const ofX = (sources: Sources, confidence?: number) =>
  budget(({ x }: typeof at) => x, at, sources, confidence === undefined ? {} : { confidence });
/** 5x within an end that it cannot go past. */
const within = (low: number, high: number) =>
  budget(
    ({ x }: typeof at) => {
      if (x < low || x > high) throw new CalcError('outOfRange', 'x', x, low, high);
      return 5 * x;
    },
    at,
    [cause({ u: 0.1 })],
  );

describe('a model with an end', () => {
  test('is followed to the other side of it, upwards or downwards', () => {
    expect(within(2, 9).u).toBeCloseTo(0.5, 9);
    expect(within(0, 2).u).toBeCloseTo(0.5, 9);
    expect(within(0, 9).u).toBeCloseTo(0.5, 9);
  });

  test('that goes to neither side has no budget, and the cause is named', () => {
    expect(() => within(2, 2)).toThrow(/^a: not finite/);
    expect(codeOf(() => within(3, 4))).toBe('outOfRange');
    expect(codeOf(() => budget(() => Number.NaN, at, [cause()]))).toBe('notFinite');
    expect(codeOf(() => budget(() => Number.POSITIVE_INFINITY, at, []))).toBe('notFinite');
  });

  test('that breaks for another reason is not taken for one with an end', () => {
    const broken = ({ x }: typeof at) => {
      if (x !== 2) throw new TypeError('broken');
      return x;
    };
    expect(() => budget(broken, at, [cause()])).toThrow(TypeError);
    expect(() => simulate(broken, at, [cause()], { draws: 100, seed: 1 })).toThrow(TypeError);
  });
});

describe('causes', () => {
  test('of one name are one line with the sum of their variances, the first of each name its degrees of freedom', () => {
    const { shares, u, degreesOfFreedom } = ofX([
      cause({ u: 3, degreesOfFreedom: 4 }),
      cause({ u: 4, degreesOfFreedom: 4 }),
      cause({ name: 'b', u: 12 }),
    ]);
    expect(u).toBeCloseTo(13, 9);
    expect(shares.map(({ name, u: one, share }) => [name, one, share])).toEqual([
      ['b', expect.closeTo(12, 9), expect.closeTo(144 / 169, 9)],
      ['a', expect.closeTo(5, 9), expect.closeTo(25 / 169, 9)],
    ]);
    // Welch and Satterthwaite: 13⁴/(5⁴/4), the cause without end adding nothing.
    expect(degreesOfFreedom).toBeCloseTo(13 ** 4 / (5 ** 4 / 4), 6);
  });

  test('of no size have no share, and a result without any has a range of nothing', () => {
    expect(ofX([cause({ u: 0 })])).toMatchObject({
      u: 0,
      degreesOfFreedom: null,
      shares: [{ name: 'a', u: 0, share: 0 }],
    });
    expect(ofX([])).toMatchObject({ value: 2, u: 0, shares: [], interval: { low: 2, high: 2 } });
    // Of no size they need not be able to move anything.
    expect(budget(({ x }: typeof at) => (x === 2 ? x : Number.NaN), at, [cause({ u: 0 })]).u).toBe(0);
  });

  test('move an input by their own factor, up or down', () => {
    expect(ofX([cause({ u: 0.5, moves: { x: -3 } })]).u).toBeCloseTo(1.5, 9);
    expect(budget(({ x, y }: typeof at) => x + y, at, [cause({ moves: { x: 1, y: -1 } })]).u).toBeCloseTo(0, 9);
  });

  test.each([
    ['an uncertainty', { u: 1e12 }, { u: 1.001e12 }],
    ['degrees of freedom', { degreesOfFreedom: 0.1 }, { degreesOfFreedom: 0.099 }],
    ['degrees of freedom without end', { degreesOfFreedom: 1e12 }, { degreesOfFreedom: 1.001e12 }],
    ['a factor', { moves: { x: 1e12 } }, { moves: { x: 1.001e12 } }],
    ['a factor downwards', { moves: { x: -1e12 } }, { moves: { x: -1.001e12 } }],
  ])('have %s up to a limit, and are refused beyond it', (_, allowed, beyond) => {
    expect(codeOf(() => ofX([cause(allowed)]))).toBeNull();
    expect(codeOf(() => ofX([cause(beyond)]))).toBe('outOfRange');
  });

  test('name what is wrong with them', () => {
    expect(() => ofX([cause({ name: 'probe', u: -1 })])).toThrow(/^probe\.u:/);
    expect(() => ofX([cause({ name: 'probe', degreesOfFreedom: 0 })])).toThrow(/^probe\.degreesOfFreedom:/);
    expect(() => ofX([cause({ name: 'probe', moves: { x: Number.NaN } })])).toThrow(/^probe\.moves:/);
    expect(() => ofX([cause({ moves: { z: 1 } as never })])).toThrow(/^z: missing/);
  });
});

describe('a confidence', () => {
  test('is one of even chances to 999 in a thousand, nine in ten where none is said', () => {
    expect(ofX([cause()]).interval.probability).toBe(0.9);
    expect(ofX([cause()], 0.5).interval).toMatchObject({ low: 2, high: 2 });
    expect(ofX([cause()], 0.999).interval.k).toBeCloseTo(3.0902, 4);
    for (const confidence of [0.49, 0.9991]) {
      expect(codeOf(() => ofX([cause()], confidence))).toBe('outOfRange');
      expect(codeOf(() => simulate(({ x }) => x, at, [cause()], { draws: 100, seed: 1, confidence }))).toBe(
        'outOfRange',
      );
    }
  });
});

describe('draws of a model', () => {
  test('are a hundred at least and ten million at most, and whole', () => {
    const run = (draws: number) => simulate(({ x }: typeof at) => x, at, [cause()], { draws, seed: 1 });
    expect(run(100.7).draws).toBe(100);
    for (const draws of [99, 1.1e7, Number.NaN]) expect(codeOf(() => run(draws))).not.toBeNull();
  });

  test('that give no number are drawn again, as are those that a model refuses', () => {
    const half = (of: (x: number) => number) =>
      simulate(({ x }: typeof at) => of(x), at, [cause()], { draws: 2000, seed: 1 });
    const refused = half((x) => {
      if (x < 2) throw new CalcError('outOfRange', 'x', x, 2, 9);
      return x;
    });
    const none = half((x) => (x < 2 ? Number.NaN : x));
    expect(none).toEqual(refused);
    expect(none.redrawn / none.draws).toBeGreaterThan(0.85);
    expect(none.interval.low).toBeGreaterThanOrEqual(2);
  });

  test('run from the one end of a confidence to the other: 80 % of them between, where nine in ten is asked of each end', () => {
    const { interval } = simulate(({ x }: typeof at) => x, at, [cause()], { draws: 20_000, seed: 4 });
    // ±1.2816 around 2; four standard errors of the 10 % point are 4·√(0.09/20 000)/0.1755.
    expect(Math.abs(interval.low - (2 - 1.2816))).toBeLessThan(0.049);
    expect(Math.abs(interval.high - (2 + 1.2816))).toBeLessThan(0.049);
    expect(interval.probability).toBe(0.9);
  });
});
