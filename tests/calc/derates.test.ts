import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type DerateCause,
  expectedCapacity,
  expectedTotal,
  type Installation,
  type Multipliers,
  noMultipliers,
  type RatingRow,
  ratingTable,
  standardPressure,
  standardPressureAtSeaLevel,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const flow = 0.68;
const row: RatingRow = {
  outdoorDryBulb: 35,
  enteringWetBulb: 19.4,
  enteringDryBulb: 26.7,
  dryAirFlow: flow,
  total: 10000,
  sensible: 7200,
};
const at = { outdoorDryBulb: 35, enteringWetBulb: 19.4, enteringDryBulb: 26.7, dryAirFlow: flow };
const tableWith = (multipliers: Partial<Multipliers> = {}, rows: readonly RatingRow[] = [row]) =>
  ratingTable(rows, { basis: 'net', blowerPower: 300, multipliers: { ...noMultipliers, ...multipliers } });
const step = (cause: DerateCause, table = tableWith(), conditions: object = {}, installation: object = {}) => {
  const found = expectedCapacity(table, { ...at, ...conditions }, { blowerPower: 450, ...installation }).derates.find(
    (derate) => derate.cause === cause,
  );
  if (!found) throw new Error(`no step ${cause}`);
  return found;
};

const anyPressure = fc.double({ min: 70e3, max: 103e3, noNaN: true });

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

describe('altitude', () => {
  const blocks = [
    row,
    { ...row, dryAirFlow: 0.5, total: 9300, sensible: 6300 },
    { ...row, dryAirFlow: 0.9, total: 10700, sensible: 8300 },
  ];
  const airflow = [
    { dryAirFlow: 0.5, total: 0.93, sensible: null },
    { dryAirFlow: 0.9, total: 1.06, sensible: null },
  ];
  const tables = [
    ['the published curve', tableWith()],
    ['the maker’s multipliers', tableWith({ airflow })],
    ['blocks of airflow', tableWith({}, blocks)],
  ] as const;

  test.each(tables)(
    'counts once: with %s the airflow and the altitude step together are that of the mass',
    (_, table) => {
      fc.assert(
        fc.property(anyPressure, fc.double({ min: 0.55, max: 0.75, noNaN: true }), (pressure, dryAirFlow) => {
          const conditions = { ...at, dryAirFlow, beyond: 'extend' as const };
          const high = expectedTotal(table, conditions, { blowerPower: 450, pressure });
          expect(high).toBeCloseTo(expectedTotal(table, conditions, { blowerPower: 450 }), 6);
        }),
      );
    },
  );

  test('reads the airflow step at the measured volume as if at sea level', () => {
    const pressure = standardPressure(1609.344);
    const ratio = pressure / standardPressureAtSeaLevel;
    // The same volume as the table's, which holds less mass up here.
    const conditions = { dryAirFlow: flow * ratio };
    expect(step('airflow', tableWith(), conditions, { pressure }).factor).toBeCloseTo(1, 12);
    const { factor, band, applies } = step('altitude', tableWith(), conditions, { pressure });
    expect(applies).toBe(true);
    expect(factor).toBeCloseTo(0.8 + 0.2 * ratio, 12);
    expect(band).toBeGreaterThan(0.02);
    expect(band).toBeLessThan(0.022);
  });

  test('leaves the table only where the volume and its mass both do', () => {
    const covered = (dryAirFlow: number, pressure: number) =>
      codeOf(() => step('altitude', tableWith({}, blocks), { dryAirFlow }, { pressure }));
    const half = 0.8 * standardPressureAtSeaLevel;
    expect(covered(0.45, half)).toBeNull();
    expect(covered(0.85, half)).toBeNull();
    expect(covered(0.39, half)).toBe('outsideTable');
    expect(covered(0.91, half)).toBe('outsideTable');
    expect(covered(0.45, standardPressureAtSeaLevel)).toBe('outsideTable');
  });

  test('is a band alone where the table states no airflow, and nothing at sea level', () => {
    const { dryAirFlow: _, ...bare } = row;
    expect(step('altitude', tableWith({}, [bare]), {}, { pressure: 84e3 })).toMatchObject({ factor: 1, applies: true });
    expect(step('altitude', tableWith({}, [bare]), {}, { pressure: 84e3 }).band).toBeGreaterThan(0.015);
    expect(step('altitude')).toMatchObject({ factor: 1, band: 0, applies: false });
  });

  test('the sensible share rises with thinner air: the same volume, the same wet bulb', () => {
    const share = ({ pressure }: Pick<Installation, 'pressure'>) => {
      const ratio = (pressure ?? 0) / standardPressureAtSeaLevel;
      const { sensible, total } = expectedCapacity(
        tableWith(),
        { ...at, dryAirFlow: flow * ratio },
        { blowerPower: 300, pressure: pressure ?? 0 },
      );
      return (sensible ?? Number.NaN) / total;
    };
    expect(share({ pressure: 84e3 })).toBeLessThan(share({ pressure: standardPressureAtSeaLevel }));
  });

  test('refuses a pressure that is none', () => {
    expect(codeOf(() => step('altitude', tableWith(), {}, { pressure: 10 }))).toBe('outOfRange');
  });
});
