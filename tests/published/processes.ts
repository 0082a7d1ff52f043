/** The worked examples of Fundamentals, chapter 1, typed into the air chart as a person would: states, airflows, processes. */
import { heatVapor } from '../../src/calc/index.ts';
import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import { addProcess, type ProcessColumn } from '../../src/job/processEdits.ts';
import { type ProcessResult, processesOf } from '../../src/job/processes.ts';
import { addState, type StateColumn } from '../../src/job/stateEdits.ts';
import type { Job } from '../../src/job/types.ts';
import type { Check } from './check.ts';

type Texts<Column extends string> = Readonly<Partial<Record<Column, string>>>;

/** What a process typed at sea level in SI comes to; states are a, b in their order. */
function typedIn(states: readonly Texts<StateColumn>[], process: Texts<ProcessColumn>): ProcessResult {
  const empty: Job = emptyJob('example');
  const withStates = states.reduce((job, texts) => applyEdits(job, addState(job, 'si', texts)), empty);
  const [found] = processesOf(applyEdits(withStates, addProcess(withStates, process, 'si')));
  if (!found?.outcome.ok) throw new Error(JSON.stringify(found?.outcome));
  return found.outcome.value;
}

const loadOf = (result: ProcessResult) => {
  if (result.load === null) throw new Error('no load');
  return result.load;
};

/** Example 2: 10 m³/s saturated at 2 °C, heated to 40 °C. */
const heated = () =>
  typedIn([{ dryBulb: '2', relativeHumidity: '100' }], {
    kind: 'heating',
    from: 'a',
    endDryBulb: '40',
    airflow: '10 m³/s',
  });

/** Example 3: 5 m³/s at 30 °C and 50 %, to saturated at 10 °C. */
const cooled = () =>
  typedIn(
    [
      { dryBulb: '30', relativeHumidity: '50' },
      { dryBulb: '10', relativeHumidity: '100' },
    ],
    { kind: 'drying', from: 'a', to: 'b', airflow: '5 m³/s' },
  );

/** Example 4: 2 m³/s at 4 °C, wet bulb 2 °C, with 6.25 m³/s at 25 °C and 50 %. */
const mixed = () =>
  typedIn(
    [
      { dryBulb: '4', wetBulb: '2' },
      { dryBulb: '25', relativeHumidity: '50' },
    ],
    { kind: 'mixing', from: 'a', with: 'b', airflow: '2 m³/s', secondAirflow: '6.25 m³/s' },
  );

/** Example 6, the air on its way back: from the space at 25 °C, wet bulb 19 °C, to the supply at 15 °C, wet bulb 14.0 °C. */
const supplied = () =>
  typedIn(
    [
      { dryBulb: '25', wetBulb: '19' },
      { dryBulb: '15', wetBulb: '14.0' },
    ],
    { kind: 'drying', from: 'a', to: 'b', airflow: '0.873 kg/s' },
  );

/** What moves from sensible to latent when the split is made at the leaving humidity ratio, as ASHRAE 37 has it. */
const splitElsewhere = ({ start, end, dryAirFlow }: ProcessResult) =>
  (dryAirFlow ?? 0) * heatVapor * (start.humidityRatio - end.humidityRatio) * (start.dryBulb - end.dryBulb);

type Row = readonly [
  title: string,
  expected: number,
  tolerance: number,
  unit: string,
  known: Check['known'],
  ours: () => number,
  why?: string,
];

const ruler = 'the book reads the states off a chart';
const wetBulbStep = 'the wet bulb is printed to 0.1 K, which is 0.3 kJ/kg';

const rows: readonly Row[] = [
  ['Chart, example 2: heat', 490, 2, 'kW', 'read', () => -loadOf(heated()).total / 1000, ruler],
  ['Chart, example 2: dry air', 12.74, 0.02, 'kg/s', 'read', () => heated().dryAirFlow ?? 0, ruler],
  ['Chart, example 2: enthalpy at the end', 51.5, 0.25, 'kJ/kg', 'read', () => heated().end.enthalpy / 1000, ruler],
  ['Chart, example 2: no water moves', 4.38, 0.03, 'g/kg', 'read', () => heated().end.humidityRatio * 1000, ruler],
  [
    'Chart, example 3: cooling, the enthalpy of the water taken off',
    197,
    1.5,
    'kW',
    'read',
    () => (loadOf(cooled()).total - loadOf(cooled()).condensateEnthalpy) / 1000,
    ruler,
  ],
  ['Chart, example 3: dry air', 5.7, 0.01, 'kg/s', 'read', () => cooled().dryAirFlow ?? 0, ruler],
  ['Chart, example 3: cooling by RP-1485', 199.56, 0.1, 'kW', 'computed', () => loadOf(cooled()).total / 1000],
  ['Chart, example 3: water by RP-1485', 32.56, 0.02, 'g/s', 'computed', () => loadOf(cooled()).condensate * 1000],
  [
    'Chart, example 3: sensible part, split as the book does at the entering humidity ratio',
    117.51,
    0.3,
    'kW',
    'computed',
    () => (loadOf(cooled()).sensible + splitElsewhere(cooled())) / 1000,
    'worked out there for the ideal gas, 0.03 % apart in humidity ratio and 0.2 % across the coil',
  ],
  [
    'Chart, example 3: latent part, split likewise',
    81.58,
    0.5,
    'kW',
    'computed',
    () => (loadOf(cooled()).latent - splitElsewhere(cooled())) / 1000,
    'of 199.09 kW by the ideal gas, against 199.56 by the real one',
  ],
  ['Chart, example 4: share of the warm stream', 0.742, 0.0005, '1', 'read', () => 1 - (mixed().share ?? 0)],
  ['Chart, example 4: mixture', 19.5, 0.2, '°C', 'read', () => mixed().end.dryBulb, ruler],
  ['Chart, example 4: wet bulb of the mixture', 14.6, 0.1, '°C', 'read', () => mixed().end.wetBulb, ruler],
  [
    'Chart, example 6: total, 9 kW and 1.5 g/s of water at 2555.58 kJ/kg',
    12.833,
    0.35,
    'kW',
    'read',
    () => loadOf(supplied()).total / 1000,
    wetBulbStep,
  ],
  ['Chart, example 6: water', 1.5, 0.11, 'g/s', 'read', () => loadOf(supplied()).condensate * 1000, wetBulbStep],
  [
    'Chart, example 6: sensible heat ratio',
    0.701,
    0.02,
    '1',
    'read',
    () => loadOf(supplied()).sensibleHeatRatio,
    wetBulbStep,
  ],
];

export const checks: readonly Check[] = rows.map(([title, expected, tolerance, unit, known, ours, why]) => ({
  title,
  expected,
  tolerance,
  unit,
  source: 'handbookPsychrometrics',
  known,
  ...(why === undefined ? {} : { why }),
  ours,
}));
