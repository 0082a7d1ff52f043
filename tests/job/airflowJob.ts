/** A job with every way to an airflow filled in, its figures invented: for the bench of a key and for tests of all ways at once. */
import { type AirflowTableKey, airflowTables } from '../../src/job/airflow/tables.ts';
import type { Entered, Job, TypedTable, UnitKey } from '../../src/job/types.ts';

const typed = (text: string, unit: UnitKey): Entered => ({ text, unit, origin: 'typed' });

function grid(key: AirflowTableKey, units: readonly UnitKey[], rows: readonly string[]): TypedTable {
  const last = units.at(-1) ?? 'one';
  return {
    columns: airflowTables[key].map((column, index) => ({ key: column, unit: units[index] ?? last })),
    rows: rows.map((row) => airflowTables[key].map((_, index) => row.split(' ')[index] ?? '')),
  };
}

export const airflowJob: Job = {
  version: 1,
  id: 'every-way',
  invented: true,
  entered: {
    'entering.dryBulb': typed('75', 'degF'),
    'entering.relativeHumidity': typed('50', 'percent'),
    'leaving.dryBulb': typed('56', 'degF'),
    'leaving.relativeHumidity': typed('88', 'percent'),
    altitude: typed('5000', 'ft'),
    nominalCapacity: typed('3', 'ton'),
    'readout.volumeFlow': typed('1180', 'cfm'),
    'fanTable.supplyStatic': typed('0.26', 'inwcDuct'),
    'fanTable.returnStatic': typed('-0.20', 'inwcDuct'),
    'traverse.width': typed('40', 'inch'),
    'traverse.height': typed('40', 'inch'),
    'rise.voltage': typed('240', 'volt'),
    'rise.current': typed('41', 'ampere'),
    'rise.entering': typed('70', 'degF'),
    'rise.leaving': typed('96', 'degF'),
    'flowGrid.normal': typed('0.42', 'inwcDuct'),
    'flowGrid.withGrid': typed('0.38', 'inwcDuct'),
    'match.fanFlow': typed('1150', 'cfm'),
    'match.normal': typed('0.42', 'inwcDuct'),
    'match.reached': typed('0.40', 'inwcDuct'),
  },
  chosen: {
    'airflow.use': 'together',
    'readout.shows': 'sensed',
    'rise.speed': 'cooling',
    'traverse.instrument': 'vane',
  },
  tables: {
    fanTable: grid(
      'fanTable',
      ['inwcDuct', 'cfm'],
      Array.from({ length: 12 }, (_, row) =>
        [(0.1 + 0.1 * row).toFixed(1), ...[900, 1000, 1100, 1200, 1300].map((flow) => String(flow - 28 * row))].join(
          ' ',
        ),
      ),
    ),
    'traverse.velocities': grid(
      'traverse.velocities',
      ['fpm'],
      Array.from({ length: 7 }, (_, hole) =>
        Array.from({ length: 7 }, (__, point) => 95 + 3 * hole + 2 * point).join(' '),
      ),
    ),
    'flowGrid.plates': grid('flowGrid.plates', ['cfm'], ['560', '570']),
    'hood.returns': grid('hood.returns', ['cfm'], ['300', '290', '280', '310']),
    grilles: grid(
      'grilles',
      ['inch', 'inch', 'one', 'fpm'],
      ['24 16 0.7 310 300 290 320 310 300 290 310 300', '24 16 0.7 310 300 290 320 310 300 290 310 300'],
    ),
  },
  notes: {},
};
