/** Where the rules of the airflow methods begin and end: a figure on either side of each edge, and what is said of it. */
import { describe, expect, test } from 'vitest';
import { missingCause } from '../../../src/calc/airflow/cells.ts';
import {
  airflowFromHood,
  ductSystem,
  type FanTable,
  fanFlowAt,
  holdsAirflow,
  inchOfWater,
} from '../../../src/calc/index.ts';
import { errorOf, fanTable, standardAir } from './support.ts';

const column = (...rows: readonly (readonly [inches: number, flow: number | null])[]): FanTable => ({
  statics: rows.map(([inches]) => inches * inchOfWater),
  speeds: [{ name: 'one', flows: rows.map(([, flow]) => flow) }],
});

describe('a column that holds its airflow', () => {
  test.each([
    ['falls by a little less than 4 % to either side', column([0.1, 2.07], [0.5, 2], [1, 1.92]), true],
    ['falls by a little more', column([0.1, 2.09], [0.5, 2], [1, 1.92]), false],
    ['falls beyond the plateau only', column([0.08, 3], [0.1, 2], [0.5, 2], [1, 2], [1.04, 1]), true],
    ['falls where a row is printed just within 0.1 in. w.c.', column([0.095, 3], [0.5, 2], [1, 2]), false],
    ['falls where a row is printed just within 1 in. w.c.', column([0.1, 2], [0.5, 2], [1.01, 1]), false],
    ['is printed over two fifths of the plateau', column([0.2, 2], [0.57, 2]), true],
    ['is printed over less than that', column([0.2, 2], [0.55, 2]), null],
    ['has one row on the plateau', column([0.01, 2], [0.5, 2], [1.5, 2]), null],
    ['has none there', column([0.01, 2], [0.05, 2]), null],
  ])('%s', (_, table, holds) => {
    expect(holdsAirflow(table, 0)).toBe(holds);
  });
});

describe('a point of a column', () => {
  const table = column([0.1, 0.6], [0.3, 0.5], [0.5, null], [0.7, 0.4]);
  const [low, middle, , high] = table.statics as [number, number, number, number];

  test('is read at both ends, and a hair outside no more', () => {
    expect(fanFlowAt(table, 0, low).flow).toBeCloseTo(0.6, 9);
    expect(fanFlowAt(table, 0, high).flow).toBeCloseTo(0.4, 9);
    expect(errorOf(() => fanFlowAt(table, 0, low - 1e-4))).toEqual(['outsideTable', 'externalStatic']);
    expect(errorOf(() => fanFlowAt(table, 0, high + 1e-4))).toEqual(['outsideTable', 'externalStatic']);
  });

  test('that stands on a row is that row, although there is a gap behind it', () => {
    const found = fanFlowAt(table, 0, middle);
    expect([found.low.flow, found.high.flow]).toEqual([0.6, 0.5]);
    expect(found.flow).toBeCloseTo(0.5, 9);
    expect(found.slope).toBeCloseTo(-0.1 / (0.2 * inchOfWater), 12);
    expect(errorOf(() => fanFlowAt(table, 0, middle + 1e-4))).toEqual(['hole', 'externalStatic']);
  });

  test('needs two rows, a speed that is there, and flows that can be', () => {
    expect(errorOf(() => fanFlowAt(column([0.1, 0.6], [0.3, null]), 0, 30))).toEqual(['noRows', 'fanTable']);
    expect(errorOf(() => fanFlowAt(column([0.1, null], [0.3, null]), 0, 30))).toEqual(['noRows', 'fanTable']);
    expect(errorOf(() => fanFlowAt(table, 1, 30))).toEqual(['missing', 'speed']);
    expect(errorOf(() => fanFlowAt(column([0.1, 1e6], [0.3, 0.5]), 0, 30))?.[0]).toBe('outOfRange');
  });
});

