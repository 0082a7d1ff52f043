/** The airflow sheet's methods from what was typed: each against a worked figure from outside, and what bad figures do. */
import { describe, expect, test } from 'vitest';
import type { FanTableFound } from '../../src/calc/airflow/fanTable.ts';
import type { AirflowFound } from '../../src/calc/airflow/found.ts';
import type { AirflowMethod } from '../../src/calc/airflow/methods.ts';
import { standardVolumeFlow } from '../../src/calc/dryAirFlow.ts';
import { cubicFootPerMinute, inch, inchOfWater } from '../../src/calc/units.ts';
import { depthText } from '../../src/job/airflow/depths.ts';
import { findAirflow, findBy, findTogether } from '../../src/job/airflow/find.ts';
import { blockOf, gridValue, placed, setGridCells } from '../../src/job/airflow/grid.ts';
import { type AirflowTableKey, airflowTables } from '../../src/job/airflow/tables.ts';
import { applyEdits } from '../../src/job/edit.ts';
import type { Job, UnitKey } from '../../src/job/types.ts';
import { jobWith } from './jobs.ts';

type Typed = Parameters<typeof jobWith>[0];

const usualUnits: Readonly<Record<AirflowTableKey, (column: string) => UnitKey>> = {
  fanTable: (column) => (column === 'static' ? 'inwcDuct' : 'cfm'),
  'traverse.pressures': () => 'inwcDuct',
  'traverse.velocities': () => 'fpm',
  'flowGrid.plates': () => 'cfm',
  'hood.returns': () => 'cfm',
  grilles: (column) => (column === 'areaFactor' ? 'one' : /^v/.test(column) ? 'fpm' : 'inch'),
};

/** The job with a grid filled row by row. */
function withGrid(job: Job, key: AirflowTableKey, rows: readonly (readonly string[])[]): Job {
  const cells = rows.flatMap((texts, row) =>
    texts.map((text, index) => ({ row, column: airflowTables[key][index] ?? '', text })),
  );
  const edit = setGridCells(job, key, cells, usualUnits[key]);
  return edit ? applyEdits(job, [edit]) : job;
}

function answer(job: Job, method: AirflowMethod): AirflowFound {
  const found = findBy(job, method);
  if (!found.ok) throw new Error(`${method}: ${JSON.stringify(found)}`);
  return found.value;
}

const cfm = (volumeFlow: number) => volumeFlow / cubicFootPerMinute;
const waiting = (job: Job, method: AirflowMethod) => {
  const found = findBy(job, method);
  return found.ok ? null : found.waiting;
};

const fanRows = [
  ['0.50', '1180'],
  ['0.60', '1125'],
  ['0.80', '1010'],
];
const statics: Typed = {
  'fanTable.supplyStatic': ['0.30', 'inwcDuct'],
  'fanTable.returnStatic': ['-0.26', 'inwcDuct'],
};
const fanJob = (more: Typed = {}, chosen: Job['chosen'] = { 'fanTable.motor': 'fixedSpeed' }) =>
  withGrid(jobWith({ ...statics, ...more }, chosen), 'fanTable', fanRows);

/** A section of 20 by 16 inches; read by the rows below. */
const section: Typed = { 'traverse.width': ['20', 'inch'], 'traverse.height': ['16', 'inch'] };
const pressures = [
  '0.016 0.024 0.029 0.026 0.018',
  '0.024 0.036 0.043 0.038 0.026',
  '0.028 0.042 0.050 0.044 0.031',
  '0.024 0.036 0.043 0.038 0.026',
  '0.016 0.024 0.029 0.026 0.018',
].map((row) => row.split(' '));
const traverseJob = (rows: readonly (readonly string[])[] = pressures, more: Typed = {}) =>
  withGrid(jobWith({ ...section, ...more }), 'traverse.pressures', rows);

const electric: Typed = {
  'rise.voltage': ['240', 'volt'],
  'rise.current': ['41', 'ampere'],
  'rise.entering': ['70', 'degF'],
  'rise.leaving': ['99', 'degF'],
};
const riseJob = (more: Typed = {}, chosen: Job['chosen'] = { 'rise.blowerBetween': 'no' }) =>
  jobWith({ ...electric, ...more }, chosen);

