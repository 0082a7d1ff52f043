import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airflowFromFanTable,
  type FanTable,
  type FanTableReading,
  fanFlowAt,
  foot,
  holdsAirflow,
  inchOfWater,
  standardPressure,
} from '../../../src/calc/index.ts';
import { codes, errorOf, fanTable, standardAir, stepsOf } from './support.ts';

const sea = standardPressure(0);
const high = standardPressure(5000 * foot);
const reading: FanTableReading = {
  table: fanTable,
  column: 0,
  motor: 'fixedSpeed',
  supplyStatic: 0.2 * inchOfWater,
  returnStatic: -0.2 * inchOfWater,
  pressure: sea,
  air: standardAir,
};
const withStatic = (inches: number) => ({ supplyStatic: inches * inchOfWater, returnStatic: 0 });

describe('airflowFromFanTable', () => {
  test('adds both static pressures whatever their signs, and reads between two rows', () => {
    for (const [supplyStatic, returnStatic] of [
      [50, -50],
      [50, 50],
      [-20, 80],
    ]) {
      const answer = airflowFromFanTable({ ...reading, supplyStatic: supplyStatic!, returnStatic: returnStatic! });
      expect(answer.externalStatic).toBe(100);
    }
    expect(airflowFromFanTable(reading).volumeFlow).toBeCloseTo((0.62 + 0.57) / 2, 12);
    expect(airflowFromFanTable(reading).columns).toEqual([expect.closeTo(0.595, 9), expect.closeTo(0.57, 9)]);
  });

  test('at 5 000 ft a fixed-speed fan is read at 0.67 in. w.c. where 0.56 was measured, and moves that actual volume', () => {
    const answer = airflowFromFanTable({ ...reading, ...withStatic(0.56), pressure: high });
    expect(answer.tableStatic / inchOfWater).toBeCloseTo(0.67, 2);
    expect(answer.volumeFlow).toBe(fanFlowAt(fanTable, 0, answer.tableStatic).flow);
    expect(answer.at).toEqual({ specificVolume: standardAir.specificVolume });
    expect(answer.sources.find(({ name }) => name === 'fanTable.altitude')).toBeUndefined();
  });

  test('a motor that holds its airflow gets a wide band up there: it may hold the volume or the mass', () => {
    const low = airflowFromFanTable({ ...reading, column: 1, motor: 'constantAirflow' });
    const up = airflowFromFanTable({ ...reading, column: 1, motor: 'constantAirflow', pressure: high });
    const ratio = high / sea;
    expect(up.volumeFlow / low.volumeFlow).toBeCloseTo((1 + 1 / ratio) / 2, 9);
    expect(up.tableStatic).toBe(up.externalStatic);
    const half = (1 / ratio - 1) / (1 / ratio + 1);
    expect(up.sources.find(({ name }) => name === 'fanTable.altitude')?.u).toBeCloseTo(half / Math.sqrt(3), 12);
    expect(up.u).toBeGreaterThan(1.2 * low.u);
    expect(codes(up)).toEqual(['fanHoldsAirflow', 'motorAtAltitude']);
  });

  test('knows a motor that holds its airflow by its column', () => {
    expect([0, 1].map((column) => holdsAirflow(fanTable, column))).toEqual([false, true]);
    const short: FanTable = { statics: [25, 60], speeds: [{ name: 'one', flows: [0.5, 0.5] }] };
    expect(holdsAirflow(short, 0)).toBeNull();
    expect(airflowFromFanTable({ ...reading, column: 1, motor: 'unsure' }).motor).toBe('constantAirflow');
    expect(airflowFromFanTable({ ...reading, motor: 'unsure' }).motor).toBe('fixedSpeed');
    expect(codes(airflowFromFanTable({ ...reading, column: 1 }))).toEqual(['fanSeemsToHold']);
    expect(codes(airflowFromFanTable({ ...reading, motor: 'constantAirflow' }))).toEqual(['fanDoesNotHold']);
  });

  test('a motor that nothing is known of may be either: every reading is in its band', () => {
    const short: FanTable = { statics: [25, 100], speeds: [{ name: 'one', flows: [0.6, 0.5] }] };
    const unsure = {
      ...reading,
      table: short,
      motor: 'unsure',
      supplyStatic: 50,
      returnStatic: 0,
      pressure: 0.8 * sea,
    } as const;
    const answer = airflowFromFanTable(unsure);
    const fixed = airflowFromFanTable({ ...unsure, motor: 'fixedSpeed' });
    const mass = fanFlowAt(short, 0, 50).flow / 0.8;
    expect(answer.motor).toBe('unsure');
    expect(answer.volumeFlow).toBeCloseTo((fixed.volumeFlow + mass) / 2, 12);
  });

  test('says when the pressure is high, and when it is past what such a motor holds', () => {
    const tall: FanTable = { statics: [25, 100, 200, 300], speeds: [{ name: 'one', flows: [0.5, 0.5, 0.5, 0.4] }] };
    const answer = airflowFromFanTable({
      ...reading,
      table: tall,
      motor: 'constantAirflow',
      supplyStatic: 200,
      returnStatic: -60,
    });
    expect(codes(answer)).toEqual(['highExternalStatic', 'fanHoldsAirflow', 'pastPlateau']);
  });

  test.each([
    ['a static beyond the table', withStatic(0.95), ['outsideTable', 'externalStatic']],
    ['a static where this column has ended', withStatic(0.8), ['outsideTable', 'externalStatic']],
    ['a static before the table', withStatic(0.05), ['outsideTable', 'externalStatic']],
    ['a speed that is not there', { column: 5 }, ['missing', 'speed']],
    ['a pressure of the weather report in hPa', { pressure: 1013 }, ['outOfRange', 'pressure']],
    ['a static that is no number', { supplyStatic: Number.NaN }, ['notFinite', 'supplyStatic']],
    [
      'a table upside down',
      { table: { ...fanTable, statics: [...fanTable.statics].reverse() } },
      ['notAscending', 'fanTable.statics.1'],
    ],
    [
      'a column too short',
      { table: { ...fanTable, speeds: [{ name: 'one', flows: [0.5] }] } },
      ['wrongLength', 'fanTable.speeds.0'],
    ],
    [
      'a flow below zero',
      { table: { ...fanTable, speeds: [{ name: 'one', flows: [0.5, -1, 0.4, 0.3, 0.2] }] } },
      ['outOfRange', 'fanTable.speeds.0.1'],
    ],
    ['one row', { table: { statics: [100], speeds: fanTable.speeds } }, ['noRows', 'fanTable']],
    [
      'a gap in the column',
      { table: { ...fanTable, speeds: [{ name: 'one', flows: [0.6, null, 0.5, 0.4, 0.3] }] } },
      ['hole', 'externalStatic'],
    ],
  ] satisfies [string, Partial<FanTableReading>, readonly [string, string]][])('refuses %s', (_, change, error) => {
    expect(errorOf(() => airflowFromFanTable({ ...reading, ...change }))).toEqual(error);
  });

  test('a bad figure in a column that does not run stops nothing', () => {
    const other = { name: 'other', flows: [0.5, -1, 0.4, 0.3, 0.2] };
    const answer = airflowFromFanTable({ ...reading, table: { ...fanTable, speeds: [fanTable.speeds[0]!, other] } });
    expect(answer.columns).toEqual([expect.closeTo(0.595, 9), null]);
  });

  test('a printed row beside a gap is read all the same', () => {
    const gapped: FanTable = { ...fanTable, speeds: [{ name: 'one', flows: [0.6, null, 0.5, 0.4, 0.3] }] };
    expect(fanFlowAt(gapped, 0, 0.5 * inchOfWater).flow).toBeCloseTo(0.5, 12);
    expect(fanFlowAt(gapped, 0, 0.1 * inchOfWater).flow).toBeCloseTo(0.6, 12);
  });

  test('inside a falling column the answer lies between the rows and falls with the pressure', () => {
    const inside = fc.double({ min: 0.1, max: 0.7, noNaN: true });
    fc.assert(
      fc.property(inside, inside, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map(
          (one) => fanFlowAt(fanTable, 0, one * inchOfWater).flow,
        );
        expect(less!).toBeGreaterThanOrEqual(more! - 1e-12);
        expect(less! <= 0.66 + 1e-12 && more! >= 0.5 - 1e-12).toBe(true);
      }),
    );
  });

  test('shows the pressure, the density and the two rows', () => {
    const steps = stepsOf((t) => airflowFromFanTable({ ...reading, pressure: high }, t));
    expect(steps.map(({ id }) => id)).toEqual([
      'airflow.fanTable.external',
      'airflow.fanTable.density',
      'airflow.fanTable.read',
      'dryAirFlow.actual',
      'airflow.fanTable.uncertainty',
    ]);
    const constant = stepsOf((t) =>
      airflowFromFanTable({ ...reading, column: 1, motor: 'constantAirflow', pressure: high }, t),
    );
    expect(constant.map(({ id }) => id)).toContain('airflow.fanTable.altitude');
  });
});
