/** Two probes in one air: what they differ by, what is common, how far it moved, and what is no reading. */
import { describe, expect, test } from 'vitest';
import { compareProbes, type ProbePair } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const degree = 5 / 9;
const pair = (time: number, dryBulb: number, humidity: number | null = null): ProbePair => ({
  time,
  entering: { dryBulb: 24 + dryBulb, humidity: humidity === null ? null : 0.5 + humidity },
  leaving: { dryBulb: 24, humidity: humidity === null ? null : 0.5 },
});
const compare = (pairs: readonly ProbePair[]) => compareProbes(pairs, { measure: 'relativeHumidity' });

describe('the difference of two probes', () => {
  test('is the return probe less the supply probe, of one reading as of several', () => {
    expect(compare([pair(0, 0.3, 0.02)])).toMatchObject({
      difference: { dryBulb: expect.closeTo(0.3, 12), humidity: expect.closeTo(0.02, 12), scatter: null },
      pairs: 1,
    });
    expect(compare([pair(0, -0.3)]).difference).toMatchObject({ dryBulb: expect.closeTo(-0.3, 12), humidity: null });
  });

  test('has the scatter of each measure, worked by hand, and none of a humidity that was not compared', () => {
    // 0.1, 0.2, 0.6: mean 0.3, squares 0.04 + 0.01 + 0.09 = 0.14, u = √(0.14/2/3); humidities a tenth of it.
    const apart = [0.1, 0.2, 0.6];
    expect(compare(apart.map((one, i) => pair(i, one, one / 10)))).toMatchObject({
      difference: {
        dryBulb: expect.closeTo(0.3, 12),
        humidity: expect.closeTo(0.03, 12),
        scatter: {
          dryBulb: expect.closeTo(Math.sqrt(0.14 / 6), 12),
          humidity: expect.closeTo(Math.sqrt(0.14 / 6) / 10, 12),
          degreesOfFreedom: 2,
        },
      },
      pairs: 3,
    });
    expect(compare(apart.map((one, i) => pair(i, one))).difference.scatter).toMatchObject({
      humidity: 0,
      degreesOfFreedom: 2,
    });
  });

  test('has no humidity where one of the two probes lacks it once', () => {
    const lacks = (side: 'entering' | 'leaving') => {
      const one = pair(1, 0.1, 0.01);
      return compare([pair(0, 0.1, 0.01), { ...one, [side]: { ...one[side], humidity: null } }]).difference.humidity;
    };
    expect([lacks('entering'), lacks('leaving')]).toEqual([null, null]);
  });

  test('moved by what lies between the first part and the last in the order of time, without sign', () => {
    const falling = [0.5, 0.4, 0.35, 0.3, 0.2].map((one, i) => pair(10 * i, one, one / 10));
    const shuffled = [3, 0, 4, 1, 2].map((i) => falling[i] as ProbePair);
    const before = [...shuffled];
    expect(compare(shuffled).drift).toEqual({ dryBulb: expect.closeTo(0.3, 12), humidity: expect.closeTo(0.03, 12) });
    expect(shuffled).toEqual(before);
    expect(compare(falling.slice(1)).drift).toBeNull();
    expect(compare(falling.map(({ time }, i) => pair(time, i / 10))).drift).toEqual({
      dryBulb: expect.closeTo(0.4, 12),
      humidity: 0,
    });
  });
});

describe('a difference that is nothing out of the way', () => {
  test.each([
    [0.5 * degree, 0.01, true],
    [-0.5 * degree, -0.01, true],
    [0.51 * degree, 0, false],
    [-0.51 * degree, 0, false],
    [0, 0.0101, false],
    [0, -0.0101, false],
    [0, null, true],
  ])('is %d K and %d: %s', (dryBulb, humidity, isCommon) => {
    expect(compare([pair(0, dryBulb, humidity)]).isCommon).toBe(isCommon);
  });

  test('is 0.3 °F of a wet bulb', () => {
    const bulbs = (apart: number): ProbePair => ({
      time: 0,
      entering: { dryBulb: 24, humidity: 17 + apart },
      leaving: { dryBulb: 24, humidity: 17 },
    });
    const isCommon = (apart: number) => compareProbes([bulbs(apart)], { measure: 'wetBulb' }).isCommon;
    expect([isCommon(0.3 * degree), isCommon(0.31 * degree)]).toEqual([true, false]);
  });
});

describe('a pair', () => {
  const with_ = (change: Partial<ProbePair>) => codeOf(() => compare([{ ...pair(0, 0, 0), ...change }]));
  test('has readings within what air can have, at their edges too', () => {
    for (const side of ['entering', 'leaving'] as const) {
      for (const dryBulb of [-60, 90]) expect(with_({ [side]: { dryBulb, humidity: null } })).toBeNull();
      for (const humidity of [0, 1]) expect(with_({ [side]: { dryBulb: 24, humidity } })).toBeNull();
      for (const dryBulb of [-60.1, 90.1]) expect(with_({ [side]: { dryBulb, humidity: null } })).toBe('outOfRange');
      for (const humidity of [-0.01, 1.01]) expect(with_({ [side]: { dryBulb: 24, humidity } })).toBe('outOfRange');
    }
    expect([with_({ time: Number.NaN }), with_({ time: -Number.MAX_VALUE })]).toEqual(['notFinite', null]);
    expect(() => compare([])).toThrow(/^pairs: no rows/);
  });
});
