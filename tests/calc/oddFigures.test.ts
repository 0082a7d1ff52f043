import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromFahrenheit, type RatingRow, ratingTable, tableRemarks } from '../../src/calc/index.ts';
import { demoTable } from '../../src/job/demoTable.ts';
import { toSi } from '../../src/job/units.ts';

const options = { basis: 'net', blowerPower: 400 } as const;
const odd = (rows: readonly RatingRow[]) =>
  tableRemarks(ratingTable(rows, options)).filter(({ code }) => code.startsWith('odd'));

/** The invented table of the demo: two airflow blocks, a knee where the coil goes dry. */
const demo: readonly RatingRow[] = demoTable.rows.map(([outdoor, wetBulb, block, total, sensible]) => ({
  outdoorDryBulb: Number(outdoor),
  enteringWetBulb: Number(wetBulb),
  dryAirFlow: block === '1' ? 0.68 : 0.567,
  total: toSi(Number(total), 'mbh'),
  sensible: toSi(Number(sensible), 'mbh'),
}));

/**
 * Published cooling capacity of one-speed, low-stage and high-stage equipment over entering wet bulb and outdoor temperature, °F:
 * NREL/TP-5500-56354, tables 9, 10 and 14 to 19, second-hand by way of models that carry them. Not normalised: only the shape counts.
 */
const publishedCurves: readonly (readonly [string, readonly number[]])[] = [
  ['one speed', [3.670270705, -0.098652414, 0.000955906, 0.006552414, -1.56e-5, -0.000131877]],
  ['two stages, low', [3.940185508, -0.104723455, 0.001019298, 0.006471171, -9.53e-6, -0.000161658]],
  ['two stages, high', [3.109456535, -0.085520461, 0.000863238, 0.00863049, -2.1e-5, -0.000140186]],
];