describe('ducts on a blower', () => {
  const system = { table: fanTable, column: 0, flow: 0.57, parts: [{ drop: 100, times: 1 }] };

  test('meet it where it moves what they take', () => {
    const { before, after, change } = ductSystem({ ...system, parts: [{ drop: 100, times: 1.5 }] });
    for (const [{ flow, static: at }, drop] of [
      [before, 100],
      [after, 150],
    ] as const) {
      expect(at).toBeCloseTo(drop * (flow / 0.57) ** 2, 6);
      expect(flow).toBeCloseTo(fanFlowAt(fanTable, 0, at).flow, 9);
    }
    expect(change).toBeCloseTo(after.flow / before.flow - 1, 12);
  });

  test.each([
    ['ducts that take more than is printed', { parts: [{ drop: 300, times: 1 }] }, ['outsideTable', 'externalStatic']],
    ['ducts that take less', { parts: [{ drop: 1, times: 1 }] }, ['outsideTable', 'externalStatic']],
    ['a column of one row', { table: column([0.1, 0.6], [0.3, null]) }, ['noRows', 'fanTable']],
    ['a column of none', { table: column([0.1, null], [0.3, null]) }, ['noRows', 'fanTable']],
    ['a curve that rises', { table: column([0.1, 0.5], [0.5, 0.6]) }, ['notDescending', 'fanTable.1']],
    ['a table whose pressures fall', { table: column([0.5, 0.5], [0.1, 0.6]) }, ['notAscending', 'fanTable.statics.1']],
    ['an exponent of none', { exponent: 0.9 }, ['outOfRange', 'exponent']],
    ['no flow', { flow: 0 }, ['outOfRange', 'flow']],
    ['a part that gives pressure', { parts: [{ drop: -5000, times: 1 }] }, ['outOfRange', 'parts.0.drop']],
    [
      'a part that is there less than not at all',
      { parts: [{ drop: 50, times: -1 }] },
      ['outOfRange', 'parts.0.times'],
    ],
  ])('%s: refused', (_, change, error) => {
    expect(errorOf(() => ductSystem({ ...system, ...change }))).toEqual(error);
  });

  test('a curve that is level for a while is one that falls', () => {
    const level = column([0.1, 0.6], [0.3, 0.6], [0.9, 0.4]);
    expect(ductSystem({ ...system, table: level, flow: 0.6 }).before.flow).toBeGreaterThan(0.4);
  });
});

describe('cells that were not read', () => {
  const u = (values: readonly number[], missing: number) => missingCause('some', values, missing)[0]?.u;
  const root3 = Math.sqrt(3);

  test.each([
    ['cells that are alike leave a fifth open', [3, 3.1, 2.9], 0.25, (0.25 * 0.2) / root3],
    ['a cell far above leaves its distance open', [2, 2, 5], 0.5, (0.5 * (5 / 3 - 1)) / root3],
    ['a cell far below leaves its distance open', [1, 4, 4], 0.5, (0.5 * (1 - 1 / 3)) / root3],
  ])('%s', (_, values, missing, expected) => {
    expect(u(values, missing)).toBeCloseTo(expected, 12);
  });

  test('a full grid leaves nothing open', () => {
    expect(missingCause('some', [1, 9], 0)).toEqual([]);
  });

  test('a bad cell is a problem of the answer, and of a grid of bad cells nothing is left', () => {
    const hood = (returns: readonly (number | null)[]) =>
      airflowFromHood({
        returns,
        hood: 'plain',
        shownAs: 'uncorrected',
        covers: true,
        ductsTight: true,
        air: standardAir,
      });
    expect(hood([0.3, -1]).problems).toMatchObject([{ code: 'outOfRange', quantity: 'returns.1' }]);
    expect(errorOf(() => hood([-1, -1]))).toEqual(['outOfRange', 'returns.0']);
    expect(errorOf(() => hood([null, null]))).toEqual(['missing', 'returns']);
    expect(errorOf(() => hood([]))?.[0]).toBe('missing');
  });
});
