/** Where an expectation stops, what it refuses by name, and what ought to come to the same. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tableRange } from '../../src/calc/expectationChain.ts';
import {
  bypassAtFlow,
  CalcError,
  type ExpectationConditions,
  expectedCapacity,
  expectedTotal,
  type Installation,
  noMultipliers,
  type RatingRow,
  ratingTable,
} from '../../src/calc/index.ts';

const flow = 0.68;
const corner = (
  outdoorDryBulb: number,
  enteringWetBulb: number,
  total: number | null,
  sensible: number,
): RatingRow => ({
  outdoorDryBulb,
  enteringWetBulb,
  enteringDryBulb: 26.67,
  dryAirFlow: flow,
  total,
  sensible,
});
const rows = [
  corner(30, 14, 9600, 9600),
  corner(30, 17, 9700, 8200),
  corner(30, 20, 10700, 7000),
  corner(35, 14, 9000, 9000),
  corner(35, 17, 9100, 8000),
  corner(35, 20, 10200, 6800),
];
const gross = ratingTable(rows, { basis: 'gross', blowerPower: 0 });
const at: ExpectationConditions = {
  outdoorDryBulb: 32.5,
  enteringWetBulb: 18.5,
  enteringDryBulb: 26.67,
  dryAirFlow: flow,
};
const dry: ExpectationConditions = { ...at, enteringWetBulb: 14.5, enteringDryBulb: 29 };

function problemOf(work: () => unknown) {
  try {
    work();
    return null;
  } catch (error) {
    if (!(error instanceof CalcError)) throw error;
    const { code, quantity, min, max } = error;
    return { code, quantity, min, max };
  }
}

describe('what cannot be is refused by name', () => {
  test.each<[Partial<ExpectationConditions>, Partial<Installation>, string, string]>([
    [{}, { blowerPower: -1 }, 'outOfRange', 'blowerPower'],
    [{}, { pressure: 40e3 }, 'outOfRange', 'pressure'],
    [{}, { pressure: 120e3 }, 'outOfRange', 'pressure'],
    [{ nominal: -1 }, {}, 'notPositive', 'nominal'],
    [{ certified: -1 }, {}, 'notPositive', 'certified'],
    [{}, { lineSet: { factor: 0.9, low: 0.1, high: 1, source: 'suctionLoss' } }, 'outOfRange', 'lineSet.low'],
    [{}, { lineSet: { factor: 0.9, low: 0.8, high: 2.1, source: 'suctionLoss' } }, 'outOfRange', 'lineSet.high'],
    [{}, { lineSet: { factor: 0.7, low: 0.8, high: 1, source: 'suctionLoss' } }, 'outOfRange', 'lineSet.factor'],
  ])('%o %o', (conditions, installation, code, quantity) => {
    const work = () => expectedTotal(gross, { ...at, ...conditions }, { blowerPower: 0, ...installation });
    expect(problemOf(work)).toMatchObject({ code, quantity });
  });

  test('a reading below nothing, though the blower heat inside it would lift it above', () => {
    // 400 W less for each kelvin: 40 W below nothing at 42.6 °C, and 300 W of blower heat inside.
    const steep = [30, 35].map((outdoor) => ({
      outdoorDryBulb: outdoor,
      enteringWetBulb: 19,
      total: 17e3 - 400 * outdoor,
    }));
    const table = ratingTable(steep, { basis: 'net', blowerPower: 300 });
    const far = { outdoorDryBulb: 42.6, enteringWetBulb: 19, beyond: 'extend' } as const;
    expect(problemOf(() => expectedTotal(table, far, { blowerPower: 0 }))?.code).toBe('notPositive');
    expect(expectedTotal(table, { ...far, outdoorDryBulb: 42.4 }, { blowerPower: 0 })).toBeCloseTo(340, 9);
  });

  test('a hole, with the printed wet bulbs around it', () => {
    const holed = ratingTable([...rows.slice(0, 5), corner(35, 20, null, 6800)], { basis: 'gross', blowerPower: 0 });
    expect(problemOf(() => expectedTotal(holed, at, { blowerPower: 0 }))).toEqual({
      code: 'hole',
      quantity: 'enteringWetBulb',
      min: 17,
      max: 20,
    });
  });
});

describe('what a table covers', () => {
  test('is the span of an axis that it varies with, and nothing said of one that it only states', () => {
    expect(tableRange(gross, 'outdoorDryBulb')).toEqual([30, 35]);
    expect(tableRange(gross, 'enteringWetBulb')).toEqual([14, 20]);
    expect(tableRange(gross, 'enteringDryBulb')).toBeNull();
  });

  test('ends above its dampest row, whatever is known of the coil', () => {
    expect(problemOf(() => expectedCapacity(gross, { ...at, enteringWetBulb: 21 }, { blowerPower: 0 }))).toMatchObject({
      code: 'outsideTable',
      quantity: 'enteringWetBulb',
    });
  });

  test('goes on below its driest row for a dry coil, but not beyond its outdoor temperatures', () => {
    const low = { ...dry, enteringWetBulb: 12 };
    expect(expectedCapacity(gross, low, { blowerPower: 0 }).outside).toEqual([]);
    const extended = { ...low, outdoorDryBulb: 36, beyond: 'extend' } as const;
    expect(expectedCapacity(gross, extended, { blowerPower: 0 }).outside).toEqual(['outdoorDryBulb']);
  });

  test('is the same for a dry coil on its driest row as just below it', () => {
    const outside = (enteringWetBulb: number) =>
      expectedCapacity(gross, { ...dry, enteringWetBulb }, { blowerPower: 0 }).outside;
    expect([outside(14), outside(13.9)]).toEqual([[], []]);
  });
});

describe('the coil', () => {
  const coilOf = (change: Partial<ExpectationConditions>) =>
    expectedCapacity(gross, { ...at, ...change }, { blowerPower: 0 }).coil;

  test('is described where it is wet, and at the airflow of the table where none is known here', () => {
    const found = coilOf({});
    expect(found?.dry).toBe(false);
    expect(coilOf({ dryAirFlow: undefined })).toEqual(found);
  });

  test('lets more air by at more airflow: b is exp(−A₀/ṁ)', () => {
    const { bypassFactor } = coilOf({})!;
    expect(coilOf({ dryAirFlow: 0.8 })?.bypassFactor).toBeCloseTo(bypassAtFlow(bypassFactor, 0.8 / flow), 12);
    expect(coilOf({ dryAirFlow: 0.8 })?.bypassFactor).toBeGreaterThan(bypassFactor);
  });

  test('that is dry makes the same by a net table as by a gross one', () => {
    const anywhere = fc.record({
      inside: fc.double({ min: 0, max: 800, noNaN: true }),
      dryAirFlow: fc.double({ min: 0.6, max: 0.8, noNaN: true }),
      enteringDryBulb: fc.double({ min: 26, max: 31, noNaN: true }),
    });
    fc.assert(
      fc.property(anywhere, ({ inside, ...change }) => {
        const less = (figure: number | null | undefined) => (figure as number) - inside;
        const net = ratingTable(
          rows.map((row) => ({ ...row, total: less(row.total), sensible: less(row.sensible) })),
          { basis: 'net', blowerPower: inside },
        );
        const here = { ...dry, ...change };
        const [one, other] = [gross, net].map((table) => expectedCapacity(table, here, { blowerPower: 0 }));
        expect(other!.total / one!.total).toBeCloseTo(1, 6);
        expect(other!.coil!.dryOutWetBulb).toBeCloseTo(one!.coil!.dryOutWetBulb, 2);
      }),
      { numRuns: 50 },
    );
  });
});

describe('a maker’s factors for another airflow', () => {
  const factors = { dryAirFlow: 0.6, total: 0.97, sensible: 0.93 };

  test.each(['net', 'gross'] as const)('come to the same as a %s table printed for that airflow', (basis) => {
    const options = { basis, blowerPower: 300 };
    const byFactors = ratingTable(rows, { ...options, multipliers: { ...noMultipliers, airflow: [factors] } });
    const printed = ratingTable(
      rows.map((row) => ({
        ...row,
        dryAirFlow: factors.dryAirFlow,
        total: row.total! * factors.total,
        sensible: row.sensible! * factors.sensible,
      })),
      options,
    );
    for (const enteringDryBulb of [25, 26.67, 28]) {
      const here = { ...at, dryAirFlow: factors.dryAirFlow, enteringDryBulb };
      const [one, other] = [byFactors, printed].map((table) => expectedCapacity(table, here, { blowerPower: 430 }));
      expect(one!.total).toBeCloseTo(other!.total, 6);
      expect(one!.sensible!).toBeCloseTo(other!.sensible!, 6);
    }
  });
});
