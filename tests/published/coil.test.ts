import { expect, test } from 'vitest';
import { checks, notOurs } from './coil.ts';
import { coilRows } from './data/coilRows.ts';
import * as goldenJobs from './goldenJobs.ts';

test('every coil figure is either checked or left out with a reason', () => {
  expect(coilRows.length).toBe(68);
  expect(checks.length).toBe(63);
  expect(checks.length + notOurs.length).toBe(coilRows.length);
  for (const { what, why } of notOurs) expect(why, what).not.toBe('');
});

/** Rows that are a rate of heat or of water: there ideal-gas equations are low by 0.2 to 0.6 %. */
const capacities = coilRows.filter(
  ({ ideal, unit, quantity }) => ideal !== undefined && (unit === 'Btu/h' || quantity.startsWith('condensate')),
);

test('there are capacity rows with an ideal-gas figure beside', () => {
  expect(capacities.length).toBe(8);
});

test.each(capacities)('$quantity is 0 to 0.7 % above the ideal-gas figure of $ideal', (row) => {
  const check = checks.find(
    ({ title, expected }) => title.startsWith(`Coil: ${row.quantity} (`) && expected === row.expected,
  );
  const above = (check?.ours() ?? Number.NaN) / (row.ideal ?? Number.NaN) - 1;
  expect(above).toBeGreaterThanOrEqual(0);
  expect(above).toBeLessThanOrEqual(0.007);
});

test('every figure of the three whole jobs is compared, their uncertainty and each part of it too', () => {
  expect(goldenJobs.checks.length).toBe(3 * (8 + 7));
});
