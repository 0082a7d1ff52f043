import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type RatingRow, type RatingTable, rated, ratingTable, tableRemarks } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const options = { basis: 'net', blowerPower: 300 } as const;

const row = (outdoorDryBulb: number, enteringWetBulb: number, total: number | null): RatingRow => ({
  outdoorDryBulb,
  enteringWetBulb,
  total,
});
const rows = [row(30, 17, 9600), row(30, 19, 10400), row(35, 17, 9100), row(35, 19, 9900)];

/** Rows of a whole grid on all four axes, each with its own total. */
const bigRows: readonly RatingRow[] = [30, 35, 40].flatMap((outdoorDryBulb, o) =>
  [15, 17, 19].flatMap((enteringWetBulb, w) =>
    [24, 27].flatMap((enteringDryBulb, d) =>
      [0.6, 0.7].map((dryAirFlow, f) => ({
        outdoorDryBulb,
        enteringWetBulb,
        enteringDryBulb,
        dryAirFlow,
        total: 9000 - 400 * o + 500 * w + 3 * d + 100 * f,
        sensible: 7000 + 200 * d - 300 * w + 50 * f,
        power: 2500 + 300 * o,
      })),
    ),
  ),
);

describe('ratingTable', () => {
  test('puts the figures in the order of the axes, the last fastest', () => {
    expect(ratingTable(rows, options)).toEqual({
      from: 'table',
      basis: 'net',
      blowerPower: 300,
      axes: { outdoorDryBulb: [30, 35], enteringWetBulb: [17, 19], enteringDryBulb: [], dryAirFlow: [] },
      total: [9600, 10400, 9100, 9900],
      sensible: null,
      power: null,
      band: null,
      sensibleBand: 0,
      multipliers: { airflow: [], indoorMatch: null, lineLength: null },
    } satisfies RatingTable);
  });

  test('is the same table for every order of the rows', () => {
    const whole = ratingTable(bigRows, options);
    fc.assert(
      fc.property(fc.shuffledSubarray([...bigRows], { minLength: bigRows.length }), (shuffled) => {
        expect(ratingTable(shuffled, options)).toEqual(whole);
      }),
    );
  });

  test('keeps a total that is not printed as a hole, and a sensible that is given on one row only', () => {
    const table = ratingTable([row(30, 17, null), { ...row(30, 19, 10400), sensible: 7000 }], options);
    expect(table.total).toEqual([null, 10400]);
    expect(table.sensible).toEqual([null, 7000]);
  });

  test('takes one row typed in two units as one row', () => {
    const [a, b, c, d] = rows as [RatingRow, RatingRow, RatingRow, RatingRow];
    const table = ratingTable([a, b, { ...c, enteringWetBulb: 17.0000000001 }, d], options);
    expect(table.axes.enteringWetBulb).toEqual([17, 19]);
  });

  test.each([
    ['no rows', [], 'noRows'],
    ['an outdoor temperature that is no number', [row(Number.NaN, 17, 9600)], 'notFinite'],
    ['a wet bulb no air has', [row(30, 300, 9600)], 'outOfRange'],
    ['a total that is no number', [row(30, 17, Number.NaN)], 'notFinite'],
    ['a total that is infinite', [row(30, 17, Number.POSITIVE_INFINITY)], 'notFinite'],
    ['a total of zero', [row(30, 17, 0)], 'notPositive'],
    ['a total below zero', [row(30, 17, -9600)], 'notPositive'],
    ['a power below zero', [{ ...row(30, 17, 9600), power: -1 }], 'outOfRange'],
    [
      'a dry bulb on one row only',
      [{ ...row(30, 17, 9600), enteringDryBulb: 27 }, row(30, 19, 10400)],
      'axisOnSomeRows',
    ],
    ['the same row twice', [...rows, row(30, 17, 9700)], 'repeatedRow'],
    ['a combination that is missing', rows.slice(1), 'missingRow'],
    ['a sensible that is no number', [{ ...row(30, 17, 9600), sensible: Number.NaN }], 'notFinite'],
    ['a sensible below zero', [{ ...row(30, 17, 9600), sensible: -1 }], 'outOfRange'],
    ['a band of more than all', [{ ...row(30, 17, 9600), band: 1.1 }], 'outOfRange'],
  ] as readonly [string, readonly RatingRow[], string][])('refuses %s', (_, bad, code) => {
    expect(codeOf(() => ratingTable(bad, options))).toBe(code);
  });

  test('lets a sensible within 1 % above the total stand', () => {
    expect(ratingTable([{ ...row(30, 17, 9600), sensible: 9680 }], options).sensible).toEqual([9680]);
  });

  test('lets a sensible 2 % above the total stand as printed, and reads none there', () => {
    const table = ratingTable(
      rows.map((one, i) => ({ ...one, sensible: i === 0 ? 9792 : 7000 })),
      options,
    );
    expect(table.sensible).toEqual([9792, 7000, 7000, 7000]);
    const at = (outdoorDryBulb: number, enteringWetBulb: number) =>
      rated(table, { outdoorDryBulb, enteringWetBulb }, { beyond: 'refuse' });
    expect(at(32, 18)).toMatchObject({ sensible: null, outside: [] });
    expect(at(32, 18).total).toBeGreaterThan(9000);
    expect(at(35, 18).sensible).toBe(7000);
  });

  test('refuses a blower power that is no number', () => {
    expect(codeOf(() => ratingTable(rows, { ...options, blowerPower: Number.NaN }))).toBe('notFinite');
  });
});

