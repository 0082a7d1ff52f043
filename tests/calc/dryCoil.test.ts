import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dryOutOn } from '../../src/calc/dryOut.ts';
import {
  btuPerHour,
  dryOut,
  expectedCapacity,
  expectedTotal,
  fromFahrenheit,
  genericRating,
  leavingAir,
  moistAir,
  type RatingRow,
  ratingTable,
  type Step,
  standardPressureAtSeaLevel,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const coil = {
  dryBulb: 26.7,
  dryAirFlow: 0.68,
  total: 10000,
  bypassFactor: 0.15,
  pressure: standardPressureAtSeaLevel,
};

describe('dryOut', () => {
  test('is where the coil model turns from wet to dry', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 35, noNaN: true }),
        fc.double({ min: 6000, max: 12000, noNaN: true }),
        fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        fc.double({ min: 75e3, max: 102e3, noNaN: true }),
        (dryBulb, total, bypassFactor, pressure) => {
          const found = dryOut({ ...coil, dryBulb, total, bypassFactor, pressure });
          if (!found || found.apparatusDewPoint < 0.5) return;
          const share = (wetBulb: number) => {
            const entering = moistAir({ dryBulb, wetBulb, pressure });
            return (leavingAir({ entering, dryAirFlow: 0.68, total }, bypassFactor)?.sensible ?? Number.NaN) / total;
          };
          expect(share(found.wetBulb - 0.05)).toBe(1);
          expect(share(found.wetBulb + 0.05)).toBeLessThan(1);
        },
      ),
    );
  });

  test('shows its working', () => {
    const steps: Step[] = [];
    const found = dryOut(coil, (step) => steps.push(step));
    expect(steps.map(({ id }) => id)).toEqual(['dryOut.surface', 'dryOut.wetBulb']);
    expect(steps[1]?.gives.value).toBe(found?.wetBulb);
  });

  test('refuses what no coil is, and has no answer for a surface colder than the equations', () => {
    expect(codeOf(() => dryOut({ ...coil, bypassFactor: 1 }))).toBe('outOfRange');
    expect(codeOf(() => dryOut({ ...coil, total: Number.NaN }))).toBe('notFinite');
    expect(codeOf(() => dryOut({ ...coil, dryBulb: 100 }))).toBe('outOfRange');
    expect(codeOf(() => dryOut({ ...coil, dryAirFlow: 0 }))).toBe('outOfRange');
    expect(codeOf(() => dryOut({ ...coil, pressure: 10 }))).toBe('outOfRange');
    expect(dryOut({ ...coil, total: 1e6 })).toBeNull();
  });
});

describe('dryOutOn', () => {
  test('finds the wet bulb at which the total of that wet bulb dries the coil, over a bend in the total and from either side', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 24, max: 34, noNaN: true }),
        fc.double({ min: 8, max: 24, noNaN: true }),
        fc.double({ min: 14, max: 22, noNaN: true }),
        fc.double({ min: 0, max: 8000, noNaN: true }),
        fc.boolean(),
        (dryBulb, start, bend, steep, below) => {
          // Steep above the bend only as far as a surface can be as cold as that asks for.
          const slope = below ? steep : steep / 5;
          const totalAt = (wetBulb: number) => 10000 + (wetBulb < bend === below ? slope : 250) * (wetBulb - bend);
          const here = { ...coil, dryBulb };
          const found = dryOutOn(totalAt, here, start) ?? Number.NaN;
          expect(Math.abs((dryOut({ ...here, total: totalAt(found) })?.wetBulb ?? 0) - found)).toBeLessThan(0.01);
          const above = dryOutOn(totalAt, here, start, true) ?? Number.NaN;
          expect(Math.abs(above - Math.max(start, found))).toBeLessThan(1e-3);
        },
      ),
    );
  });

  test('gives a wet bulb that air can have, or none, for the total of a mistyped table that rises and falls', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(between(24, 40), between(5, 24), between(10, 16)),
        fc.tuple(between(-3000, 3000), between(-2000, 2000)),
        ([dryBulb, start, bend], [below, above]) => {
          const totalAt = (wetBulb: number) => 9000 + (wetBulb < bend ? below : above) * (wetBulb - bend);
          const found = dryOutOn(totalAt, { ...coil, dryBulb }, start);
          if (found === null) return;
          expect(found).toBeGreaterThan(-60);
          expect(found).toBeLessThan(dryBulb + 1e-6);
        },
      ),
      { numRuns: 500 },
    );
  });
});

