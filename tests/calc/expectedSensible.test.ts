/** The sensible capacity to expect: when it is as printed, when it moves and which way, and when nothing can be said. */
import { describe, expect, test } from 'vitest';
import {
  type ExpectationConditions,
  expectedCapacity,
  type Installation,
  noMultipliers,
  type RatingRow,
  ratingTable,
} from '../../src/calc/index.ts';

const corner = (
  enteringWetBulb: number,
  total: number,
  sensible: number,
  more: Partial<RatingRow> = {},
): RatingRow => ({
  outdoorDryBulb: 35,
  enteringWetBulb,
  enteringDryBulb: 26.67,
  dryAirFlow: 0.68,
  total,
  sensible,
  ...more,
});
const rows = [corner(17, 9300, 8100), corner(20, 10400, 6900)];
const options = { basis: 'gross', blowerPower: 0 } as const;
const table = ratingTable(rows, options);
const at: ExpectationConditions = {
  outdoorDryBulb: 35,
  enteringWetBulb: 18.5,
  enteringDryBulb: 26.67,
  dryAirFlow: 0.68,
};
const printed = (8100 + 6900) / 2;

const found = (from = table, change: Partial<ExpectationConditions> = {}, installation: Partial<Installation> = {}) =>
  expectedCapacity(from, { ...at, ...change }, { blowerPower: 0, ...installation });

describe('the sensible capacity is as printed', () => {
  test('in the column of its own dry bulb, and in its own block of airflow', () => {
    const bulbs = [24, 26.67].flatMap((enteringDryBulb) =>
      rows.map((row) => ({ ...row, enteringDryBulb, sensible: row.sensible! - 300 * (26.67 - enteringDryBulb) })),
    );
    expect(found(ratingTable(bulbs, options)).sensible).toBeCloseTo(printed, 9);
    const blocks = [0.5, 0.68].flatMap((dryAirFlow) =>
      rows.map((row) => ({ ...row, dryAirFlow, total: row.total! * (0.8 + 0.2 * (dryAirFlow / 0.68)) })),
    );
    expect(found(ratingTable(blocks, options)).sensible).toBeCloseTo(printed, 9);
  });

  test('times the factor for this indoor unit', () => {
    const matched = ratingTable(rows, { ...options, multipliers: { ...noMultipliers, indoorMatch: 0.96 } });
    expect(found(matched).sensible).toBeCloseTo(0.96 * printed, 9);
  });

  test('where no airflow is known at all, as long as the dry bulb is that of the table', () => {
    const bare = ratingTable(
      rows.map(({ dryAirFlow: _, ...row }) => row),
      options,
    );
    expect(found(bare, { dryAirFlow: undefined }).sensible).toBeCloseTo(printed, 9);
    expect(found(bare, { dryAirFlow: undefined, enteringDryBulb: 25 }).sensible).toBeNull();
  });
});

describe('the sensible capacity moves', () => {
  test('behind a line set: less is made, by a warmer surface, so less of it is water', () => {
    const lineSet = { factor: 0.9, low: 0.9, high: 0.9, source: 'suctionLoss' } as const;
    const behind = found(table, {}, { lineSet });
    expect(behind.sensible).toBeLessThan(printed);
    expect(behind.sensible! / behind.total).toBeGreaterThan(printed / found().total);
  });

  test('in thinner air, where the same volume is less mass', () => {
    const here = found(table, { dryAirFlow: (0.68 * 85) / 101.325 }, { pressure: 85e3 });
    expect(here.sensible).toBeLessThan(printed);
    expect(here.sensible).toBeGreaterThan(0.8 * printed);
  });
});

test('all of a dry coil’s capacity is sensible, between a dry row and a wet one too', () => {
  const drying = ratingTable([corner(14, 9000, 9000), corner(17, 9300, 8100), corner(20, 10400, 6900)], options);
  let dry = 0;
  for (let enteringWetBulb = 13; enteringWetBulb <= 20; enteringWetBulb += 0.25)
    for (const enteringDryBulb of [25, 26.67, 29, 31]) {
      const { coil, total, sensible } = found(drying, { enteringWetBulb, enteringDryBulb, beyond: 'extend' });
      if (coil?.dry) dry++;
      if (coil?.dry) expect(sensible).toBe(total);
      else expect(sensible).toBeLessThanOrEqual(total);
    }
  expect(dry).toBeGreaterThan(10);
});

describe('nothing is said of the sensible capacity', () => {
  test('without a dry bulb', () => {
    expect(found(table, { enteringDryBulb: undefined }).sensible).toBeNull();
  });

  test('of air whose dry bulb would be below its wet bulb, here or in the table', () => {
    expect(found(table, { enteringDryBulb: 18 }).sensible).toBeNull();
    const hot = [
      corner(26, 11000, 2000, { enteringDryBulb: 25.5 }),
      corner(28, 12000, 2000, { enteringDryBulb: 25.5 }),
    ];
    const damp = found(ratingTable(hot, options), { enteringWetBulb: 27, enteringDryBulb: 30 });
    expect(damp.sensible).toBeNull();
  });
});
