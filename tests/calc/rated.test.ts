import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type RatingConditions, type RatingRow, rated, ratingTable } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const options = { basis: 'net', blowerPower: 300 } as const;
const refuse = { beyond: 'refuse' } as const;
const extend = { beyond: 'extend' } as const;

const outdoors = [25, 30, 35, 40];
const wetBulbs = [14, 16, 18, 20];

/** A table whose total never falls with the wet bulb, made from rises that are never below zero. */
const risingTable = fc
  .array(fc.double({ min: 0, max: 1500, noNaN: true }), { minLength: 16, maxLength: 16 })
  .map((rises) =>
    ratingTable(
      outdoors.flatMap((outdoorDryBulb, o) =>
        wetBulbs.map(
          (enteringWetBulb, w): RatingRow => ({
            outdoorDryBulb,
            enteringWetBulb,
            total: 6000 + rises.slice(4 * o, 4 * o + w + 1).reduce((sum, rise) => sum + rise, 0),
          }),
        ),
      ),
      options,
    ),
  );
const between = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });

const plain = ratingTable(
  [
    { outdoorDryBulb: 30, enteringWetBulb: 17, total: 9600, sensible: 7000, power: 2000 },
    { outdoorDryBulb: 30, enteringWetBulb: 19, total: 10400, sensible: 6400, power: 2050 },
    { outdoorDryBulb: 35, enteringWetBulb: 17, total: 9100, sensible: 6800, power: 2200 },
    { outdoorDryBulb: 35, enteringWetBulb: 19, total: 9900, sensible: null, power: 2260 },
  ],
  options,
);

describe('rated', () => {
  test('gives the printed figures at the printed rows, with that row alone as the cell', () => {
    expect(rated(plain, { outdoorDryBulb: 35, enteringWetBulb: 17 }, refuse)).toEqual({
      total: 9100,
      sensible: 6800,
      power: 2200,
      cell: { outdoorDryBulb: [1, 1], enteringWetBulb: [0, 0] },
      outside: [],
    });
  });

  test('gives the mean of the corners in the middle of a cell', () => {
    const { total, power, cell } = rated(plain, { outdoorDryBulb: 32.5, enteringWetBulb: 18 }, refuse);
    expect(total).toBeCloseTo((9600 + 10400 + 9100 + 9900) / 4, 9);
    expect(power).toBeCloseTo((2000 + 2050 + 2200 + 2260) / 4, 9);
    expect(cell).toEqual({ outdoorDryBulb: [0, 1], enteringWetBulb: [0, 1] });
  });

  test('leaves out a sensible that would need a figure not printed, and keeps the total', () => {
    const reading = rated(plain, { outdoorDryBulb: 32.5, enteringWetBulb: 18 }, refuse);
    expect(reading.sensible).toBeNull();
    expect(reading.outside).toEqual([]);
  });

  test('stays between the lowest and the highest corner of its cell', () => {
    fc.assert(
      fc.property(risingTable, between(25, 40), between(14, 20), (table, outdoorDryBulb, enteringWetBulb) => {
        const { total, cell } = rated(table, { outdoorDryBulb, enteringWetBulb }, refuse);
        const corners = (cell.outdoorDryBulb ?? []).flatMap((o) =>
          (cell.enteringWetBulb ?? []).map((w) => table.total[4 * o + w] as number),
        );
        expect(total).toBeGreaterThanOrEqual(Math.min(...corners) - 1e-8);
        expect(total).toBeLessThanOrEqual(Math.max(...corners) + 1e-8);
      }),
    );
  });

  test('never falls with the entering wet bulb on a table that does not', () => {
    fc.assert(
      fc.property(risingTable, between(25, 40), between(14, 20), between(0, 6), (table, outdoorDryBulb, low, more) => {
        const at = (enteringWetBulb: number) => rated(table, { outdoorDryBulb, enteringWetBulb }, refuse).total ?? 0;
        expect(at(Math.min(20, low + more))).toBeGreaterThanOrEqual(at(low) - 1e-8);
      }),
    );
  });

  test('is one continuous surface across the rows', () => {
    fc.assert(
      fc.property(risingTable, fc.constantFrom(30, 35), between(14, 20), (table, row, enteringWetBulb) => {
        const at = (outdoorDryBulb: number) => rated(table, { outdoorDryBulb, enteringWetBulb }, refuse).total;
        expect(at(row - 1e-7)).toBeCloseTo(at(row + 1e-7) as number, 2);
      }),
    );
  });

  test('reads all four axes, linear in each', () => {
    const linear = (o: number, w: number, d: number, m: number) => 5000 - 40 * o + 300 * w + 10 * d + 900 * m;
    const rows = [30, 40].flatMap((o) =>
      [15, 19].flatMap((w) =>
        [24, 27].flatMap((d) =>
          [0.6, 0.8].map((m) => ({
            outdoorDryBulb: o,
            enteringWetBulb: w,
            enteringDryBulb: d,
            dryAirFlow: m,
            total: linear(o, w, d, m),
          })),
        ),
      ),
    );
    const at = { outdoorDryBulb: 33, enteringWetBulb: 18, enteringDryBulb: 24.6, dryAirFlow: 0.77 };
    expect(rated(ratingTable(rows, options), at, refuse).total).toBeCloseTo(linear(33, 18, 24.6, 0.77), 6);
  });
});

