import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  atOtherAirflows,
  atOtherAirflowsByCoil,
  type DuctSystem,
  ductSystem,
  expectedCapacity,
  genericRating,
  moistAir,
  noMultipliers,
  partlyShut,
  ratingTable,
  systemStatic,
} from '../../../src/calc/index.ts';
import { errorOf, fanTable } from './support.ts';

const entering = moistAir({ dryBulb: 26.7, wetBulb: 19.4 });
const conditions = { outdoorDryBulb: 35, enteringWetBulb: 19.4, enteringDryBulb: 26.7, dryAirFlow: 0.68 };
const row = { outdoorDryBulb: 35, enteringWetBulb: 19.4, enteringDryBulb: 26.7, total: 10000, sensible: 7500 };
const gross = { basis: 'gross', blowerPower: 0 } as const;
const noBlower = { blowerPower: 0 };

describe('atOtherAirflows', () => {
  test('a table that states no airflow stands for the one here: 0.96 of the capacity at 0.8 of the air (known: read)', () => {
    const answers = atOtherAirflows(ratingTable([row], gross), conditions, noBlower);
    const totals = answers.map((one) => (one.ok ? one.value.total : null));
    expect(totals).toEqual([9600, 9800, 10000, 10200, 10400].map((value) => expect.closeTo(value, 6)));
    const shares = answers.map((one) => (one.ok ? one.value.sensibleHeatRatio : null));
    for (let i = 1; i < shares.length; i++) expect(shares[i]!).toBeGreaterThan(shares[i - 1]!);
    expect(answers.every((one) => one.ok && one.value.source === 'flowCurve')).toBe(true);
  });

  test('a table with two blocks is read between them, and not beyond', () => {
    const rows = [
      { ...row, dryAirFlow: 0.6, total: 9500 },
      { ...row, dryAirFlow: 0.7, total: 10100 },
    ];
    const answers = atOtherAirflows(
      ratingTable(rows, gross),
      { ...conditions, dryAirFlow: 0.65 },
      noBlower,
      [0.95, 1, 1.3],
    );
    expect(answers.map((one) => (one.ok ? one.value.total : one.problem?.code))).toEqual([
      expect.closeTo(9500 + (600 * (0.6175 - 0.6)) / 0.1, 6),
      expect.closeTo(9800, 6),
      'outsideTable',
    ]);
    expect(answers[0]).toMatchObject({ value: { source: 'makersTable' } });
  });

  test('a rating from published curves answers with its own factors and its band', () => {
    const table = genericRating({
      total: 10000,
      basis: 'gross',
      blowerPower: 0,
      unit: 'airConditioner',
      stage: 'one',
    });
    const dryAirFlow = table.axes.dryAirFlow[0]!;
    const [less, same] = atOtherAirflows(table, { ...conditions, dryAirFlow }, noBlower, [0.8, 1]);
    const total = (one: typeof less) => (one?.ok ? one.value.total : Number.NaN);
    // NREL/TP-5500-56354: 0.96431 at 0.8 of the air mass flow, one speed (known: second-hand).
    expect(total(less) / total(same)).toBeCloseTo(0.96431, 3);
    expect(less).toMatchObject({ value: { source: 'genericCurves', band: expect.any(Number) } });
  });

  const totalAt = (table: Parameters<typeof atOtherAirflows>[0], dryAirFlow: number, factor = 1) => {
    const [one] = atOtherAirflows(table, { ...conditions, dryAirFlow }, noBlower, [factor]);
    return one?.ok ? one.value : null;
  };

  test('a table that states one airflow stands for that, not for the one here', () => {
    const table = ratingTable([{ ...row, dryAirFlow: 0.68 }], gross);
    expect(totalAt(table, 0.6)?.total).toBeCloseTo(10000 * (0.8 + (0.2 * 0.6) / 0.68), 6);
    expect(totalAt(table, 0.6)?.source).toBe('flowCurve');
  });

  test('a maker’s own factors outrank the curve, with an airflow stated or without', () => {
    const airflow = [
      { dryAirFlow: 0.6, total: 0.97, sensible: null },
      { dryAirFlow: 0.8, total: 1.01, sensible: null },
    ];
    const options = { ...gross, multipliers: { ...noMultipliers, airflow } };
    const [bare, stated] = [ratingTable([row], options), ratingTable([{ ...row, dryAirFlow: 0.68 }], options)];
    for (const table of [bare, stated])
      expect(totalAt(table, 0.6)).toMatchObject({ total: expect.closeTo(9700, 6), source: 'makersTable' });
    expect(totalAt(bare, 0.5, 1.4)?.total).toBeCloseTo(9900, 6);
    // The airflow that is stated has the factor 1: 0.7 is a sixth of the way from there to 0.8.
    expect(totalAt(stated, 0.5, 1.4)?.total).toBeCloseTo(10000 + 100 / 6, 6);
  });

  test('the band is that of all steps together, by roots of squares', () => {
    const table = genericRating({ total: 10000, basis: 'gross', blowerPower: 0, unit: 'heatPump', stage: 'one' });
    const dryAirFlow = 0.9 * table.axes.dryAirFlow[0]!;
    const { derates } = expectedCapacity(table, { ...conditions, dryAirFlow }, noBlower);
    const sum = derates.reduce((squares, { band }) => squares + band ** 2, 0);
    expect(sum).toBeGreaterThan(0);
    expect(totalAt(table, dryAirFlow)?.band).toBeCloseTo(Math.sqrt(sum), 12);
  });

  test('the sensible ratio is sensible over total', () => {
    const found = totalAt(ratingTable([row], gross), 0.68);
    expect(found?.sensible).toBeCloseTo(7500, 6);
    expect(found?.sensibleHeatRatio).toBeCloseTo(0.75, 9);
  });

  test('without sensible figures there is no ratio', () => {
    const { sensible: _, ...bare } = row;
    const [one] = atOtherAirflows(ratingTable([bare], gross), conditions, noBlower, [1]);
    expect(one).toMatchObject({ ok: true, value: { sensible: null, sensibleHeatRatio: null } });
  });
});

