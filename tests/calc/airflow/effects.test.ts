import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  atOtherAirflows,
  atOtherAirflowsByCoil,
  type DuctSystem,
  ductSystem,
  genericRating,
  moistAir,
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
    expect(errorOf(() => atOtherAirflowsByCoil(duty, 1.2))).toEqual(['outOfRange', 'bypassFactor']);
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
