import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  assess,
  budget,
  CalcError,
  conformance,
  type ErrorSource,
  type Outcome,
  type RatingRow,
  simulate,
  simulateAssessment,
  type Test,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';
import { rows, wholeTest } from './testCase.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};

const cause = (name: string, u: number, moves: ErrorSource<'x' | 'y'>['moves'], free: number | null = null) => {
  return { name, u, shape: 'normal', degreesOfFreedom: free, moves } as const;
};
const at = { x: 2, y: 3 };
const zero = { x: 0, y: 0 };

describe('budget', () => {
  test('adds variances of independent causes, and moves both inputs of a shared one at once', () => {
    const model = ({ x, y }: typeof at) => x - y;
    expect(budget(model, at, [cause('a', 3, { x: 1 }), cause('b', 4, { y: 1 })]).u).toBeCloseTo(5, 9);
    expect(budget(model, at, [cause('shared', 7, { x: 1, y: 1 })]).u).toBeCloseTo(0, 9);
    expect(budget(({ x, y }) => x * y, at, [cause('shared', 0.1, { x: 1, y: 1 })]).u).toBeCloseTo(0.5, 6);
  });

  test('shares are never negative, the largest first, and add up to 1', () => {
    const sources = fc.array(
      fc.record({
        name: fc.constantFrom('a', 'b', 'c', 'd'),
        u: fc.double({ min: 0.001, max: 10, noNaN: true }),
        shape: fc.constantFrom('normal' as const, 'rectangular' as const, 'triangular' as const),
        degreesOfFreedom: fc.constantFrom(null, 1, 4, 30),
        moves: fc.record({ x: fc.double({ min: -2, max: 2, noNaN: true }), y: fc.constant(1) }),
      }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(sources, (list) => {
        const { shares, u } = budget(({ x, y }) => 3 * x + Math.exp(y), at, list);
        expect(u).toBeGreaterThan(0);
        expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        shares.forEach(({ share }, i) => {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(shares[i - 1]?.share ?? 1);
        });
      }),
    );
  });

  test('the range is one-sided at both ends, wider with few degrees of freedom, and wider for disputes', () => {
    const wide = budget(({ x }) => x, at, [cause('a', 1, { x: 1 }, 4)]);
    expect(wide.interval.k).toBeCloseTo(1.533, 3);
    expect(wide.degreesOfFreedom).toBeCloseTo(4, 9);
    const plain = budget(({ x }) => x, at, [cause('a', 1, { x: 1 })]);
    expect(plain.interval.k).toBeCloseTo(1.2816, 4);
    expect(plain.degreesOfFreedom).toBeNull();
    const disputed = budget(({ x }) => x, at, [cause('a', 1, { x: 1 })], { confidence: 0.95 });
    expect(disputed.interval.low + disputed.interval.high).toBeCloseTo(4, 9);
    expect(disputed.interval.high).toBeCloseTo(2 + 1.6449, 4);
    expect(disputed.interval.k).toBeCloseTo(1.6449, 4);
  });

  test('goes to one side where the model has an end', () => {
    const upTo = ({ x }: typeof at) => {
      if (x > 2) throw new CalcError('outOfRange', 'x', x, 0, 2);
      return 5 * x;
    };
    expect(budget(upTo, at, [cause('a', 0.1, { x: 1 })]).u).toBeCloseTo(0.5, 9);
  });

  test.each([
    ['an input that is not there', cause('a', 1, { z: 1 } as never), 'missing'],
    ['an uncertainty below nothing', cause('a', -1, { x: 1 }), 'outOfRange'],
    ['no number', cause('a', Number.NaN, { x: 1 }), 'notFinite'],
    ['no degrees of freedom', cause('a', 1, { x: 1 }, 0), 'outOfRange'],
  ])('refuses %s', (_, source, code) => {
    expect(codeOf(() => budget(({ x }) => x, at, [source]))).toBe(code);
    expect(codeOf(() => simulate(({ x }) => x, at, [source], { draws: 1000, seed: 1 }))).toBe(code);
  });
});

describe('simulate', () => {
  const run = (seed: number) =>
    simulate(({ x, y }) => x * y, at, [cause('a', 0.3, { x: 1, y: -1 })], { draws: 5000, seed });

  test('gives the same for the same seed, and another for another', () => {
    expect(run(7)).toEqual(run(7));
    expect(run(7).u).not.toBe(run(8).u);
  });

  test('draws again what cannot be, and counts it', () => {
    const half = simulate(({ x }) => x, zero, [cause('a', 1, { x: 1 })], {
      draws: 20_000,
      seed: 1,
      within: ({ x }) => x <= 0,
    });
    expect(half.interval.high).toBeLessThanOrEqual(0);
    expect(half.redrawn / half.draws).toBeGreaterThan(0.95);
    expect(half.redrawn / half.draws).toBeLessThan(1.05);
    const refused = () =>
      simulate(({ x }) => x, zero, [cause('a', 1, { x: 1 })], { draws: 100, seed: 1, within: () => false });
    expect(codeOf(refused)).toBe('hardlyPossible');
  });

  test('causes of one name with few degrees of freedom have the tails of Student’s t', () => {
    const few = [cause('mean', 1, { x: 1 }, 4)];
    const drawn = simulate(({ x }) => x, zero, few, { draws: 200_000, seed: 3 });
    const { k } = budget(({ x }) => x, zero, few).interval;
    // Four standard errors of the 90 % point: √(0.1·0.9/n) over the density there, 0.13.
    expect(Math.abs(drawn.interval.high - (k as number))).toBeLessThan((4 * Math.sqrt(0.09 / 200_000)) / 0.13);
    expect(Math.abs(drawn.interval.low + (k as number))).toBeLessThan((4 * Math.sqrt(0.09 / 200_000)) / 0.13);
  });
});

describe('conformance', () => {
  test('between two limits is what is below one less what is below the other', () => {
    // JCGM 106, 7.4: 13.6 with 1.8 between 12.5 and 16.3 conforms with 0.66.
    expect(conformance({ value: 13.6, u: 1.8 }, { lower: 12.5, upper: 16.3 }).probability).toBeCloseTo(0.6626, 4);
  });

  test('refuses no limit, limits out of order, and no uncertainty', () => {
    expect(codeOf(() => conformance({ value: 1, u: 1 }, {}))).toBe('missing');
    expect(codeOf(() => conformance({ value: 1, u: 1 }, { lower: 2, upper: 1 }))).toBe('notAscending');
    expect(codeOf(() => conformance({ value: 1, u: 0 }, { lower: 2 }))).toBe('outOfRange');
    expect(codeOf(() => conformance({ value: 1, u: 1, degreesOfFreedom: -1e300 }, { lower: 2 }))).toBe('outOfRange');
  });
});

const rating = wholeTest.rating as NonNullable<Test['rating']>;
const withRows = (list: readonly RatingRow[], change: Partial<typeof rating> = {}): Test => ({
  ...wholeTest,
  rating: { ...rating, rows: list, ...change },
});
const ratioOf = (test: Test) => value(assess(test).ratio);

describe('the range of a ratio', () => {
  test('taking the two sides as independent gives another, wrong answer', () => {
    const whole = ratioOf(wholeTest);
    const { total } = assess(wholeTest).ranges;
    const names = ['entering.dryBulb', 'entering.humidity', 'leaving.dryBulb', 'leaving.humidity'];
    const of = (shares: typeof whole.shares) =>
      Math.hypot(...shares.filter(({ name }) => names.includes(name)).map(({ u }) => u));
    const measured = of(total?.shares ?? []) / (total?.value ?? 1);
    const together = of(whole.shares) / whole.value;
    // The entering wet bulb raises what is measured and what is expected: together they are surer than the measured side alone.
    expect(together).toBeLessThan(0.97 * measured);
  });

  test('does not hang on the order of the rows', () => {
    const shuffled = withRows([rows[2], rows[0], rows[3], rows[1]] as readonly RatingRow[]);
    expect(assess(shuffled)).toEqual(assess(wholeTest));
  });

  test('does not hang on rows that the reading does not touch', () => {
    const far = rows.map((row) => ({
      ...row,
      outdoorDryBulb: row.outdoorDryBulb + 20,
      total: (row.total as number) * 0.8,
    }));
    expect(ratioOf(withRows([...rows, ...far]))).toEqual(ratioOf(wholeTest));
    const seed = { draws: 2000, seed: 1 };
    expect(value(simulateAssessment(withRows([...rows, ...far]), seed))).toEqual(
      value(simulateAssessment(wholeTest, seed)),
    );
  });

  test('is the same for a net table and for the same table gross, but for how sure its blower is', () => {
    const gross = rows.map((row) => ({ ...row, total: (row.total as number) + 300 }));
    const [net, other] = [ratioOf(wholeTest), ratioOf(withRows(gross, { basis: 'gross', blowerPower: null }))];
    expect(other.value).toBeCloseTo(net.value, 12);
    expect(other.u).toBeCloseTo(net.u, 9);
  });

  test('narrows as it should: a side-by-side check makes two ordinary probes half as unsure', () => {
    const alike = { dryBulb: 0, humidity: 0, scatter: null };
    const sideBySide = { returnAir: alike, supplyAir: alike, reference: 'neither', drift: null, shared: null } as const;
    const [unchecked, checked] = [ratioOf(wholeTest), ratioOf({ ...wholeTest, sideBySide })];
    expect(checked.value).toBe(unchecked.value);
    expect(checked.u).toBeLessThan(0.7 * unchecked.u);
    const promised = assess(wholeTest).improvements.find(({ change }) => change === 'sideBySide');
    expect(promised?.u).toBeCloseTo(checked.u, 9);
  });

  test('a difference moves each reading by half of it, and a reference by nothing', () => {
    const found = { dryBulb: 0.4, humidity: 0.02, scatter: null };
    const both = { returnAir: found, supplyAir: null, reference: 'neither', drift: null, shared: null } as const;
    const air = (test: Test) => {
      const { entering, leaving } = assess(test);
      return [
        value(entering).dryBulb,
        value(entering).relativeHumidity,
        value(leaving).dryBulb,
        value(leaving).relativeHumidity,
      ];
    };
    const [t1, h1, t2, h2] = air(wholeTest) as [number, number, number, number];
    const close = (list: readonly number[]) => list.map((one) => expect.closeTo(one, 12));
    expect(air({ ...wholeTest, sideBySide: both })).toEqual(close([t1 - 0.2, h1 - 0.01, t2 + 0.2, h2 + 0.01]));
    expect(air({ ...wholeTest, sideBySide: { ...both, reference: 'entering' } })).toEqual(
      close([t1, h1, t2 + 0.4, h2 + 0.02]),
    );
    expect(air({ ...wholeTest, sideBySide: { ...both, reference: 'leaving' } })).toEqual(
      close([t1 - 0.4, h1 - 0.02, t2, h2]),
    );
    const supplyAir = { dryBulb: 0.2, humidity: -0.04, scatter: null };
    expect(air({ ...wholeTest, sideBySide: { ...both, supplyAir } })).toEqual(
      close([t1 - 0.2, h1 - 0.01, t2 + 0.1, h2 - 0.02]),
    );
  });
});

describe('simulateAssessment', () => {
  test('agrees with first order where the work is nearly straight', () => {
    const drawn = value(simulateAssessment(wholeTest, { draws: 100_000, seed: 1 }));
    const ratio = ratioOf(wholeTest);
    expect(drawn.by).toBe('firstOrder');
    expect(drawn.verdict).toEqual(assess(wholeTest).verdict);
    expect(Math.abs(value(drawn.ratio).u - ratio.u)).toBeLessThan(0.01 * ratio.u);
    expect(Math.abs(value(drawn.ratio).interval.low - ratio.interval.low)).toBeLessThan(0.005);
  });

  test('decides where humidity ends at saturation, and says how many draws it made again', () => {
    const wet: Test = { ...wholeTest, leaving: { ...wholeTest.leaving, relativeHumidity: 0.985 } };
    const drawn = value(simulateAssessment(wet, { draws: 20_000, seed: 1 }));
    expect(drawn.redrawn).toBeGreaterThan(1000);
    expect(drawn.by).toBe('monteCarlo');
    expect(value(drawn.verdict)).toMatchObject({ by: 'monteCarlo', line: 0.9 });
  });

  test('is the same for the same seed, is plain data, and has a problem with no draws', () => {
    const run = () => simulateAssessment(wholeTest, { draws: 1000, seed: 5 });
    expect(run()).toEqual(run());
    expect(JSON.parse(JSON.stringify(run()))).toEqual(run());
    const none = simulateAssessment(wholeTest, { draws: 0, seed: 5 });
    expect(none.ok ? null : none.problem).toMatchObject({ code: 'outOfRange', quantity: 'draws' });
  });

  test('ranges of what was measured come without a rating', () => {
    const measured = { ...wholeTest, rating: null };
    const drawn = value(simulateAssessment(measured, { draws: 20_000, seed: 1 }));
    const { total } = assess(measured).ranges;
    expect(drawn.ratio.ok).toBe(false);
    expect(Math.abs((drawn.ranges.total?.low ?? 0) / (total?.interval.low ?? 1) - 1)).toBeLessThan(0.02);
  });
});
