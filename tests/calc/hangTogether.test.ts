/** The six figures that should agree: what is usual of each, and what is shown where something is not known. */
import { describe, expect, test } from 'vitest';
import {
  assess,
  cubicFootPerMinute,
  fahrenheitDegree,
  fromFahrenheit,
  poundPerHour,
  type Test,
} from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';

const checkOf = (code: string, change: Partial<Test> = {}) =>
  assess({ ...wholeTest, ...change }).checks.find((check) => check.code === code)!;

describe('what is usual, by common practice', () => {
  test.each([
    ['airflowPerCapacity', 350 * cubicFootPerMinute, 450 * cubicFootPerMinute],
    ['temperatureDrop', 16 * fahrenheitDegree, 22 * fahrenheitDegree],
    ['supplyHumidity', 0.85, 0.98],
    ['condensate', 2 * poundPerHour, 9 * poundPerHour],
    ['apparatusDewPoint', fromFahrenheit(45), fromFahrenheit(54)],
    ['bypassFactor', 0.05, 0.2],
  ])('of %s is from %s to %s, for 3 tons', (code, low, high) => {
    const { usual, source, value } = checkOf(code);
    expect(usual[0]).toBeCloseTo(low, 12);
    expect(usual[1]).toBeCloseTo(high, 12);
    expect(source).toBe('commonPractice');
    expect(Number.isFinite(value)).toBe(true);
  });

  test('of the water goes with the size', () => {
    const five = checkOf('condensate', { nominalCapacity: (5 / 3) * (wholeTest.nominalCapacity as number) });
    expect(five.usual[0]).toBeCloseTo((10 / 3) * poundPerHour, 12);
    expect(five.usual[1]).toBeCloseTo(15 * poundPerHour, 12);
  });
});

describe('without a size, or with one that is none', () => {
  test.each([null, 0, -10e3, Number.NaN, Number.POSITIVE_INFINITY])(
    '%s: no airflow for a ton, and water as of 3',
    (nominalCapacity) => {
      expect(checkOf('airflowPerCapacity', { nominalCapacity }).value).toBeNull();
      const { usual } = checkOf('condensate', { nominalCapacity });
      expect(usual[0]).toBeCloseTo(2 * poundPerHour, 12);
      expect(usual[1]).toBeCloseTo(9 * poundPerHour, 12);
    },
  );
});

test('without an airflow or a probe nothing is said of what follows from it', () => {
  expect(checkOf('airflowPerCapacity', { airflow: { ...wholeTest.airflow, volumeFlow: null } }).value).toBeNull();
  const leaving = { dryBulb: null, relativeHumidity: null, wetBulb: null };
  for (const code of ['temperatureDrop', 'supplyHumidity', 'condensate', 'apparatusDewPoint', 'bypassFactor'])
    expect(checkOf(code, { leaving }).value).toBeNull();
});