describe('a table that nobody has built', () => {
  const table = ratingTable(rows, options);
  const axes = (outdoorDryBulb: readonly number[]) => ({ ...table.axes, outdoorDryBulb });

  test.each([
    ['axes that fall', { axes: axes([35, 30]) }, 'notAscending'],
    ['an axis value twice', { axes: axes([30, 30]) }, 'notAscending'],
    ['an axis that is no number', { axes: axes([30, Number.NaN]) }, 'notFinite'],
    ['too few totals', { total: [9600, 10400, 9100] }, 'wrongLength'],
    ['too many sensible figures', { sensible: [1, 2, 3, 4, 5] }, 'wrongLength'],
    ['a total of zero', { total: [9600, 0, 9100, 9900] }, 'notPositive'],
    ['a total that is no number', { total: [9600, Number.NaN, 9100, 9900] }, 'notFinite'],
  ])('is refused for %s', (_, change, code) => {
    const bad = { ...table, ...change };
    expect(codeOf(() => rated(bad, { outdoorDryBulb: 32, enteringWetBulb: 18 }, { beyond: 'refuse' }))).toBe(code);
  });

  test('is read like any other when it is sound, as it is after a copy', () => {
    const copy = structuredClone(table);
    const at = { outdoorDryBulb: 32, enteringWetBulb: 18 };
    expect(rated(copy, at, { beyond: 'refuse' })).toEqual(rated(table, at, { beyond: 'refuse' }));
  });
});

describe('tableRemarks', () => {
  const codes = (list: readonly RatingRow[]) => tableRemarks(ratingTable(list, options)).map(({ code }) => code);

  test('has nothing to say of an ordinary table', () => {
    expect(codes(rows)).toEqual([]);
  });

  test('names the row and the column of a total that falls with the wet bulb', () => {
    const [remark] = tableRemarks(ratingTable([...rows.slice(0, 3), row(35, 19, 8900)], options));
    expect(remark?.code).toBe('totalFallsWithWetBulb');
    expect(remark?.amounts.map(({ value }) => value)).toEqual([35, 17, 19, 9100, 8900]);
  });

  test.each([
    [
      'a total that rises with the outdoor temperature',
      [...rows.slice(0, 2), row(35, 17, 9700), row(35, 19, 10400)],
      ['totalRisesWithOutdoor'],
    ],
    [
      'a dry cell',
      [
        { ...row(30, 17, 9600), sensible: 9550 },
        { ...row(30, 19, 10400), sensible: 8000 },
      ],
      ['dryCell'],
    ],
    [
      'a sensible more than 1 % above the total',
      [
        { ...row(30, 17, 9600), sensible: 9792 },
        { ...row(30, 19, 10400), sensible: 8000 },
      ],
      ['sensibleAboveTotal'],
    ],
    [
      'totals that are level but for their rounding',
      [row(30, 17, 9600), row(30, 19, 9560), row(35, 17, 9640), row(35, 19, 9600)],
      [],
    ],
    ['a hole', [row(30, 17, 9600), row(30, 19, null)], ['hole']],
    ['a flat row of a dry coil', [row(30, 17, 9600), row(30, 19, 9600)], []],
  ] as readonly [string, readonly RatingRow[], readonly string[]][])('finds %s', (_, list, found) => {
    expect(codes(list)).toEqual(found);
  });

  test('names every axis that the table states', () => {
    const hole = bigRows.map((big, i) => (i === 7 ? { ...big, total: null } : big));
    const [remark] = tableRemarks(ratingTable(hole, options));
    expect(remark?.amounts.map(({ value }) => value)).toEqual([30, 17, 27, 0.7]);
  });
});
