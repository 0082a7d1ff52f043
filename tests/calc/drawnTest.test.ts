/** A whole test by draws: every figure's range, what is waited for, which range decides, and chances that are counted. */
import { describe, expect, test } from 'vitest';
import {
  assess,
  type Budget,
  type Interval,
  type Outcome,
  type SimulatedAssessment,
  simulateAssessment,
  type Test,
} from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};
const made = (change: Partial<Test>): Test => ({ ...wholeTest, ...change });
const drawn = (change: Partial<Test> = {}, draws = 4000, seed = 1): SimulatedAssessment =>
  value(simulateAssessment(made(change), { draws, seed }));
/** Air that leaves so damp that half of the draws are no air: the draws decide. */
const wet: Partial<Test> = { leaving: { ...wholeTest.leaving, relativeHumidity: 0.985 } };

describe('the ranges of draws', () => {
  const { ranges } = drawn({}, 20_000);
  const first = assess(wholeTest).ranges as Readonly<Record<string, Budget>>;

  test.each(Object.keys(first))('of %s lie near those of first order', (name) => {
    const { interval } = first[name] as Budget;
    const range = ranges[name as keyof typeof ranges] as Interval;
    const width = interval.high - interval.low;
    // What one rectangle makes alone ends 8 % further out than a normal shape, and the coil's own figures bend: a tenth of the width.
    const straight = /^(total|temperatureDrop|sensible)$/.test(name) ? 50 : 10;
    expect(Math.abs(range.low - interval.low)).toBeLessThan(width / straight);
    expect(Math.abs(range.high - interval.high)).toBeLessThan(width / straight);
  });

  test('are of every figure but the ratio, which has its own', () => {
    expect(Object.keys(ranges).sort()).toEqual(Object.keys(first).sort());
    expect(ranges).not.toHaveProperty('ratio');
  });

  test('are the same for the first figures whether or not there are more draws than the lesser ones need', () => {
    const many = drawn({}, 20_001);
    // One draw more than the lesser figures take: their ranges stay those of 20 000.
    for (const name of [
      'dryAirFlow',
      'temperatureDrop',
      'supplyHumidity',
      'apparatusDewPoint',
      'bypassFactor',
    ] as const)
      expect(many.ranges[name]).toEqual(ranges[name]);
    expect(many.draws).toBe(20_001);
  });

  test('are none of a coil of which more than one draw in twenty has no temperature', () => {
    const dry = drawn({ leaving: { ...wholeTest.leaving, relativeHumidity: 0.2 } });
    expect([dry.ranges.apparatusDewPoint, dry.ranges.bypassFactor]).toEqual([null, null]);
    expect(dry.ranges.total?.low).toBeLessThan(dry.ranges.total?.high ?? 0);
  });
});

describe('a test by draws', () => {
  test('takes as many whole draws as were asked for', () => {
    expect(drawn({}, 500.9).draws).toBe(500);
  });

  test.each([
    [{ draws: 99, seed: 1 }, 'draws', 'outOfRange'],
    [{ draws: 1e8, seed: 1 }, 'draws', 'outOfRange'],
    [{ draws: 1000, seed: 2 ** 54 }, 'seed', 'outOfRange'],
    [{ draws: 1000, seed: Number.NaN }, 'seed', 'notFinite'],
  ])('has a problem with %j', (options, quantity, code) => {
    expect(simulateAssessment(wholeTest, options)).toMatchObject({ ok: false, problem: { code, quantity } });
  });

  test('waits for a load', () => {
    const open = made({ entering: { ...wholeTest.entering, dryBulb: null } });
    expect(simulateAssessment(open, { draws: 1000, seed: 1 })).toMatchObject({
      ok: false,
      waiting: ['entering.dryBulb'],
    });
  });

  test('reads what the side-by-side check put right, as the assessment does', () => {
    const found = { dryBulb: 0.6, humidity: 0.02, scatter: null };
    const sideBySide = { returnAir: found, supplyAir: null, reference: 'entering', drift: null, shared: null } as const;
    const { interval } = assess(made({ sideBySide })).ranges.temperatureDrop as Budget;
    const range = drawn({ sideBySide }).ranges.temperatureDrop as Interval;
    expect((range.low + range.high) / 2).toBeCloseTo((interval.low + interval.high) / 2, 1);
  });

  test('has no ratio without a rating, and waits for what the assessment waits for', () => {
    const bare = drawn({ rating: null });
    expect(bare.ratio).toEqual({ ok: false, waiting: ['rating'], problem: null });
    expect([bare.by, bare.verdict]).toEqual(['firstOrder', assess(made({ rating: null })).verdict]);
    expect(bare.ranges.total).not.toBeNull();
  });

  test('has a ratio of draws with their own mean, and leaves the verdict to first order where both agree', () => {
    const { ratio, by, verdict, redrawn } = drawn();
    const { value: figure, u } = value(assess(wholeTest).ratio);
    expect(Math.abs(value(ratio).value - figure)).toBeLessThan(0.3 * u);
    expect(Math.abs(value(ratio).u / u - 1)).toBeLessThan(0.05);
    expect([by, verdict, redrawn]).toEqual(['firstOrder', assess(wholeTest).verdict, 0]);
  });
});

describe('where the draws decide', () => {
  const found = drawn(wet);
  const { interval } = value(found.ratio);

  test('an end of the range differs from first order by more than half a point', () => {
    const plain = value(assess(made(wet)).ratio).interval;
    const apart = Math.max(Math.abs(plain.low - interval.low), Math.abs(plain.high - interval.high));
    expect([found.by, apart > 0.005]).toEqual(['monteCarlo', true]);
    expect(found.redrawn).toBeGreaterThan(100);
  });

  test('the verdict has their ends, rounded outward, around the figure that was read', () => {
    const verdict = value(found.verdict);
    expect([verdict.low, verdict.high]).toEqual([
      Math.floor(100 * interval.low) / 100,
      Math.ceil(100 * interval.high) / 100,
    ]);
    expect(verdict).toMatchObject({ by: 'monteCarlo', line: 0.9, confidence: 0.9, estimateOnly: false });
  });

  test('the chance of a true ratio on the line or above is counted: nine in ten at the low end, one in ten at the high one', () => {
    const chance = (line: number) => value(drawn({ ...wet, line }).verdict).probability;
    expect(chance(interval.low)).toBeCloseTo(0.9, 3);
    expect(chance(interval.high)).toBeCloseTo(0.1, 3);
    expect([chance(0.3), chance(2)]).toEqual([1, 0]);
  });

  test('there is no verdict all the same while one is waited for', () => {
    const waiting = drawn({ ...wet, fullSpeed: null });
    expect(waiting.by).toBe('monteCarlo');
    expect(waiting.verdict).toEqual({ ok: false, waiting: ['fullSpeed'], problem: null });
  });
});