describe('each method from what was typed', () => {
  test('the fan table gives 1,147 cfm at 0.56 between 1,180 at 0.50 and 1,125 at 0.60 (known: computed)', () => {
    expect(cfm(answer(fanJob(), 'fanTable').volumeFlow)).toBeCloseTo(1147, 0);
  });

  test('at 5,000 ft the 0.56 of a fixed speed enters its table as 0.67, and the volume is what is read there', () => {
    const found = answer(fanJob({ altitude: ['5000', 'ft'] }), 'fanTable') as FanTableFound;
    // 12.228 psia over 14.696 (ASHRAE Fundamentals ch. 1; known: memory).
    expect(found.tableStatic / inchOfWater).toBeCloseTo((0.56 * 14.696) / 12.228, 2);
    const read = 1125 + ((1010 - 1125) * (0.673 - 0.6)) / 0.2;
    expect(cfm(found.volumeFlow)).toBeCloseTo(read, -0.5);
  });

  test('a Pitot traverse of 20 by 16 inches averages velocities: 1,528 cfm in standard air, more by the root of its thinness', () => {
    const found = answer(traverseJob(), 'traverse');
    const specificVolume = found.at === 'standard' ? Number.NaN : found.at.specificVolume;
    // ρ of the moist air is (1 + W)/v; W of 75 °F and 50 % is 0.0092 (handbook chart; known: memory).
    const density = 1.0092 / specificVolume;
    expect(cfm(found.volumeFlow) / Math.sqrt(1.2014 / density)).toBeCloseTo(1528, -0.5);
  });

  test('electric heat of 9,840 W and a rise of 29 °F come to what 60·0.075·(0.240 + 0.444·W) says (known: memory)', () => {
    const found = answer(riseJob(), 'temperatureRise');
    // W of 75 °F and 50 % is 0.0092 (handbook chart; known: memory). Dry air alone, 1.08, gives the 1,072 cfm of the trade.
    const factor = (ratio: number) => (9840 * 3.412) / (60 * 0.075 * (0.24 + 0.444 * ratio) * 29);
    expect(factor(0)).toBeCloseTo(1072, 0);
    expect(Math.abs(cfm(found.volumeFlow) / factor(0.0092) - 1)).toBeLessThan(0.003);
  });

  test('a plate that shows 980 cfm at 48 Pa counts as 1,114 at the 62 Pa of the filter (known: computed)', () => {
    const job = jobWith(
      { 'flowGrid.normal': ['62', 'paDuct'], 'flowGrid.withGrid': ['48', 'paDuct'] },
      { 'flowGrid.shownAs': 'standard' },
    );
    expect(cfm(answer(withGrid(job, 'flowGrid.plates', [['980']]), 'flowGrid').volumeFlow)).toBeCloseTo(1114, -0.3);
  });

  test('a calibrated fan that meets the pressure is taken at its figure, and one at a quarter of it is doubled', () => {
    const job = (reached: string) =>
      jobWith(
        {
          'match.fanFlow': ['1000', 'cfm'],
          'match.normal': ['60', 'paDuct'],
          'match.reached': [reached, 'paDuct'],
        },
        { 'match.shownAs': 'standard' },
      );
    expect(cfm(answer(job('60'), 'pressureMatch').volumeFlow)).toBeCloseTo(1000, 6);
    expect(cfm(answer(job('15'), 'pressureMatch').volumeFlow)).toBeCloseTo(2000, 6);
  });

  test('a hood sums the returns', () => {
    expect(cfm(answer(withGrid(jobWith({}), 'hood.returns', [['520'], ['610']]), 'hood').volumeFlow)).toBeCloseTo(
      1130,
      6,
    );
  });

  test('a vane over 24 by 12 inches at 600 fpm and a factor of 0.8 is 2 ft² × 600 × 0.8', () => {
    const job = withGrid(jobWith({}), 'grilles', [['24', '12', '0.8', '580', '600', '620']]);
    expect(cfm(answer(job, 'grille').volumeFlow)).toBeCloseTo(960, 6);
  });

  test('a readout of nobody knows which kind is taken in the middle, and says the price', () => {
    const found = answer(jobWith({ 'readout.volumeFlow': ['1200', 'cfm'] }), 'readout');
    expect(found.evidence).toBe(false);
    expect(found.remarks.map(({ code }) => code)).toContain('airflowWayUnsure');
    expect(cfm(standardVolumeFlow(found.dryAirFlow))).toBeLessThan(1215);
  });
});

describe('figures that cannot be', () => {
  test('a power factor of 3 is waited for, and never taken for 1', () => {
    const job = riseJob({ 'rise.powerFactor': ['3', 'one'] });
    expect(waiting(job, 'temperatureRise')).toEqual(['rise.powerFactor']);
    expect(waiting(riseJob(), 'temperatureRise')).toBeNull();
  });

  test('so are a blower of nonsense between the probes and a straight duct of none', () => {
    const blower = riseJob({ 'rise.blowerPower': ['much', 'watt'] }, { 'rise.blowerBetween': 'yes' });
    expect(waiting(blower, 'temperatureRise')).toEqual(['rise.blowerPower']);
    expect(waiting(traverseJob(pressures, { 'traverse.straight': ['-3', 'inch'] }), 'traverse')).toEqual([
      'traverse.straight',
    ]);
  });

  test('a static pressure beyond the table has no airflow, and says what the column prints', () => {
    const found = findBy(fanJob({ 'fanTable.supplyStatic': ['0.7', 'inwcDuct'] }), 'fanTable');
    const problem = found.ok ? null : found.problem;
    expect(problem?.code).toBe('outsideTable');
    expect([problem?.min, problem?.max].map((one) => (one ?? 0) / inchOfWater)).toEqual([
      expect.closeTo(0.5, 6),
      expect.closeTo(0.8, 6),
    ]);
  });

  test('zero, negative and empty cells are left out: the answer is partial and wider, and the others count', () => {
    const whole = answer(traverseJob(), 'traverse');
    const holed = pressures.map((row, hole) => (hole === 0 ? ['0', '-0.02', 'x', '', row[4] ?? ''] : row));
    const partial = answer(traverseJob(holed), 'traverse');
    expect([whole.partial, partial.partial]).toEqual([false, true]);
    expect(partial.u).toBeGreaterThan(whole.u);
    expect(Math.abs(partial.volumeFlow / whole.volumeFlow - 1)).toBeLessThan(0.1);
  });

  test('a point that reads a fifth more when it is read again asks for the traverse to be repeated', () => {
    const again = (text: string) => {
      const job = traverseJob();
      const edit = setGridCells(job, 'traverse.pressures', [{ row: 2, column: 'again', text }], () => 'inwcDuct');
      return answer(applyEdits(job, edit ? [edit] : []), 'traverse').remarks.map(({ code }) => code);
    };
    expect(again('0.060')).toContain('traverseNotRepeated');
    expect(again('0.052')).not.toContain('traverseNotRepeated');
  });
});

