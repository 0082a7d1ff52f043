/** What a rating from published curves says of its coil, its power and its band. */
import { describe, expect, test } from 'vitest';
import { genericBand } from '../../src/calc/genericBand.ts';
import {
  btuPerHour,
  coolingCurves,
  cubicFootPerMinute,
  fromFahrenheit,
  type GenericRating,
  genericRating,
  type RatingConditions,
  rated,
  standardAirDensity,
  temperatureFactor,
} from '../../src/calc/index.ts';

const three: GenericRating = {
  total: 36_000 * btuPerHour,
  basis: 'gross',
  blowerPower: 400,
  unit: 'airConditioner',
  stage: 'one',
};
const flowPerTon = (cubicFeet: number) => 3 * cubicFeet * cubicFootPerMinute * standardAirDensity;
const at = (outdoor: number, wetBulb: number): RatingConditions => ({
  outdoorDryBulb: fromFahrenheit(outdoor),
  enteringWetBulb: fromFahrenheit(wetBulb),
});
const read = (table: ReturnType<typeof genericRating>, where: RatingConditions) =>
  rated(table, where, { beyond: 'refuse' });

// The coil model works with the straight line on the chart, which is out by some parts in ten thousand.
describe('the sensible share at the rating point', () => {
  // The middle of two published defaults at 394.2 cfm a ton, 0.7374 and 0.7144, and 0.000532 more for each cfm.
  test.each([
    [394.2, (0.7374 + 0.7144) / 2],
    [360, (0.7374 + 0.7144) / 2 - 34.2 * 0.000532],
    [440, (0.7374 + 0.7144) / 2 + 45.8 * 0.000532],
  ])('is by default that of %s cfm a ton: %s', (cubicFeet, share) => {
    const table = genericRating({ ...three, dryAirFlow: flowPerTon(cubicFeet) });
    const { total, sensible } = read(table, at(95, 67));
    expect(sensible! / total!).toBeCloseTo(share, 3);
    expect(table.sensibleBand).toBeCloseTo(0.016 / 0.7259, 9);
  });

  test('is the one that is given, and then has no band', () => {
    const table = genericRating({ ...three, dryAirFlow: flowPerTon(400), sensibleHeatRatio: 0.7 });
    const { total, sensible } = read(table, at(95, 67));
    expect(sensible! / total!).toBeCloseTo(0.7, 3);
    expect(table.sensibleBand).toBe(0);
  });
});

test('below the wet bulb at which the coil turns dry total and sensible are one, and level', () => {
  const table = genericRating(three);
  const lowest = read(table, at(95, 50));
  expect(lowest.sensible).toBe(lowest.total);
  expect(read(table, at(95, 56))).toMatchObject({ total: lowest.total, sensible: lowest.total });
  expect(read(table, at(95, 67)).sensible).toBeLessThan(0.8 * read(table, at(95, 67)).total!);
});

test('a blower that is no number is refused under its own name, although everything else follows from it', () => {
  for (const [blowerPower, code] of [
    [Number.NaN, 'notFinite'],
    [-1e6, 'outOfRange'],
  ] as const)
    expect(() => genericRating({ ...three, basis: 'net', blowerPower })).toThrow(
      expect.objectContaining({ code, quantity: 'blowerPower' }),
    );
});

test('the power is that of the rating, times the published curves of capacity and of input for each watt made', () => {
  const table = genericRating({ ...three, power: 3000 });
  const { capacity, inputRatio } = coolingCurves['airConditioner one'];
  for (const [outdoor, wetBulb] of [
    [95, 67],
    [75, 67],
    [115, 70],
  ] as const) {
    const { outdoorDryBulb, enteringWetBulb } = at(outdoor, wetBulb);
    const of = (curve: typeof capacity) =>
      temperatureFactor(curve, enteringWetBulb, outdoorDryBulb) /
      temperatureFactor(curve, fromFahrenheit(67), fromFahrenheit(95));
    expect(read(table, at(outdoor, wetBulb)).power).toBeCloseTo(3000 * of(capacity) * of(inputRatio), 6);
  }
});

test('the factor of the rated airflow is 1, for every set of curves', () => {
  for (const unit of ['airConditioner', 'heatPump'] as const)
    for (const stage of ['one', 'low', 'high'] as const) {
      const lines = genericRating({ ...three, unit, stage }).multipliers.airflow;
      expect(lines).toHaveLength(13);
      expect(lines[6]!.total).toBeCloseTo(1, 12);
      expect(lines[0]!.total).toBeLessThan(1);
      expect(lines[12]!.total).toBeGreaterThan(1);
    }
});

describe('the band of a curve', () => {
  const band = genericBand(coolingCurves['airConditioner one'].capacity);
  const of = (wetBulb: number, outdoor: number) => band(fromFahrenheit(wetBulb), fromFahrenheit(outdoor));

  test('stays what it is at the last compared point beyond it', () => {
    expect(of(80, 95)).toBeCloseTo(of(72, 95), 12);
    expect(of(50, 95)).toBeCloseTo(of(57, 95), 12);
    expect(of(67, 130)).toBeCloseTo(of(67, 115), 12);
    expect(of(67, 60)).toBeCloseTo(of(67, 75), 12);
    expect(of(57, 95)).toBeCloseTo(0.11, 12);
  });

  test('goes straight from one compared point to the next', () => {
    expect(of(65, 90)).toBeCloseTo((of(63, 85) + of(67, 85) + of(63, 95) + of(67, 95)) / 4, 9);
    expect(of(65, 85)).toBeCloseTo((of(63, 85) + of(67, 85)) / 2, 9);
    expect(of(67, 110)).toBeCloseTo((of(67, 105) + of(67, 115)) / 2, 9);
  });
});
