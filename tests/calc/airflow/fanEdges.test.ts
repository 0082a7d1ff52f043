/** Tables of blowers that cannot be read, motors that are not what their column looks like, and ducts at the ends of a curve. */
import { describe, expect, test } from 'vitest';
import { airflowFromFanTable, ductSystem, type FanTable, type FanTableReading } from '../../../src/calc/index.ts';
import { errorOf, fanTable, fanReading as reading } from './support.ts';

describe('a fan table is refused', () => {
  test.each<[string, Partial<FanTable>, readonly [string, string]]>([
    ['without a speed', { speeds: [] }, ['noRows', 'fanTable']],
    ['with one pressure twice', { statics: [25, 75, 75, 175, 225] }, ['notAscending', 'fanTable.statics.2']],
    ['with a pressure below nothing', { statics: [-1, 75, 125, 175, 225] }, ['outOfRange', 'fanTable.statics.0']],
    [
      'with a pressure that is no number',
      { statics: [25, 75, Number.NaN, 175, 225] },
      ['notFinite', 'fanTable.statics.2'],
    ],
  ])('%s', (_, change, error) => {
    expect(errorOf(() => airflowFromFanTable({ ...reading, table: { ...fanTable, ...change } }))).toEqual(error);
  });

  test('for a speed that it does not have, with the speeds that it has', () => {
    expect(() => airflowFromFanTable({ ...reading, column: 2 })).toThrow(
      expect.objectContaining({ code: 'missing', quantity: 'speed', value: 2, min: 0, max: 1 }),
    );
  });
});

test.each(['supplyStatic', 'returnStatic'] as const)('a %s that cannot be is named', (side) => {
  expect(errorOf(() => airflowFromFanTable({ ...reading, [side]: 6000 }))).toEqual(['outOfRange', side]);
  expect(errorOf(() => airflowFromFanTable({ ...reading, [side]: Number.NaN }))).toEqual(['notFinite', side]);
});

test('a motor is what was said of it, whatever its column looks like', () => {
  const motor = (column: number, said: FanTableReading['motor']) =>
    airflowFromFanTable({ ...reading, column, motor: said }).motor;
  expect([motor(0, 'constantAirflow'), motor(1, 'fixedSpeed')]).toEqual(['constantAirflow', 'fixedSpeed']);
  expect([motor(0, 'unsure'), motor(1, 'unsure')]).toEqual(['fixedSpeed', 'constantAirflow']);
});

describe('ducts on a blower', () => {
  const table: FanTable = { statics: [50, 100, 150], speeds: [{ name: 'one', flows: [0.6, 0.55, 0.5] }] };
  const system = { table, column: 0 };

  test.each([
    [0.6, 50],
    [0.5, 150],
  ])('may meet it on a printed row at the end of its curve: %s m³/s at %s Pa', (flow, drop) => {
    const { before } = ductSystem({ ...system, flow, parts: [{ drop, times: 1 }] });
    expect(before.flow).toBeCloseTo(flow, 6);
    expect(before.static).toBeCloseTo(drop, 6);
  });

  test.each([
    ['more than the last row', 0.5, 151],
    ['less than the first row', 0.6, 49],
  ])('that take %s are refused with what they take at it', (_, flow, drop) => {
    expect(() => ductSystem({ ...system, flow, parts: [{ drop, times: 1 }] })).toThrow(
      expect.objectContaining({ code: 'outsideTable', quantity: 'externalStatic', value: drop, min: 50, max: 150 }),
    );
  });
});