describe('which airflow counts', () => {
  const two = withGrid(fanJob(), 'hood.returns', [['560'], ['600']]);

  test('the only answer counts by itself; of two, one is chosen', () => {
    const only = findAirflow(fanJob());
    expect(only.ok && 'method' in only.value && only.value.method).toBe('fanTable');
    expect(findAirflow(two)).toMatchObject({ ok: false, waiting: ['airflow.use'] });
    const chosen = findAirflow({ ...two, chosen: { ...two.chosen, 'airflow.use': 'hood' } });
    expect(chosen.ok && 'method' in chosen.value && chosen.value.method).toBe('hood');
  });

  test('together they lie between the two, and the surer one counts more', () => {
    const mean = findTogether(two);
    if (!mean.ok) throw new Error('no mean');
    const [fan, hood] = [answer(two, 'fanTable'), answer(two, 'hood')];
    const flows = [fan.dryAirFlow, hood.dryAirFlow].toSorted((a, b) => a - b);
    expect(mean.value.dryAirFlow).toBeGreaterThanOrEqual(flows[0] ?? 0);
    expect(mean.value.dryAirFlow).toBeLessThanOrEqual(flows[1] ?? 0);
    const weight = (method: AirflowMethod) => mean.value.weighed.find((one) => one.method === method)?.weight ?? 0;
    expect(weight('fanTable') > weight('hood')).toBe(fan.u < hood.u);
  });

  test('one on another speed is left out, and says so', () => {
    const other = { ...two, chosen: { ...two.chosen, 'hood.speed': 'other' } };
    const mean = findTogether(other);
    expect(mean.ok && mean.value.leftOut).toEqual([{ method: 'hood', why: 'otherSpeed' }]);
    expect(answer(other, 'hood').remarks.map(({ code }) => code)).toContain('otherSpeed');
  });
});

describe('a block from a spreadsheet', () => {
  test('tabs part its cells; a heading is left out; bare figures may stand between spaces', () => {
    expect(blockOf('ESP\tLow\n0.5\t1,180\n0.6\t1,125\n')).toEqual([
      ['0.5', '1,180'],
      ['0.6', '1,125'],
    ]);
    expect(blockOf('0.5 1180 1250')).toEqual([['0.5', '1180', '1250']]);
    expect(blockOf('0.56 in. w.c.')).toBeNull();
    expect(blockOf('1180')).toBeNull();
  });

  test('fills the grid from where it is put in, and what does not fit is left out', () => {
    const layout = [0, 1].map((row) => ['static', 'flow1', 'flow2'].map((column) => ({ row, column })));
    const block = [['1180', '1250', '1300'], ['1125', '1190'], ['1010']];
    const cells = placed(block, { row: 0, column: 'flow1' }, layout);
    expect(cells.map(({ row, column, text }) => `${row}.${column} ${text}`)).toEqual([
      '0.flow1 1180',
      '0.flow2 1250',
      '1.flow1 1125',
      '1.flow2 1190',
    ]);
    const edit = setGridCells(jobWith({}), 'fanTable', cells, usualUnits.fanTable);
    const job = applyEdits(jobWith({}), edit ? [edit] : []);
    expect(cfm(gridValue(job, 'fanTable', 1, 'flow2') ?? 0)).toBeCloseTo(1190, 6);
    expect(gridValue(job, 'fanTable', 1, 'static')).toBeNull();
  });
});

test.each([
  [1.184, 'inch', '1 3/16'],
  [4.606, 'inch', '4 5/8'],
  [8, 'inch', '8'],
  [0.5, 'inch', '1/2'],
  [0.02, 'inch', '0'],
  [0.97, 'inch', '1'],
  [1.184, 'mm', '30'],
] as const)('a depth of %d in is marked on a probe in %s as %s', (inches, unit, text) => {
  expect(depthText(inches * inch, unit)).toBe(text.replace(' ', '\u00a0'));
});
