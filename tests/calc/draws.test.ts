/** Chance and what is counted among draws: shapes, tails, quantiles, draws that cannot be. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { random } from '../../src/calc/confidence/random.ts';
import { intervalOf, rangeOf } from '../../src/calc/confidence/rangeOf.ts';
import { sampler, take } from '../../src/calc/confidence/sampler.ts';
import { CalcError } from '../../src/calc/errors.ts';
import type { ErrorSource, Shape } from '../../src/calc/types.ts';

const n = 20_000;
/** Four standard errors of a share of `n` draws. */
const near = (share: number) => 4 * Math.sqrt((share * (1 - share)) / n);
const cause = (change: Partial<ErrorSource<'x' | 'y'>>): ErrorSource<'x' | 'y'> => {
  return { name: 'a', u: 1, shape: 'normal', degreesOfFreedom: null, moves: { x: 1 }, ...change };
};
/** So many draws of x and y around nothing. */
function drawn(sources: readonly ErrorSource<'x' | 'y'>[], count = n, seed = 5): readonly [number, number][] {
  const draw = sampler(['x', 'y'], Float64Array.of(0, 0), sources, seed);
  const values = new Float64Array(2);
  return Array.from({ length: count }, () => {
    draw(values);
    return [values[0] as number, values[1] as number];
  });
}
const xs = (sources: readonly ErrorSource<'x' | 'y'>[]) => drawn(sources).map(([x]) => x);
const shareOf = (values: readonly number[], has: (value: number) => boolean) => values.filter(has).length / n;

describe('an error of standard uncertainty 1', () => {
  test.each([
    // Half-widths √3 and √6; beyond √3 lies nothing of a rectangle, (1 − 1/√2)² of a triangle, 0.0833 of the normal shape.
    ['rectangular', Math.sqrt(3), 0],
    ['triangular', Math.sqrt(6), (1 - Math.SQRT1_2) ** 2],
    ['normal', Number.POSITIVE_INFINITY, 0.0833],
  ] as const)('of %s shape ends where it should, and has its share on the way there', (shape: Shape, end, beyond) => {
    const values = xs([cause({ shape })]);
    expect(Math.max(...values.map(Math.abs))).toBeLessThanOrEqual(end);
    expect(Math.abs(shareOf(values, (x) => Math.abs(x) > Math.sqrt(3)) - beyond)).toBeLessThanOrEqual(near(beyond));
    expect(Math.abs(shareOf(values, (x) => x > 0) - 0.5)).toBeLessThan(near(0.5));
    expect(Math.abs(values.reduce((sum, x) => sum + x * x, 0) / n - 1)).toBeLessThan((4 * Math.SQRT2) / Math.sqrt(n));
  });

  test('moves every input of its cause at once, each by its own amount, and the point by nothing else', () => {
    for (const [x, y] of drawn([cause({ u: 0.5, moves: { x: 2, y: -3 } })], 50)) expect(y).toBeCloseTo(-1.5 * x, 12);
    expect(drawn([cause({ u: 0 })], 5)).toEqual(Array(5).fill([0, 0]));
    const draw = sampler(['x', 'y'], Float64Array.of(7, -2), [cause({ moves: { y: 1 } })], 1);
    const values = new Float64Array(2);
    draw(values);
    expect(values[0]).toBe(7);
  });

  test('by chance is another with each seed, the first one too', () => {
    const firsts = [1, 2, 3, 4, 5].map((seed) => random(seed).normal());
    expect(new Set(firsts).size).toBe(5);
  });

  test('adds to what other causes do to the same input', () => {
    const values = xs([cause({ u: 3 }), cause({ name: 'b', u: 4 })]);
    const square = values.reduce((sum, x) => sum + x * x, 0) / n;
    expect(Math.abs(square / 25 - 1)).toBeLessThan((4 * Math.SQRT2) / Math.sqrt(n));
  });
});

