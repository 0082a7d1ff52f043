/** Readings moved by what a side-by-side check found. */
import { describe, expect, test } from 'vitest';
import type { SideBySide, Test } from '../../src/calc/index.ts';
import { corrected } from '../../src/calc/sideBySide.ts';
import { wholeTest } from './testCase.ts';

const difference = (dryBulb: number, humidity: number | null) => ({ dryBulb, humidity, scatter: null });
const check: SideBySide = {
  returnAir: difference(0.5, 0.04),
  supplyAir: null,
  reference: 'neither',
  drift: null,
  shared: null,
};
const read = (change: Partial<SideBySide>, test: Partial<Test> = {}) => {
  const { entering, leaving } = corrected({
    ...wholeTest,
    entering: { dryBulb: 24, relativeHumidity: 0.5, wetBulb: null },
    leaving: { dryBulb: 13, relativeHumidity: 0.9, wetBulb: null },
    ...test,
    sideBySide: { ...check, ...change },
  });
  return [entering.dryBulb, entering.relativeHumidity, leaving.dryBulb, leaving.relativeHumidity].map(
    (value) => value && Math.round(value * 1e9) / 1e9,
  );
};

describe('what the supply probe showed less than the return probe', () => {
  test('is shared out between the two, or put right on the one that is not the reference', () => {
    expect(read({})).toEqual([23.75, 0.48, 13.25, 0.92]);
    expect(read({ reference: 'entering' })).toEqual([24, 0.5, 13.5, 0.94]);
    expect(read({ reference: 'leaving' })).toEqual([23.5, 0.46, 13, 0.9]);
  });

  test('in the supply air counts there, in the return air where only that was looked at', () => {
    expect(read({ supplyAir: difference(-0.2, 0.02) })).toEqual([23.75, 0.48, 12.9, 0.91]);
    expect(read({ supplyAir: difference(-0.2, null) })).toEqual([23.75, 0.48, 12.9, 0.92]);
  });

  test('moves no humidity that was not compared, or that the two read in different measures', () => {
    expect(read({ returnAir: difference(0.5, null) })).toEqual([23.75, 0.5, 13.25, 0.9]);
    const leaving = { dryBulb: 13, relativeHumidity: null, wetBulb: 12 };
    expect(read({}, { leaving })).toEqual([23.75, 0.5, 13.25, null]);
    expect(corrected({ ...wholeTest, leaving, sideBySide: check }).leaving.wetBulb).toBe(12);
  });
});

test('an error that a standard showed both to share is taken off both', () => {
  const shared = { dryBulb: null, humidity: null, error: { dryBulb: 0.3, humidity: 0.01 } };
  expect(read({ shared })).toEqual([23.45, 0.47, 12.95, 0.91]);
  const heatAlone = { ...shared, error: { dryBulb: 0.3, humidity: 0 } };
  expect(read({ shared: heatAlone, returnAir: difference(0, null) })).toEqual([23.7, 0.5, 12.7, 0.9]);
});

test('no humidity is moved beyond saturation, and one that was beyond it before is left as it stands', () => {
  const wet = (relativeHumidity: number) =>
    read({ reference: 'entering' }, { leaving: { dryBulb: 13, relativeHumidity, wetBulb: null } })[3];
  expect(wet(0.95)).toBe(0.99);
  expect(wet(0.97)).toBe(1);
  expect(wet(1)).toBe(1);
  expect(wet(1.1)).toBe(1.1);
  const bulbs = (wetBulb: number, dryBulb = 13) =>
    corrected({
      ...wholeTest,
      entering: { dryBulb: 24, relativeHumidity: null, wetBulb: 17 },
      leaving: { dryBulb, relativeHumidity: null, wetBulb },
      sideBySide: { ...check, returnAir: difference(0.5, 0.8), reference: 'entering' },
    }).leaving.wetBulb;
  expect(bulbs(12)).toBeCloseTo(12.8, 12);
  expect(bulbs(12.9)).toBeCloseTo(13.5, 12);
  expect(bulbs(14)).toBe(14);
});

test('a reading that is not there stays away', () => {
  const nothing = { dryBulb: null, relativeHumidity: null, wetBulb: null };
  expect(corrected({ ...wholeTest, leaving: nothing, sideBySide: check }).leaving).toEqual(nothing);
  expect(corrected({ ...wholeTest, sideBySide: null })).toEqual({ ...wholeTest, sideBySide: null });
});
