import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ExpectationConditions,
  expectedCapacity,
  expectedTotal,
  moistAir,
  type RatingRow,
  ratedApparatus,
  ratingTable,
  type Step,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const corner = (
  outdoorDryBulb: number,
  enteringWetBulb: number,
  total: number | null,
  sensible: number,
): RatingRow => ({
  outdoorDryBulb,
  enteringWetBulb,
  total,
  sensible,
  enteringDryBulb: 26.67,
  dryAirFlow: 0.68,
});
const rows = [
  corner(30, 17, 9600, 8200),
  corner(30, 20, 10700, 7000),
  corner(35, 17, 9100, 8000),
  corner(35, 20, 10200, 6800),
];
const net = ratingTable(rows, { basis: 'net', blowerPower: 300 });
const at: ExpectationConditions = {
  outdoorDryBulb: 32.5,
  enteringWetBulb: 18.5,
  enteringDryBulb: 26.67,
  dryAirFlow: 0.68,
};
const read = (9600 + 10700 + 9100 + 10200) / 4;

describe('expectedCapacity', () => {
  test('goes from the nameplate to this system in eight steps, those that do not apply with the factor 1', () => {
    const { derates, total, basis, outside } = expectedCapacity(net, at, { blowerPower: 450 });
    expect(basis).toBe('net');
    expect(outside).toEqual([]);
    expect(total).toBeCloseTo(read + 300 - 450, 9);
    expect(derates.map(({ cause, applies, factor, source }) => [cause, applies, factor, source])).toEqual([
      ['certified', false, 1, 'certifiedRating'],
      ['temperatures', true, 1, 'makersTable'],
      ['indoorMatch', false, 1, 'makersTable'],
      ['airflow', false, 1, 'flowCurve'],
      ['blowerInside', true, (read + 300) / read, 'coilModel'],
      ['lineSet', false, 1, 'makersTable'],
      ['altitude', false, 1, 'outdoorCoilAltitude'],
      ['blowerHere', true, (read + 300 - 450) / (read + 300), 'coilModel'],
    ]);
  });

  test('every step begins where the one before it ended', () => {
    const { derates, total } = expectedCapacity(net, { ...at, dryAirFlow: 0.6, nominal: 10550 }, { blowerPower: 450 });
    expect(derates[0]?.before).toBe(10550);
    for (let i = 1; i < derates.length; i++) expect(derates[i]?.before).toBe(derates[i - 1]?.after);
    expect(derates.at(-1)?.after).toBe(total);
  });

  test('brings a table of one airflow to the airflow here by the published curve, which is for gross capacity', () => {
    const { total } = expectedCapacity(net, { ...at, dryAirFlow: 0.8 * 0.68 }, { blowerPower: 300 });
    expect(total).toBeCloseTo(0.96 * (read + 300) - 300, 9);
  });

  test('takes no such step without an airflow in the table, without one here, or between two blocks', () => {
    const bare = rows.map(({ dryAirFlow: _, ...rest }) => rest);
    const two = [...rows, ...rows.map((row) => ({ ...row, dryAirFlow: 0.5, total: (row.total as number) * 0.9 }))];
    const { dryAirFlow: _, ...noFlow } = at;
    const options = { basis: 'net', blowerPower: 300 } as const;
    expect(expectedTotal(ratingTable(bare, options), { ...at, dryAirFlow: 0.5 }, { blowerPower: 300 })).toBeCloseTo(
      read,
      9,
    );
    expect(expectedTotal(net, noFlow, { blowerPower: 300 })).toBeCloseTo(read, 9);
    expect(expectedTotal(ratingTable(two, options), { ...at, dryAirFlow: 0.59 }, { blowerPower: 300 })).toBeCloseTo(
      0.95 * read,
      9,
    );
  });

  test('adds nothing back to a gross table', () => {
    const gross = ratingTable(rows, { basis: 'gross', blowerPower: 300 });
    expect(expectedTotal(gross, at, { blowerPower: 450 })).toBeCloseTo(read - 450, 9);
  });

  test('net and gross tables of one machine expect the same', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 800, noNaN: true }),
        fc.double({ min: 0, max: 800, noNaN: true }),
        (inside, here) => {
          const more = rows.map((row) => ({ ...row, total: (row.total as number) + inside }));
          const asNet = ratingTable(rows, { basis: 'net', blowerPower: inside });
          const asGross = ratingTable(more, { basis: 'gross', blowerPower: 0 });
          expect(expectedTotal(asNet, at, { blowerPower: here })).toBeCloseTo(
            expectedTotal(asGross, at, { blowerPower: here }),
            6,
          );
        },
      ),
    );
  });

  test('expectedTotal is its total to the last bit', () => {
    const anywhere = fc.record({
      outdoorDryBulb: fc.double({ min: 20, max: 45, noNaN: true }),
      enteringWetBulb: fc.double({ min: 14, max: 22, noNaN: true }),
      enteringDryBulb: fc.double({ min: 22, max: 30, noNaN: true }),
      dryAirFlow: fc.double({ min: 0.4, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(anywhere, (point) => {
        const conditions = { ...point, beyond: 'extend' as const };
        const whole = expectedCapacity(net, conditions, { blowerPower: 450 });
        expect(expectedTotal(net, conditions, { blowerPower: 450 })).toBe(whole.total);
        expect(whole.sensible ?? 0).toBeLessThanOrEqual(whole.total);
      }),
    );
  });
});

describe('expectedCapacity outside the table', () => {
  const problem = (conditions: ExpectationConditions) => {
    try {
      return expectedCapacity(net, conditions, { blowerPower: 450 });
    } catch (error) {
      return error;
    }
  };

  test.each([
    [{ outdoorDryBulb: 40 }, { code: 'outsideTable', quantity: 'outdoorDryBulb', value: 40, min: 30, max: 35 }],
    [{ enteringWetBulb: 15 }, { code: 'outsideTable', quantity: 'enteringWetBulb', value: 15, min: 17, max: 20 }],
    [
      { dryAirFlow: 0.3 },
      { code: 'outsideTable', quantity: 'dryAirFlow', value: 0.3, min: 0.7 * 0.68, max: 1.3 * 0.68 },
    ],
  ])('refuses %o and says what the table covers', (change, expected) => {
    expect(problem({ ...at, ...change })).toMatchObject(expected);
  });

  test('gives a marked value when asked to extend', () => {
    const far = { ...at, outdoorDryBulb: 40, dryAirFlow: 0.3, beyond: 'extend' as const };
    expect(problem(far)).toMatchObject({ outside: ['outdoorDryBulb', 'dryAirFlow'] });
  });

  test('refuses a hole, with the wet bulbs around it', () => {
    const holed = ratingTable([...rows.slice(0, 3), corner(35, 20, null, 6800)], { basis: 'net', blowerPower: 300 });
    expect(codeOf(() => expectedTotal(holed, { ...at, beyond: 'extend' }, { blowerPower: 300 }))).toBe('hole');
  });

  test('refuses a blower that eats all of the capacity, and one that is no number', () => {
    expect(codeOf(() => expectedTotal(net, at, { blowerPower: 20e3 }))).toBe('notPositive');
    expect(codeOf(() => expectedTotal(net, at, { blowerPower: Number.NaN }))).toBe('notFinite');
  });
});

describe('the sensible capacity to expect', () => {
  const sensible = (change: Partial<ExpectationConditions>, table = net) =>
    expectedCapacity(table, { ...at, ...change }, { blowerPower: 300 }).sensible;
  const printed = (8200 + 7000 + 8000 + 6800) / 4;

  test('is the printed one at the dry bulb and the airflow of the table', () => {
    expect(sensible({})).toBeCloseTo(printed, 9);
  });

  test('moves with the dry bulb by ṁ·c_p·(1 − b) for each kelvin, within 1 %', () => {
    const entering = moistAir({ dryBulb: 26.67, wetBulb: 18.5 });
    const found = ratedApparatus({ entering, dryAirFlow: 0.68, total: read + 300 }, printed + 300);
    const perKelvin = 0.68 * (1006 + 1860 * 0.009) * (1 - (found?.bypassFactor ?? Number.NaN));
    const moved = (sensible({ enteringDryBulb: 25.67 }) ?? Number.NaN) - printed;
    expect(moved / -perKelvin).toBeGreaterThan(0.99);
    expect(moved / -perKelvin).toBeLessThan(1.01);
  });

  test('falls less than the airflow, and the sensible share falls with it', () => {
    const less = expectedCapacity(net, { ...at, dryAirFlow: 0.8 * 0.68 }, { blowerPower: 300 });
    const share = (less.sensible ?? Number.NaN) / less.total;
    expect(less.sensible).toBeGreaterThan(0.8 * printed);
    expect(share).toBeLessThan(printed / read - 0.02);
  });

  test('is never above the total', () => {
    const warm = expectedCapacity(net, { ...at, enteringDryBulb: 35 }, { blowerPower: 300 });
    expect(warm.sensible).toBe(warm.total);
  });

  test.each([
    ['no sensible column', rows.map(({ sensible: _, ...row }) => row)],
    ['no dry bulb that it stands for', rows.map(({ enteringDryBulb: _, ...row }) => row)],
    ['a coil with no apparatus dew point', rows.map((row) => ({ ...row, sensible: row.total }))],
  ])('is unknown with %s', (_, list) => {
    const table = ratingTable(list, { basis: 'net', blowerPower: 300 });
    expect(sensible({ enteringDryBulb: 25 }, table)).toBeNull();
  });
});

test('the working shows the four corners, the airflow and both blowers', () => {
  const steps: Step[] = [];
  const conditions = { ...at, dryAirFlow: 0.6 };
  const { total } = expectedCapacity(net, conditions, { blowerPower: 450 }, (step) => steps.push(step));
  expect(steps.map(({ id }) => id)).toEqual([
    'rated.share.outdoorDryBulb',
    'rated.share.enteringWetBulb',
    'rated.total',
    'expectation.flowRatio',
    'expectation.airflow',
    'expectation.gross',
    'expectation.net',
  ]);
  const reading = steps[2];
  expect(reading?.equation).toBe('Q = Q₁₁·(1 − x)·(1 − y) + Q₁₂·(1 − x)·y + Q₂₁·x·(1 − y) + Q₂₂·x·y');
  expect(reading?.puts.map(({ value }) => value)).toEqual([9600, 10700, 9100, 10200, 0.5, 0.5]);
  expect(steps.at(-1)?.gives.value).toBe(total);
});
