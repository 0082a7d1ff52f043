import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  expectedCapacity,
  expectedTotal,
  type Installation,
  standardPressure,
  standardPressureAtSeaLevel,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';
import { at, flow, row, step, tableWith } from './oneRowTable.ts';

const anyPressure = fc.double({ min: 70e3, max: 103e3, noNaN: true });

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
    ['two blocks of airflow', tableWith({}, blocks.slice(0, 2))],
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

  test('is a band alone where no airflow is known here, and where the mass falls on a hole of the table', () => {
    const { dryAirFlow: _, ...noFlow } = at;
    const { derates } = expectedCapacity(tableWith(), noFlow, { blowerPower: 450, pressure: 84e3 });
    const altitude = derates.find(({ cause }) => cause === 'altitude');
    expect(altitude).toMatchObject({ factor: 1, applies: true });
    expect(altitude?.band).toBeCloseTo((0.02 * (1 - 84e3 / standardPressureAtSeaLevel)) / 0.168, 12);
    const holed = tableWith({}, [blocks[0]!, blocks[2]!, { ...blocks[1]!, total: null }]);
    const up = step('altitude', holed, { dryAirFlow: 0.66 }, { pressure: 84e3 });
    expect(up).toMatchObject({ factor: 1, applies: true, band: altitude?.band });
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
