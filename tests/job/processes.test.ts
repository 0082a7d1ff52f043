import { describe, expect, it, test } from 'vitest';
import type { Step } from '../../src/calc/index.ts';
import { applyEdits } from '../../src/job/edit.ts';
import { addProcess, removeProcess, setProcess } from '../../src/job/processEdits.ts';
import { processesOf, traceProcess } from '../../src/job/processes.ts';
import { readJob } from '../../src/job/schema.ts';
import { toSi } from '../../src/job/units.ts';
import { chartWith } from './charts.ts';
import { jobWith } from './jobs.ts';

const room = { dryBulb: '75', relativeHumidity: '50' };
const supply = { dryBulb: '56', relativeHumidity: '88' };
const outdoors = { dryBulb: '95', wetBulb: '75' };
const mixing = { kind: 'mixing', from: 'a', with: 'b', airflow: '400', secondAirflow: '800' };

const outcome = (job: Parameters<typeof processesOf>[0], index = 0) => processesOf(job)[index]?.outcome;
const value = (job: Parameters<typeof processesOf>[0], index = 0) => {
  const found = outcome(job, index);
  if (!found?.ok) throw new Error(JSON.stringify(found));
  return found.value;
};

describe('a process', () => {
  it('gives the loads of a stated airflow, counted as it moves where the process begins', () => {
    const job = chartWith([room, supply], [{ kind: 'drying', from: 'a', to: 'b', airflow: '1180' }]);
    const { start, load, dryAirFlow } = value(job);
    expect(dryAirFlow).toBeCloseTo(toSi(1180, 'cfm') / start.specificVolume, 9);
    expect(load!.total).toBeCloseTo(load!.sensible + load!.latent, 6);
    expect(load!.condensate).toBeGreaterThan(0);
  });

  it('takes an airflow by mass as dry air', () => {
    for (const airflow of ['0.5 kg/s', '1800 kg/h', '3968.32 lb/h']) {
      const job = chartWith([room, supply], [{ kind: 'drying', from: 'a', to: 'b', airflow }]);
      expect(value(job).dryAirFlow).toBeCloseTo(0.5, 5);
    }
  });

  it('without an airflow has its ends, and no loads', () => {
    expect(value(chartWith([room, supply], [{ kind: 'drying', from: 'a', to: 'b' }]))).toMatchObject({
      dryAirFlow: null,
      load: null,
    });
  });

  it('of heating or cooling without water keeps the water that the air holds', () => {
    const job = chartWith(
      [room],
      [
        { kind: 'heating', from: 'a', endDryBulb: '110', airflow: '1000' },
        { kind: 'cooling', from: 'a', endDryBulb: '60', airflow: '1000' },
      ],
    );
    for (const index of [0, 1]) {
      const { start, end, load } = value(job, index);
      expect(end.humidityRatio).toBeCloseTo(start.humidityRatio, 12);
      expect(load!.latent).toBeCloseTo(0, 6);
      expect(load!.condensate).toBe(0);
    }
    expect(value(job, 0).load!.total).toBeLessThan(0);
    expect(value(job, 1).load!.total).toBeGreaterThan(0);
  });

  it('may begin in return or supply air of the job, and where an earlier one ends', () => {
    const job = chartWith(
      [outdoors],
      [
        { ...mixing, with: 'entering' },
        { kind: 'drying', from: 'p1', to: 'leaving', airflow: '1200' },
      ],
      'ip',
      jobWith({
        'entering.dryBulb': ['75', 'degF'],
        'entering.relativeHumidity': ['50', 'percent'],
        'leaving.dryBulb': ['56', 'degF'],
        'leaving.relativeHumidity': ['88', 'percent'],
      }),
    );
    expect(value(job, 1).start).toEqual(value(job, 0).end);
    expect(value(job, 0).load).toBeNull();
  });

  it('cannot begin where it ends itself, or where a later one does', () => {
    const job = chartWith(
      [room],
      [
        { kind: 'heating', from: 'p1', endDryBulb: '100' },
        { kind: 'heating', from: 'p3', endDryBulb: '100' },
        { kind: 'heating', from: 'a', endDryBulb: '100' },
      ],
    );
    expect([0, 1, 2].map((index) => outcome(job, index)?.ok)).toEqual([false, false, true]);
    expect(outcome(job, 0)).toMatchObject({ waiting: ['from'] });
  });
});

