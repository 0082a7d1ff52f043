import { describe, expect, test } from 'vitest';
import {
  expectedCapacity,
  genericRating,
  type Multipliers,
  type RatingTable,
  ratingTable,
  tableRange,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';
import { at, flow, row, step, tableWith } from './oneRowTable.ts';

describe('the steps of an expectation', () => {
  test('join up from the nameplate to the total, whatever applies', () => {
    const multipliers = {
      airflow: [{ dryAirFlow: 0.5, total: 0.95, sensible: null }],
      indoorMatch: 0.97,
      lineLength: 0.98,
    };
    const { derates, total } = expectedCapacity(
      tableWith(multipliers),
      { ...at, dryAirFlow: 0.55, nominal: 10551, certified: 10200 },
      { blowerPower: 450, pressure: 84e3 },
    );
    expect(derates.map(({ cause }) => cause)).toEqual([
      'certified',
      'temperatures',
      'indoorMatch',
      'airflow',
      'blowerInside',
      'lineSet',
      'altitude',
      'blowerHere',
    ]);
    expect(derates.every(({ applies }) => applies)).toBe(true);
    expect(derates[0]?.before).toBe(10551);
    for (let i = 1; i < derates.length; i++) expect(derates[i]?.before).toBe(derates[i - 1]?.after);
    for (const { before, after, factor } of derates) expect(factor).toBeCloseTo(after / before, 12);
    expect(derates.at(-1)?.after).toBe(total);
  });

  test('begin at the certified capacity where there is no nameplate', () => {
    expect(step('certified', tableWith(), { certified: 10200 })).toMatchObject({
      before: 10200,
      after: 10200,
      factor: 1,
    });
    expect(step('temperatures', tableWith(), { certified: 10200 })).toMatchObject({ before: 10200, after: 10000 });
  });
});

test('a step without anything to add or to take off does not apply', () => {
  const gross = ratingTable([row], { basis: 'gross', blowerPower: 300 });
  const applies = (table: RatingTable, blowerPower: number) =>
    expectedCapacity(table, at, { blowerPower })
      .derates.filter((derate) => derate.applies)
      .map(({ cause }) => cause);
  expect(applies(gross, 0)).toEqual(['temperatures']);
  expect(applies(tableWith(), 450)).toEqual(['temperatures', 'blowerInside', 'blowerHere']);
});

test('the band that a table admits at its figures is read like them, below its lowest wet bulb as at it', () => {
  const rows = [30, 40].flatMap((outdoorDryBulb) =>
    [17, 21].map((enteringWetBulb) => ({ outdoorDryBulb, enteringWetBulb, total: 10000 })),
  );
  const table = { ...ratingTable(rows, { basis: 'net', blowerPower: 300 }), band: [0.02, 0.03, 0.04, 0.07] };
  const band = (outdoorDryBulb: number, enteringWetBulb: number) =>
    step('temperatures', table, { outdoorDryBulb, enteringWetBulb, beyond: 'extend' }).band;
  expect(band(35, 19)).toBeCloseTo(0.04, 12);
  expect(band(30, 15)).toBeCloseTo(0.02, 12);
  expect(band(35, 13)).toBeCloseTo(0.03, 12);
  // Only the wet bulb stops: outdoors the band runs on with the figures.
  expect(band(28, 17)).toBeCloseTo(0.016, 12);
});

describe('a maker’s multipliers', () => {
  test('for the indoor unit apply once, to what is printed', () => {
    expect(step('indoorMatch', tableWith({ indoorMatch: 0.95 }))).toMatchObject({ before: 10000, after: 9500 });
  });

  test('for the airflow outrank the published curve, in proportion between their lines, 1 at the table’s own flow', () => {
    const airflow = [
      { dryAirFlow: 0.8, total: 1.05, sensible: null },
      { dryAirFlow: 0.5, total: 0.9, sensible: null },
    ];
    const factor = (dryAirFlow: number) => step('airflow', tableWith({ airflow }), { dryAirFlow }).factor;
    expect(factor(0.5)).toBeCloseTo(0.9, 12);
    expect(factor(0.59)).toBeCloseTo(0.95, 12);
    expect(factor(0.68)).toBeCloseTo(1, 12);
    expect(factor(0.74)).toBeCloseTo(1.025, 12);
    expect(step('airflow', tableWith({ airflow }), { dryAirFlow: 0.59 }).source).toBe('makersTable');
    expect(codeOf(() => factor(0.45))).toBe('outsideTable');
  });

  test('for the sensible capacity are the maker’s too', () => {
    const airflow = [{ dryAirFlow: 0.5, total: 0.9, sensible: 0.8 }];
    const { sensible } = expectedCapacity(tableWith({ airflow }), { ...at, dryAirFlow: 0.5 }, { blowerPower: 300 });
    expect(sensible).toBeCloseTo(0.8 * 7200, 9);
  });

  test('for the sensible capacity hold between their lines and at each, and where one is not printed the coil’s own way does', () => {
    const sensible = (below: number | null, above: number | null, dryAirFlow: number) => {
      const airflow = [
        { dryAirFlow: 0.5, total: 0.9, sensible: below },
        { dryAirFlow: 0.8, total: 1.05, sensible: above },
      ];
      const conditions = { ...at, dryAirFlow, beyond: 'extend' as const };
      return expectedCapacity(tableWith({ airflow }), conditions, { blowerPower: 300 }).sensible! / 7200;
    };
    expect([0.5, 0.59, 0.68, 0.74, 0.8].map((dryAirFlow) => sensible(0.85, 1.05, dryAirFlow))).toEqual(
      [0.85, 0.925, 1, 1.025, 1.05].map((factor) => expect.closeTo(factor, 9)),
    );
    const own = (dryAirFlow: number) => sensible(null, null, dryAirFlow);
    expect(own(0.59)).not.toBeCloseTo(0.925, 3);
    expect(sensible(null, 1.05, 0.59)).toBe(own(0.59));
    expect(sensible(0.85, null, 0.74)).toBe(own(0.74));
    expect(sensible(0.85, 1.05, 0.45)).toBe(own(0.45));
  });

  test('for the airflow beyond their lines go on by the published curve, from the nearest of them', () => {
    const airflow = [
      { dryAirFlow: 0.5, total: 0.9, sensible: 0.85 },
      { dryAirFlow: 0.8, total: 1.05, sensible: 1.1 },
    ];
    const found = (lines: Multipliers['airflow'], dryAirFlow: number) =>
      step('airflow', tableWith({ airflow: lines }), { dryAirFlow, beyond: 'extend' });
    expect(found(airflow, 0.4)).toMatchObject({ factor: expect.closeTo(0.9 * (0.8 + 0.2 * 0.8), 12), applies: true });
    expect(found(airflow, 0.9).factor).toBeCloseTo(1.05 * (0.8 + (0.2 * 0.9) / 0.8), 12);
  });

  test('for the airflow say which airflows the table covers, wider or narrower than the curve’s', () => {
    const airflow = [
      { dryAirFlow: 0.6, total: 0.95, sensible: null },
      { dryAirFlow: 1, total: 1.1, sensible: null },
    ];
    const table = tableWith({ airflow });
    const covered = [0.59, 0.6, 1, 1.01].map((dryAirFlow) => codeOf(() => step('airflow', table, { dryAirFlow })));
    expect(covered).toEqual(['outsideTable', null, null, 'outsideTable']);
    expect(tableRange(table, 'dryAirFlow')).toEqual([0.6, 1]);
    expect(tableRange(tableWith(), 'dryAirFlow')).toEqual([0.7 * flow, 1.3 * flow]);
  });

  test('for one airflow alone, of a table that states none, hold at that and follow the curve from there', () => {
    const { dryAirFlow: _, ...bare } = row;
    const table = tableWith({ airflow: [{ dryAirFlow: 0.6, total: 0.95, sensible: 0.9 }] }, [bare]);
    expect(tableRange(table, 'dryAirFlow')).toEqual([0.6, 0.6]);
    const found = (dryAirFlow: number) =>
      expectedCapacity(table, { ...at, dryAirFlow, beyond: 'extend' }, { blowerPower: 300 });
    expect(found(0.6).total).toBeCloseTo(0.95 * 10000, 9);
    expect(found(0.6).sensible).toBeCloseTo(0.9 * 7200, 9);
    expect(found(0.66).total).toBeCloseTo(0.95 * (0.8 + 0.2 * 1.1) * 10000, 9);
    expect(found(0.66).sensible).not.toBeCloseTo(0.9 * 7200, -1);
  });

  test('for the airflow of published curves are those curves’', () => {
    const generic = genericRating({ total: 10000, basis: 'net', blowerPower: 300, unit: 'heatPump', stage: 'one' });
    const [low] = tableRange(generic, 'dryAirFlow')!;
    expect(step('airflow', generic, { dryAirFlow: 1.1 * low }).source).toBe('genericCurves');
  });

  test('for the line length outrank what the line set works out to', () => {
    const lineSet = { factor: 0.9, low: 0.88, high: 0.92, source: 'commonPractice' } as const;
    expect(step('lineSet', tableWith(), {}, { lineSet })).toMatchObject({ factor: 0.9, source: 'commonPractice' });
    expect(step('lineSet', tableWith(), {}, { lineSet }).band).toBeCloseTo(0.02 / 0.9, 12);
    const own = step('lineSet', tableWith({ lineLength: 0.98 }), {}, { lineSet });
    expect(own).toMatchObject({ factor: 0.98, band: 0, source: 'makersTable', before: 10300 });
  });

  test.each([
    [{ indoorMatch: 0 }, 'outOfRange'],
    [{ lineLength: Number.NaN }, 'notFinite'],
    [{ airflow: [{ dryAirFlow: 0.5, total: 9, sensible: null }] }, 'outOfRange'],
    [
      {
        airflow: [
          { dryAirFlow: 0.5, total: 0.9, sensible: null },
          { dryAirFlow: 0.5, total: 0.8, sensible: null },
        ],
      },
      'notAscending',
    ],
  ])('that no maker prints are refused: %o', (multipliers, code) => {
    expect(codeOf(() => tableWith(multipliers))).toBe(code);
  });

  test('and line sets that no line has', () => {
    const lineSet = { factor: 0.9, low: 0.95, high: 0.92, source: 'commonPractice' } as const;
    expect(codeOf(() => step('lineSet', tableWith(), {}, { lineSet }))).toBe('outOfRange');
  });
});
