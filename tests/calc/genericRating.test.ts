import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  assess,
  btuPerHour,
  coolingCurves,
  expectedCapacity,
  flowFactorOf,
  fromFahrenheit,
  type GenericRating,
  type GenericStage,
  type GenericUnit,
  genericRating,
  rated,
  type Test,
  temperatureFactor,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';
import { wholeTest } from './testCase.ts';

const three: GenericRating = {
  total: 35000 * btuPerHour,
  basis: 'net',
  blowerPower: 400,
  unit: 'airConditioner',
  stage: 'one',
  dryAirFlow: 0.68,
};
const point = {
  outdoorDryBulb: fromFahrenheit(95),
  enteringWetBulb: fromFahrenheit(67),
  enteringDryBulb: fromFahrenheit(80),
  dryAirFlow: 0.68,
};
const sets = (['airConditioner', 'heatPump'] as const).flatMap((unit: GenericUnit) =>
  (['one', 'low', 'high'] as const).map((stage: GenericStage) => [unit, stage] as const),
);

describe('a rating from published curves', () => {
  test.each(sets)('%s, %s: gives the certified capacity back at the rating point', (unit, stage) => {
    const table = genericRating({ ...three, unit, stage });
    expect(table).toMatchObject({ from: 'generic', basis: 'net', blowerPower: 400 });
    expect(rated(table, point, { beyond: 'refuse' }).total).toBeCloseTo(three.total, 6);
  });

  test.each(sets)(
    '%s, %s: between its points it is the curve within one in a thousand where the coil is wet',
    (unit, stage) => {
      const table = genericRating({ ...three, unit, stage });
      const { capacity, flow } = coolingCurves[`${unit} ${stage as 'one' | 'low' | 'high'}`];
      const certified = temperatureFactor(capacity, point.enteringWetBulb, point.outdoorDryBulb);
      const anywhere = fc.record({
        outdoorDryBulb: fc.double({ min: fromFahrenheit(75), max: fromFahrenheit(115), noNaN: true }),
        enteringWetBulb: fc.double({ min: fromFahrenheit(64), max: fromFahrenheit(72), noNaN: true }),
        dryAirFlow: fc.double({ min: 0.7 * 0.68, max: 1.3 * 0.68, noNaN: true }),
      });
      fc.assert(
        fc.property(anywhere, (at) => {
          const { total } = expectedCapacity(table, { ...point, ...at }, { blowerPower: 0 });
          const curve =
            (temperatureFactor(capacity, at.enteringWetBulb, at.outdoorDryBulb) / certified) *
            (flowFactorOf(flow, at.dryAirFlow / 0.68) / flowFactorOf(flow, 1));
          expect(Math.abs(total / ((three.total + 400) * curve) - 1)).toBeLessThan(1e-3);
        }),
      );
    },
  );

  test('says how far the sources are apart, more in the corners than at the rating point', () => {
    const table = genericRating(three);
    const band = (outdoor: number, wetBulb: number) =>
      expectedCapacity(
        table,
        { ...point, outdoorDryBulb: fromFahrenheit(outdoor), enteringWetBulb: fromFahrenheit(wetBulb) },
        { blowerPower: 400 },
      ).derates.find(({ cause }) => cause === 'temperatures')?.band ?? Number.NaN;
    expect(band(95, 67)).toBe(0.02);
    expect(band(105, 67)).toBeLessThan(0.021);
    expect(band(95, 63)).toBeLessThan(0.03);
    expect(band(115, 63)).toBeGreaterThan(0.04);
    expect(band(75, 67)).toBeGreaterThan(0.04);
  });

  test('shows power and efficiency where they are known at the rating point', () => {
    const table = genericRating({ ...three, power: 3000 });
    const at = (outdoor: number) =>
      rated(table, { ...point, outdoorDryBulb: fromFahrenheit(outdoor) }, { beyond: 'refuse' }).power ?? Number.NaN;
    expect(at(95)).toBeCloseTo(3000, 6);
    expect(at(115)).toBeGreaterThan(at(105));
    expect(genericRating(three).power).toBeNull();
  });

  test('takes the airflow of the published machines where none is given', () => {
    const { axes } = genericRating({ ...three, basis: 'gross', dryAirFlow: 0.68 });
    expect(axes.dryAirFlow).toEqual([0.68]);
    const { dryAirFlow: _, ...bare } = three;
    const [usual] = genericRating({ ...bare, total: 36000 * btuPerHour, basis: 'gross' }).axes.dryAirFlow;
    // 394.2 cfm of standard air a ton.
    expect(usual).toBeCloseTo(3 * 394.2 * (0.3048 ** 3 / 60) * 1.2014, 9);
  });

  test.each<[Partial<GenericRating>, string]>([
    [{ stage: 'variable' }, 'variableSpeed'],
    [{ unit: 'fridge' as GenericUnit }, 'missing'],
    [{ total: 0 }, 'notPositive'],
    [{ total: Number.NaN }, 'notFinite'],
    [{ dryAirFlow: -1 }, 'outOfRange'],
    [{ blowerPower: -1 }, 'outOfRange'],
    [{ sensibleHeatRatio: 1.1 }, 'outOfRange'],
    [{ sensibleHeatRatio: 0.78, dryAirFlow: (0.68 * 350) / 400 }, 'noSurface'],
  ])('refuses %o', (change, code) => {
    expect(codeOf(() => genericRating({ ...three, ...change }))).toBe(code);
  });
});

describe('a test without a table', () => {
  const withGeneric = (change: Partial<NonNullable<Test['rating']>>): Test => ({
    ...wholeTest,
    rating: {
      ...(wholeTest.rating as NonNullable<Test['rating']>),
      rows: [],
      from: 'generic',
      certified: three.total,
      generic: { unit: 'airConditioner', stage: 'one', dryAirFlow: null },
      ...change,
    },
  });

  test('is judged by the curves, from the certified capacity on', () => {
    const { expected } = assess(withGeneric({}));
    if (!expected.ok) throw new Error(JSON.stringify(expected));
    expect(expected.value.derates[0]).toMatchObject({ cause: 'certified', after: three.total, applies: true });
    expect(expected.value.derates[1]?.source).toBe('genericCurves');
    expect(expected.value.sensible).toBeGreaterThan(0.6 * expected.value.total);
    expect(expected.value.sensibleBand).toBeGreaterThan(0.02);
  });

  test('waits for the certified capacity and the stages', () => {
    expect(assess(withGeneric({ certified: null, generic: null })).expected).toMatchObject({
      ok: false,
      waiting: ['rating.certified', 'rating.generic'],
    });
  });

  test('of a machine that chooses its own speed has no expectation', () => {
    const { expected } = assess(withGeneric({ generic: { unit: 'heatPump', stage: 'variable', dryAirFlow: null } }));
    expect(expected).toMatchObject({ ok: false, problem: { code: 'variableSpeed' } });
  });
});