describe('atOtherAirflowsByCoil', () => {
  const duty = { entering, dryAirFlow: 0.68, total: 10000 };

  test('more air dries less: the sensible share rises with the airflow', () => {
    const answers = atOtherAirflowsByCoil(duty, 0.12);
    const shares = answers.map((one) => (one.ok ? one.value.sensibleHeatRatio! : Number.NaN));
    for (let i = 1; i < shares.length; i++) expect(shares[i]!).toBeGreaterThan(shares[i - 1]!);
    expect(answers.map((one) => (one.ok ? one.value.total : 0))).toEqual(
      [9600, 9800, 10000, 10200, 10400].map((value) => expect.closeTo(value, 6)),
    );
  });

  test('stops where the curves stop, and refuses a bypass factor that is none', () => {
    const [less, more] = atOtherAirflowsByCoil(duty, 0.12, [0.6, 1.4]);
    expect([less, more].map((one) => (one?.ok === false ? one.problem?.code : null))).toEqual([
      'outsideTable',
      'outsideTable',
    ]);
    for (const ends of [0.7, 1.3]) expect(atOtherAirflowsByCoil(duty, 0.12, [ends])[0]?.ok).toBe(true);
    for (const none of [0, 1, 1.2])
      expect(errorOf(() => atOtherAirflowsByCoil(duty, none))).toEqual(['outOfRange', 'bypassFactor']);
  });

  test('refuses a total that is none, and has a problem with an airflow that is none', () => {
    expect(errorOf(() => atOtherAirflowsByCoil({ ...duty, total: 0 }, 0.12))).toEqual(['outOfRange', 'total']);
    expect(atOtherAirflowsByCoil({ ...duty, dryAirFlow: 2000 }, 0.12, [1])[0]).toMatchObject({
      problem: { code: 'outOfRange', quantity: 'dryAirFlow' },
    });
  });

  test('says nothing of the sensible part where no surface could be so cold', () => {
    expect(atOtherAirflowsByCoil({ ...duty, total: 100e3 }, 0.12, [1])[0]).toMatchObject({
      ok: true,
      value: { total: 100e3, sensible: null, sensibleHeatRatio: null, band: null },
    });
  });
});

describe('ductSystem', () => {
  const ducts: DuctSystem = {
    table: fanTable,
    column: 0,
    flow: 0.57,
    parts: [
      { drop: 60, times: 1 },
      { drop: 64.5, times: 1 },
    ],
  };

  test('finds the point that was measured, and less air behind a dirty filter', () => {
    const dirty = ductSystem({ ...ducts, parts: [ducts.parts[0]!, { drop: 64.5, times: 1.5 }] });
    expect(dirty.before.flow).toBeCloseTo(0.57, 3);
    expect(dirty.before.static).toBeCloseTo(124.5, 0);
    expect(dirty.after.static).toBeGreaterThan(dirty.before.static);
    expect(dirty.change).toBeLessThan(-0.02);
    expect(ductSystem(ducts).change).toBe(0);
  });

  test('the point lies on both curves', () => {
    const times = fc.double({ min: 0.7, max: 1.6, noNaN: true });
    fc.assert(
      fc.property(times, (factor) => {
        const parts = [
          { drop: 60, times: 1 },
          { drop: 64.5, times: factor },
        ];
        const { after } = ductSystem({ ...ducts, parts });
        expect(systemStatic({ flow: 0.57, parts }, after.flow)).toBeCloseTo(after.static, 4);
      }),
    );
  });

  test('shutting a quarter of equal branches makes them resist 1.78 times as much', () => {
    expect(partlyShut(0.25)).toBeCloseTo(16 / 9, 12);
    expect(partlyShut(0)).toBe(1);
    expect(errorOf(() => partlyShut(1))).toEqual(['outOfRange', 'share']);
  });

  test.each([
    [
      'ducts that take more than the table prints',
      { parts: [{ drop: 125, times: 9 }] },
      ['outsideTable', 'externalStatic'],
    ],
    ['ducts that take next to nothing', { parts: [{ drop: 125, times: 0.01 }] }, ['outsideTable', 'externalStatic']],
    ['a curve that rises', { column: 1 }, ['notDescending', 'fanTable.1']],
    ['a part below nothing', { parts: [{ drop: -1, times: 1 }] }, ['outOfRange', 'parts.0.drop']],
    ['an exponent of 7', { exponent: 7 }, ['outOfRange', 'exponent']],
    ['no flow', { flow: 0 }, ['outOfRange', 'flow']],
  ])('refuses %s', (_, change, error) => {
    expect(errorOf(() => ductSystem({ ...ducts, ...change }))).toEqual(error);
  });
});