function sampled([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: readonly number[]): RatingRow[] {
  return [75, 85, 95, 105, 115].flatMap((outdoor) =>
    [62, 67, 72, 77].map((wetBulb) => {
      const share = a + b * wetBulb + c * wetBulb ** 2 + d * outdoor + e * outdoor ** 2 + f * wetBulb * outdoor;
      return {
        outdoorDryBulb: fromFahrenheit(outdoor),
        enteringWetBulb: fromFahrenheit(wetBulb),
        total: toSi(Math.round(share * 360) / 10, 'mbh'),
      };
    }),
  );
}

test.each(publishedCurves)('no figure of the published curve is odd, printed to a hundred Btu/h: %s', (_, curve) => {
  expect(odd(sampled(curve))).toEqual([]);
});

test('no figure of a table with a knee is odd', () => {
  expect(odd(demo)).toEqual([]);
});

const wrong = fc.oneof(fc.double({ min: 0.1, max: 0.9, noNaN: true }), fc.double({ min: 1.1, max: 10, noNaN: true }));

test('one mistyped figure is found, and no other', () => {
  const rows = sampled(publishedCurves[0]?.[1] ?? []);
  fc.assert(
    fc.property(fc.nat(rows.length - 1), wrong, (at, times) => {
      const typed = rows.map((row, i) => (i === at ? { ...row, total: (row.total ?? 0) * times } : row));
      const found = odd(typed);
      expect(found).toHaveLength(1);
      const [remark] = found;
      expect(remark?.code).toBe('oddTotal');
      const [outdoor, wetBulb, figure, expected] = remark?.amounts.map(({ value }) => value) ?? [];
      expect([outdoor, wetBulb]).toEqual([rows[at]?.outdoorDryBulb, rows[at]?.enteringWetBulb]);
      expect(figure).toBe(typed[at]?.total);
      expect(Math.abs((expected ?? 0) / (rows[at]?.total ?? 1) - 1)).toBeLessThan(0.06);
    }),
  );
});

describe('a mistyped figure', () => {
  test('is found in the sensible and in the power too', () => {
    const at = demo.findIndex(({ sensible }) => sensible === toSi(24.7, 'mbh'));
    const change = (one: RatingRow, i: number) => (i === at ? { ...one, sensible: toSi(42.7, 'mbh') } : one);
    expect(odd(demo.map(change)).map(({ code }) => code)).toEqual(['oddSensible']);
    const powered = demo.map((one, i) => ({ ...one, power: i === at ? 8200 : 2000 + 40 * one.outdoorDryBulb }));
    expect(odd(powered).map(({ code }) => code)).toEqual(['oddPower']);
  });

  test('is not looked for where the rows cannot tell which of them it is', () => {
    const line = [30, 35, 40].map((outdoorDryBulb, i) => ({
      outdoorDryBulb,
      enteringWetBulb: 19,
      total: [9600, 19100, 8600][i] ?? null,
    }));
    expect(odd(line)).toEqual([]);
    expect(odd([...line, { outdoorDryBulb: 45, enteringWetBulb: 19, total: 8100 }])).toHaveLength(1);
  });

  /** Straight tables of outdoor temperatures and wet bulbs, with some figures put in by a finger. */
  const straight = (outdoors: number, wetBulbs: number, typed: Readonly<Record<number, number>>, fall = 60) =>
    Array.from({ length: outdoors * wetBulbs }, (_, at): RatingRow => {
      const [row, column] = [Math.floor(at / wetBulbs), at % wetBulbs];
      const total = (10_000 - 5 * fall * row + 400 * column) * (typed[at] ?? 1);
      return { outdoorDryBulb: 20 + 5 * row, enteringWetBulb: 15 + 2 * column, total };
    });
  const named = (rows: readonly RatingRow[]) =>
    odd(rows).map(({ amounts }) => amounts.slice(0, 2).map(({ value }) => value));

  test('is named alone where it bends the line of another, and beside another where it does not', () => {
    expect(named(straight(5, 5, { 0: 1.3, 1: 0.9 }))).toEqual([[20, 15]]);
    expect(named(straight(5, 5, { 0: 1.1, 3: 1.05 }))).toEqual([[20, 15]]);
    expect(named(straight(5, 1, { 0: 1.05, 4: 1.1 }))).toEqual([[40, 15]]);
    expect(named(straight(5, 5, { 0: 1.3, 18: 0.8 }))).toEqual([
      [20, 15],
      [35, 21],
    ]);
  });

  test('is odd from 3 % on along the outdoor temperature and the airflow, and from 8 % along the wet bulb alone', () => {
    expect(named(straight(5, 1, { 2: 1.02 }))).toEqual([]);
    expect(named(straight(5, 1, { 2: 1.04 }))).toEqual([[30, 15]]);
    expect(named(straight(5, 1, { 2: 0.96 }))).toEqual([[30, 15]]);
    expect(named(straight(1, 5, { 2: 1.05 }))).toEqual([]);
    expect(named(straight(1, 5, { 2: 1.09 }))).toEqual([[20, 19]]);
    // Where two lines tell, 3 % along both.
    expect(named(straight(5, 5, { 12: 1.04 }))).toEqual([[30, 19]]);
    expect(named(straight(3, 3, { 4: 1.04 }))).toEqual([[25, 17]]);
    expect(named(straight(3, 3, { 4: 1.02 }))).toEqual([]);
  });

  test('is not looked for where its neighbours leave nothing for it', () => {
    expect(named(straight(4, 1, { 3: 3 }, 600))).toEqual([[35, 15]]);
    expect(named(straight(4, 1, { 3: -0.1 }, 900))).toEqual([]);
  });

  test('is found beside a hole', () => {
    const holed = demo.map((one, i) => ({ ...one, total: i === 6 ? null : i === 12 ? toSi(32.3, 'mbh') : one.total }));
    expect(odd(holed)).toEqual([]);
    const typed = holed.map((one, i) => (i === 12 ? { ...one, total: toSi(52.3, 'mbh') } : one));
    expect(odd(typed)).toHaveLength(1);
  });
});
