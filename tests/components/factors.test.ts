import { expect, test } from 'vitest';
import { compareAt, parts } from '../../src/islands/factors/compare.ts';

const off = (altitude: number, part: (typeof parts)[number]) => {
  const { rule, exact } = compareAt(altitude)[part];
  return rule / exact - 1;
};

test('the factors know nothing of the height', () => {
  for (const part of parts) expect(compareAt(2000)[part].rule).toBe(compareAt(0)[part].rule);
});

test('at sea level they are within a few per cent, and the exact parts add up', () => {
  for (const part of parts) expect(Math.abs(off(0, part))).toBeLessThan(0.04);
  const { total, sensible, latent } = compareAt(1500);
  expect(sensible.exact + latent.exact).toBeCloseTo(total.exact, 6);
});

/** Dry air of the same volume, by the air's volume in the handbook's table 2 at 5,000 ft and the pressure in its table 1: 12.23 of 14.696 psia. */
test('at 5,000 ft the sensible part is as much less as the air is thinner', () => {
  const thinner = 12.23 / 14.696;
  expect(compareAt(1524).sensible.exact / compareAt(0).sensible.exact).toBeCloseTo(thinner, 2);
});

test('the higher, the further the total is off', () => {
  const heights = [0, 500, 1000, 2000, 3000];
  const distances = heights.map((height) => off(height, 'total'));
  expect(distances).toEqual([...distances].sort((a, b) => a - b));
});