const flow = 0.68;
const eighty = fromFahrenheit(80);
/** An invented table for air of 80 °F whose lowest row is dry. */
const printed = (wetBulb: number, total: number, sensible: number): RatingRow => ({
  outdoorDryBulb: 35,
  enteringWetBulb: fromFahrenheit(wetBulb),
  enteringDryBulb: eighty,
  dryAirFlow: flow,
  total: total * btuPerHour,
  sensible: sensible * btuPerHour,
});
const rows = [
  printed(57, 32500, 32500),
  printed(62, 32700, 31700),
  printed(67, 35500, 26200),
  printed(72, 38800, 20700),
];
const table = ratingTable(rows, { basis: 'gross', blowerPower: 0 });
const at = (dryBulb: number, wetBulb: number) => ({
  outdoorDryBulb: 35,
  enteringWetBulb: fromFahrenheit(wetBulb),
  enteringDryBulb: fromFahrenheit(dryBulb),
  dryAirFlow: flow,
});
const expected = (dryBulb: number, wetBulb: number) =>
  expectedCapacity(table, at(dryBulb, wetBulb), { blowerPower: 0 });

describe('a coil that is dry', () => {
  test('at the dry bulb of the table makes what is printed', () => {
    for (const { enteringWetBulb, total, sensible } of rows) {
      const found = expectedCapacity(table, { ...at(80, 0), enteringWetBulb }, { blowerPower: 0 });
      expect(found.total).toBeCloseTo(total as number, 2);
      expect(found.sensible).toBeCloseTo(sensible as number, 2);
    }
  });

  test('makes more in warmer and less in cooler air, all of it sensible, and the same at every lower wet bulb', () => {
    const warm = expected(85, 58);
    const cool = expected(76, 52);
    expect(warm.coil?.dry).toBe(true);
    expect(warm.sensible).toBe(warm.total);
    expect(warm.total).toBeGreaterThan(1.02 * expected(80, 58).total);
    // The table itself rises a little between its dry row and its wet one.
    expect(Math.abs(expected(85, 60).total / warm.total - 1)).toBeLessThan(0.005);
    expect(cool.total).toBeLessThan(expected(80, 57).total);
  });

  test('below the lowest row of a table is still covered, a wet one is not', () => {
    expect(expected(80, 50).total).toBeCloseTo(32500 * btuPerHour, 2);
    expect(expected(80, 50).outside).toEqual([]);
    expect(codeOf(() => expected(66, 55))).toBe('outsideTable');
  });

  test('puts the smear between a dry row and a wet one into the band of the reading', () => {
    const smeared = ratingTable([printed(57, 31000, 31000), printed(67, 35500, 26200)], {
      basis: 'gross',
      blowerPower: 0,
    });
    const band = (wetBulb: number) =>
      expectedCapacity(smeared, at(80, wetBulb), { blowerPower: 0 }).derates[1]?.band ?? Number.NaN;
    expect(band(57)).toBeCloseTo(0, 9);
    expect(band(61)).toBeGreaterThan(0.02);
    expect(band(61)).toBeLessThan(0.06);
    expect(band(67)).toBeCloseTo(0, 9);
  });

  test('no step in the expectation where the coil turns dry', () => {
    const generic = genericRating({ total: 10000, basis: 'gross', blowerPower: 0, unit: 'heatPump', stage: 'one' });
    for (const from of [table, generic]) {
      const total = (dryBulb: number, wetBulb: number) =>
        expectedTotal(from, { ...at(dryBulb, wetBulb), beyond: 'extend' }, { blowerPower: 0 });
      fc.assert(
        fc.property(
          fc.double({ min: 72, max: 90, noNaN: true }),
          fc.double({ min: 55, max: 70, noNaN: true }),
          (dryBulb, wetBulb) => {
            // Nothing here moves by more than 4 % a degree: a step would.
            const here = total(dryBulb, wetBulb);
            expect(Math.abs(total(dryBulb, wetBulb + 0.01) / here - 1)).toBeLessThan(4e-4);
            expect(Math.abs(total(dryBulb + 0.01, wetBulb) / here - 1)).toBeLessThan(4e-4);
          },
        ),
      );
    }
  });

  test('is worked out in steps', () => {
    const steps: Step[] = [];
    const { total } = expectedCapacity(table, at(85, 58), { blowerPower: 0 }, (step) => steps.push(step));
    expect(steps.map(({ id }) => id)).toEqual(
      expect.arrayContaining([
        'rated.total',
        'dryOut.surface',
        'dryOut.wetBulb',
        'expectation.dryCoil',
        'expectation.net',
      ]),
    );
    expect(steps.at(-1)?.gives.value).toBe(total);
  });
});

test('an airflow so low that no surface is that cold leaves the table as read, or is refused as an airflow', () => {
  const low = { ...at(80, 64), dryAirFlow: 0.05 };
  expect(codeOf(() => expectedCapacity(table, low, { blowerPower: 0 }))).toBe('outsideTable');
  const read = expectedCapacity(table, { ...low, beyond: 'extend' }, { blowerPower: 0 });
  expect(read.coil).toBeNull();
  // Two fifths of the way between the rows, and the published curve for less air.
  expect(read.total / btuPerHour).toBeCloseTo((32700 + 0.4 * 2800) * (0.8 + (0.2 * 0.05) / flow), 6);
});