describe('rated outside the table', () => {
  const warm = { outdoorDryBulb: 37.5, enteringWetBulb: 17 };

  test('gives nothing when asked to refuse, and names the axis', () => {
    expect(rated(plain, warm, refuse)).toMatchObject({
      total: null,
      sensible: null,
      power: null,
      outside: ['outdoorDryBulb'],
    });
  });

  test('runs on in the line of the last cell when asked to extend, and still names the axis', () => {
    expect(rated(plain, warm, extend)).toMatchObject({ total: 9100 - 250, outside: ['outdoorDryBulb'] });
    expect(rated(plain, { outdoorDryBulb: 25, enteringWetBulb: 20 }, extend)).toMatchObject({
      outside: ['outdoorDryBulb', 'enteringWetBulb'],
    });
  });

  test('takes a point within 1e-9 of the edge as inside, and one beyond as outside', () => {
    expect(rated(plain, { outdoorDryBulb: 35 + 9e-10, enteringWetBulb: 17 }, refuse).outside).toEqual([]);
    expect(rated(plain, { outdoorDryBulb: 35 + 1.1e-9, enteringWetBulb: 17 }, refuse).outside).toEqual([
      'outdoorDryBulb',
    ]);
    expect(rated(plain, { outdoorDryBulb: 30 - 9e-10, enteringWetBulb: 17 }, refuse).outside).toEqual([]);
  });

  test('takes an axis of one value as stated, not varied', () => {
    const table = ratingTable([{ outdoorDryBulb: 35, enteringWetBulb: 19, dryAirFlow: 0.7, total: 9900 }], options);
    expect(rated(table, { outdoorDryBulb: 20, enteringWetBulb: 15, dryAirFlow: 2 }, refuse)).toEqual({
      total: 9900,
      sensible: null,
      power: null,
      cell: { outdoorDryBulb: [0, 0], enteringWetBulb: [0, 0], dryAirFlow: [0, 0] },
      outside: [],
    });
  });
});

describe('rated at a hole', () => {
  const rows: RatingRow[] = [
    { outdoorDryBulb: 30, enteringWetBulb: 17, total: 9600 },
    { outdoorDryBulb: 30, enteringWetBulb: 19, total: null },
    { outdoorDryBulb: 35, enteringWetBulb: 17, total: 9100 },
    { outdoorDryBulb: 35, enteringWetBulb: 19, total: 9900 },
  ];
  const table = ratingTable(rows, options);

  test.each([refuse, extend])('is outside on every axis when the cell needs it: %o', (how) => {
    expect(rated(table, { outdoorDryBulb: 32, enteringWetBulb: 18 }, how)).toMatchObject({
      total: null,
      outside: ['outdoorDryBulb', 'enteringWetBulb'],
    });
  });

  test('is none on the printed rows beside it', () => {
    expect(rated(table, { outdoorDryBulb: 35, enteringWetBulb: 18 }, refuse)).toMatchObject({
      total: 9500,
      outside: [],
    });
    expect(rated(table, { outdoorDryBulb: 32.5, enteringWetBulb: 17 }, refuse)).toMatchObject({
      total: 9350,
      outside: [],
    });
  });
});

test.each([
  ['an outdoor temperature that is no number', { outdoorDryBulb: Number.NaN, enteringWetBulb: 17 }, 'notFinite'],
  ['a wet bulb that is infinite', { outdoorDryBulb: 32, enteringWetBulb: Number.NEGATIVE_INFINITY }, 'notFinite'],
  ['an airflow that is no number', { outdoorDryBulb: 32, enteringWetBulb: 17, dryAirFlow: Number.NaN }, 'notFinite'],
] as readonly [string, RatingConditions, string][])('rated refuses %s', (_, at, code) => {
  expect(codeOf(() => rated(plain, at, extend))).toBe(code);
});

test('rated refuses to read a table without the value of an axis that it varies', () => {
  const blocks = [0.6, 0.7].map((dryAirFlow) => ({ outdoorDryBulb: 35, enteringWetBulb: 19, dryAirFlow, total: 9900 }));
  expect(codeOf(() => rated(ratingTable(blocks, options), { outdoorDryBulb: 35, enteringWetBulb: 19 }, refuse))).toBe(
    'missing',
  );
});