test.each([
  ['more water at the end', [supply, room], { kind: 'drying', from: 'a', to: 'b' }, 'wetter'],
  ['one point', [room], { kind: 'drying', from: 'a', to: 'a' }, 'samePoint'],
  [
    'a warmer end',
    [
      { dryBulb: '60', relativeHumidity: '50' },
      { dryBulb: '80', relativeHumidity: '10' },
    ],
    { kind: 'drying', from: 'a', to: 'b' },
    'notCooled',
  ],
  ['heating to a lower temperature', [room], { kind: 'heating', from: 'a', endDryBulb: '60' }, 'notHeated'],
  ['cooling to a higher one', [room], { kind: 'cooling', from: 'a', endDryBulb: '80' }, 'notCooled'],
  ['cooling below the dew point', [room], { kind: 'cooling', from: 'a', endDryBulb: '50' }, 'belowDewPoint'],
  [
    'a mixture that is fog',
    [
      { dryBulb: '14', relativeHumidity: '100' },
      { dryBulb: '95', relativeHumidity: '98' },
    ],
    mixing,
    'fogged',
  ],
  ['a stream mixed with itself', [room], { ...mixing, with: 'a' }, 'samePoint'],
  ['an airflow in words', [room, supply], { kind: 'drying', from: 'a', to: 'b', airflow: 'much' }, 'notANumber'],
  ['an airflow in degrees', [room, supply], { kind: 'drying', from: 'a', to: 'b', airflow: '50 °F' }, 'wrongUnit'],
] as const)('%s is refused with its reason', (_, states, process, code) => {
  expect(outcome(chartWith(states, [process]))).toMatchObject({ ok: false, problem: { code } });
});

test.each([
  [{ kind: 'drying', from: 'a' }, ['to']],
  [{ kind: 'drying', to: 'b' }, ['from']],
  [{ kind: 'heating', from: 'a' }, ['endDryBulb']],
  [{ kind: 'mixing', from: 'a', with: 'b' }, ['airflow', 'secondAirflow']],
  [{ kind: 'mixing', from: 'a', with: 'h', airflow: '1' }, ['with']],
])('%j waits for %j', (process, waiting) => {
  expect(outcome(chartWith([room, supply], [process]))).toEqual({ ok: false, waiting, problem: null });
});

test('rows without a kind, or with a key that stands there already, are no processes', () => {
  const job = chartWith(
    [room],
    [
      { kind: 'heating', from: 'a', endDryBulb: '90' },
      { kind: 'boiling', from: 'a' },
    ],
  );
  const { columns, rows } = job.tables.processes!;
  const twice = { ...job, tables: { ...job.tables, processes: { columns, rows: [...rows, rows[0]!] } } };
  expect(processesOf(twice)).toHaveLength(1);
});

test('a process is changed and taken away without touching the others', () => {
  const job = chartWith([outdoors, room], [mixing, { kind: 'heating', from: 'p1', endDryBulb: '100' }]);
  const changed = applyEdits(job, setProcess(job, 'p2', { airflow: '900 L/s' }, 'ip'));
  expect(value(changed, 1).dryAirFlow).not.toBeNull();
  const less = applyEdits(changed, removeProcess(changed, 'p1'));
  expect(processesOf(less)).toMatchObject([{ key: 'p2', from: null }]);
  expect(processesOf(applyEdits(less, addProcess(less, mixing, 'ip'))).map(({ key }) => key)).toEqual(['p2', 'p1']);
  expect(addProcess(chartWith([], Array(8).fill(mixing)), mixing, 'ip')).toEqual([]);
  expect(readJob(chartWith([], Array(8).fill(mixing))).ok).toBe(true);
});

test('the working of a process ends in its figures', () => {
  const job = chartWith([outdoors, room], [mixing, { kind: 'cooling', from: 'p1', endDryBulb: '76', airflow: '1200' }]);
  const stepsOf = (key: 'p1' | 'p2') => {
    const steps: Step[] = [];
    traceProcess(job, key, (step) => steps.push(step));
    return Object.fromEntries(steps.map(({ id, gives }) => [id, gives.value]));
  };
  const mixed = value(job, 0);
  expect(stepsOf('p1')).toMatchObject({
    'mix.dryAirFlow': mixed.dryAirFlow,
    'mix.humidityRatio': mixed.end.humidityRatio,
    'mix.enthalpy': mixed.end.enthalpy,
    'mix.dryBulb': mixed.end.dryBulb,
  });
  expect(stepsOf('p2')).toMatchObject({
    'dryAirFlow.actual': value(job, 1).dryAirFlow,
    'coilLoad.total': value(job, 1).load!.total,
  });
});