describe('few degrees of freedom', () => {
  test.each([1, 2, 3, 4, 7])('spread an error by √(ν/χ²), χ² of mean ν and variance 2ν: ν = %d', (free) => {
    const { spread } = random(3);
    // χ²/ν has the mean 1, the variance 2/ν, and its fourth moment about the mean is 12/ν² + 48/ν³.
    const squares = Array.from({ length: n }, () => spread(free) ** -2);
    const mean = squares.reduce((sum, one) => sum + one, 0) / n;
    const variance = squares.reduce((sum, one) => sum + (one - mean) ** 2, 0) / n;
    expect(Math.abs(mean - 1)).toBeLessThan(4 * Math.sqrt(2 / free / n));
    const fourth = 12 / free ** 2 + 48 / free ** 3;
    expect(Math.abs(variance - 2 / free)).toBeLessThan(4 * Math.sqrt((fourth - (2 / free) ** 2) / n));
  });

  test('are one spread for all causes of a name, and one for each name', () => {
    /** How the sizes of two errors go together. */
    const together = (other: string) => {
      const pairs = drawn([
        cause({ degreesOfFreedom: 2 }),
        cause({ name: other, degreesOfFreedom: 2, moves: { y: 1 } }),
      ]).map(([x, y]) => [Math.min(Math.abs(x), 3), Math.min(Math.abs(y), 3)] as const);
      const mean = (of: (pair: readonly [number, number]) => number) => pairs.reduce((sum, p) => sum + of(p), 0) / n;
      const [x, y] = [mean((p) => p[0]), mean((p) => p[1])];
      return mean((p) => (p[0] - x) * (p[1] - y)) / mean((p) => (p[0] - x) ** 2);
    };
    expect(together('a')).toBeGreaterThan(0.2);
    expect(Math.abs(together('b'))).toBeLessThan(0.05);
  });

  test('that are not whole are taken as the whole number below, which is wider, and never as fewer than one', () => {
    const of = (degreesOfFreedom: number | null) => drawn([cause({ degreesOfFreedom })], 20);
    expect(of(4.9)).toEqual(of(4));
    expect(of(0.4)).toEqual(of(1));
    expect(of(5)).not.toEqual(of(4));
  });

  test('leave alone what is known without end, and what is as good as that', () => {
    expect(drawn([cause({ degreesOfFreedom: 1000 })], 20)).toEqual(drawn([cause({})], 20));
    expect(drawn([cause({ degreesOfFreedom: 100 })], 20)).not.toEqual(drawn([cause({})], 20));
    // One cause of a few degrees beside one without end: only the one has the tails.
    const beside = drawn([cause({ degreesOfFreedom: 1 }), cause({ name: 'b', moves: { y: 1 } })]);
    expect(
      shareOf(
        beside.map(([x]) => x),
        (x) => Math.abs(x) > 6,
      ),
    ).toBeGreaterThan(0.08);
    expect(
      shareOf(
        beside.map(([, y]) => y),
        (y) => Math.abs(y) > 6,
      ),
    ).toBe(0);
  });
});

describe('a range that is counted', () => {
  const ties = fc.array(fc.integer({ min: -8, max: 8 }), { minLength: 1, maxLength: 60 });
  /** Without the zero below zero, which sorts as it likes. */
  const reals = fc.array(
    fc.double({ noNaN: true, noDefaultInfinity: true }).map((one) => one + 0),
    { minLength: 1, maxLength: 60 },
  );

  test('ends at a quantile: no more of the draws lie outside than may, and no fewer at it or outside', () => {
    fc.assert(
      fc.property(fc.oneof(ties, reals), fc.double({ min: 0.5, max: 0.999, noNaN: true }), (values, confidence) => {
        const { low, high } = intervalOf(Float64Array.from(values), confidence);
        const allowed = (1 - confidence) * values.length;
        const counted = (has: (value: number) => boolean) => values.filter(has).length;
        expect(counted((one) => one < low)).toBeLessThanOrEqual(allowed + 1e-9);
        expect(counted((one) => one <= low)).toBeGreaterThanOrEqual(allowed - 1e-9);
        expect(counted((one) => one > high)).toBeLessThanOrEqual(allowed + 1e-9);
        expect(counted((one) => one >= high)).toBeGreaterThanOrEqual(allowed - 1e-9);
        expect([values.includes(low), values.includes(high)]).toEqual([true, true]);
      }),
      { numRuns: 300 },
    );
  });

  test('loses no draw on the way', () => {
    fc.assert(
      fc.property(fc.oneof(ties, reals), (values) => {
        const draws = Float64Array.from(values);
        intervalOf(draws, 0.8);
        expect([...draws].sort((a, b) => a - b)).toEqual([...values].sort((a, b) => a - b));
      }),
    );
  });

  test('has the mean and the standard deviation of the draws, worked by hand', () => {
    // Mean 40/8 = 5; squares about it 9 + 1 + 1 + 1 + 0 + 0 + 4 + 16 = 32, over 7.
    const { value, u, interval } = rangeOf(Float64Array.of(2, 4, 4, 4, 5, 5, 7, 9), 0.9);
    expect([value, u]).toEqual([5, Math.sqrt(32 / 7)]);
    expect(interval).toEqual({ probability: 0.9, k: null, low: 2, high: 9 });
  });
});

describe('draws that cannot be', () => {
  /** The first so many are refused, all others kept; each draw stands at the place of the next to be kept. */
  function kept(draws: number, refused: number) {
    let asked = 0;
    const places: number[] = [];
    const redrawn = take(
      () => {},
      new Float64Array(1),
      draws,
      (place) => {
        places.push(place);
        return ++asked > refused;
      },
    );
    return { redrawn, places };
  }

  test('are made again and counted, until so many have been kept as were asked for', () => {
    expect(kept(3, 2)).toEqual({ redrawn: 2, places: [0, 0, 0, 1, 2] });
    expect(kept(4, 0)).toEqual({ redrawn: 0, places: [0, 1, 2, 3] });
  });

  test('may be twenty for each that is kept, and no more', () => {
    expect(kept(10, 200).redrawn).toBe(200);
    expect(() => kept(10, 201)).toThrow(new CalcError('hardlyPossible', 'draws', 201, 0, 10));
  });
});
