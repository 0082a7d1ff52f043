import { expect, test } from 'vitest';
import { format, formatCapacity, formatNumber, unitLabel, withUnit } from '../../src/job/format.ts';

test.each([
  [0, 0, '0'],
  [-0.04, 1, '0.0'],
  [-0.05, 1, '−0.1'],
  [999, 0, '999'],
  [1000, 0, '1,000'],
  [34600, 0, '34,600'],
  [1234567.891, 2, '1,234,567.89'],
  [-1234.5, 1, '−1,234.5'],
  [0.9285, 2, '0.93'],
] as const)('%d with %d decimals is written %s', (number, decimals, expected) => {
  expect(formatNumber(number, decimals)).toBe(expected);
});

test('an SI value is written in its unit, with a no-break space before the label', () => {
  expect(format(35, 'degF', 1)).toBe('95.0');
  expect(withUnit(format(24, 'degF', 1), 'degF')).toBe('75.2\u00a0°F');
  expect(withUnit('88', 'percent')).toBe('88\u00a0%');
  expect(withUnit('1.2', 'one')).toBe('1.2');
  expect(unitLabel('btuh')).toBe('Btu/h');
});

test.each([
  [8593.7, 'btuh', '29,300'],
  [8593.7, 'kw', '8.59'],
  [1436, 'btuh', '4,900'],
  [12.3e3, 'kw', '12.3'],
  [123.4e3, 'kw', '123'],
  [-1436, 'kw', '−1.44'],
  [0, 'btuh', '0'],
] as const)('a capacity of %d W in %s is written with three figures, %s', (watts, unit, text) => {
  expect(formatCapacity(watts, unit)).toBe(text);
});
