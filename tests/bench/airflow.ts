/**
 * A keystroke's worth of every way of finding an airflow: the answer with its working, the mean of all methods, and what is said
 * beside it. The fastest of 40 runs of each, after warming up; every run has other figures: `npm run bench`.
 */
import {
  type AirflowFound,
  airflowFromFanTable,
  airflowFromFlowGrid,
  airflowFromGrille,
  airflowFromHood,
  airflowFromPressureMatch,
  airflowFromReadout,
  airflowFromTemperatureRise,
  airflowFromTraverse,
  airflowMethods,
  airflowPerTon,
  airflowWays,
  atOtherAirflows,
  combineAirflows,
  ductSystem,
  moistAir,
  ratingTable,
  type Step,
} from '../../src/calc/index.ts';
import { findAirflow, findBy, findTogether } from '../../src/job/airflow/find.ts';
import type { Job } from '../../src/job/types.ts';
import { airflowJob as typedJob } from '../job/airflowJob.ts';

const runs = 40;
const budget = 4;
/** What the answers came to, so that none of them can be left out. */
let sink = 0;

const pressure = 84300;
const air = moistAir({ dryBulb: 24, relativeHumidity: 0.5, pressure });
const leaving = moistAir({ dryBulb: 13, relativeHumidity: 0.9, pressure });
/** Invented: twelve rows of a blower with five speeds. */
const table = {
  statics: Array.from({ length: 12 }, (_, i) => 25 * (i + 1)),
  speeds: ['1', '2', '3', '4', '5'].map((name, speed) => ({
    name,
    flows: Array.from({ length: 12 }, (_, i) => 0.4 + 0.06 * speed - 0.012 * i),
  })),
};
const cells = (count: number, run: number) => Array.from({ length: count }, (_, i) => 9 + Math.sin(i + run));

type Method = (run: number, t: (step: Step) => void) => AirflowFound;

const methods: Readonly<Record<string, Method>> = {
  readout: (run, t) =>
    airflowFromReadout(
      { volumeFlow: 0.5 + run / 1000, shows: 'sensed', ways: ['standard', { specificVolume: air.specificVolume }] },
      t,
    ),
  'fan table, twelve rows by five speeds': (run, t) =>
    airflowFromFanTable(
      { table, column: 2, motor: 'unsure', supplyStatic: 60 + run, returnStatic: -40, pressure, air },
      t,
    ),
  'traverse, seven lines by seven': (run, t) =>
    airflowFromTraverse(
      {
        section: { shape: 'rectangular', width: 1, height: 1 },
        instrument: 'pitot',
        readings: Array.from({ length: 7 }, (_, i) => cells(7, run + i)),
        air,
        straight: { length: 4, after: 'fan' },
      },
      t,
    ),
  'temperature rise': (run, t) =>
    airflowFromTemperatureRise(
      {
        heat: { kind: 'electric', phases: 3, voltage: 208, current: 40 + run / 10 },
        blower: 'assumed',
        enteringDryBulb: 21,
        leavingDryBulb: 38,
        humidityRatio: 0.008,
        probes: 'several',
        probeLimit: 0.5,
        speed: 'cooling',
      },
      t,
    ),
  'flow grid': (run, t) =>
    airflowFromFlowGrid(
      { plates: [0.25, 0.26], shownAs: 'uncorrected', pressureNormal: 62 + run / 10, pressureWithGrid: 48, air },
      t,
    ),
  'pressure matching': (run, t) =>
    airflowFromPressureMatch(
      { fanFlow: 0.5, shownAs: 'uncorrected', pressureNormal: 62 + run / 10, pressureReached: 48, air },
      t,
    ),
  'hood at four returns': (run, t) =>
    airflowFromHood(
      {
        returns: cells(4, run).map((one) => one / 70),
        hood: 'plain',
        shownAs: 'actual',
        covers: true,
        ductsTight: false,
        air,
      },
      t,
    ),
  'vane at two grilles': (run, t) =>
    airflowFromGrille(
      {
        grilles: [0, 1].map((i) => ({ readings: cells(9, run + i), width: 0.6, height: 0.4, areaFactor: 0.15 })),
        factorFrom: 'maker',
        air,
      },
      t,
    ),
};

const rating = ratingTable(
  [29, 35, 41].flatMap((outdoorDryBulb) =>
    [17, 19, 21].map((enteringWetBulb) => ({
      outdoorDryBulb,
      enteringWetBulb,
      enteringDryBulb: 26.7,
      dryAirFlow: 0.68,
      total: 10000 - 60 * (outdoorDryBulb - 35) + 200 * (enteringWetBulb - 19),
      sensible: 7300,
    })),
  ),
  { basis: 'gross', blowerPower: 0 },
);

/** Everything that stands beside an answer: the mean of all methods, its ways of counting, per ton, and what more air would do. */
function beside(run: number): number {
  const answers = Object.values(methods).map((method) => method(run, (step) => (sink += step.gives.value)));
  const mean = combineAirflows(answers, (step) => (sink += step.gives.value));
  const conditions = {
    outdoorDryBulb: 35,
    enteringWetBulb: air.wetBulb,
    enteringDryBulb: 24,
    dryAirFlow: mean.dryAirFlow,
  };
  const other = atOtherAirflows(rating, conditions, { blowerPower: 400, pressure });
  const ways = airflowWays(mean, { entering: air, leaving });
  return mean.u + airflowPerTon(mean.dryAirFlow, 10550).each + ways.length + other.filter(({ ok }) => ok).length;
}

function ducts(run: number): number {
  const parts = [
    { drop: 60, times: 1 },
    { drop: 50, times: 1 + run / 100 },
  ];
  return ductSystem({ table, column: 2, flow: 0.47, parts }).change;
}

/** The job that a sheet holds while somebody types: every way filled in, its text read anew at each key. */
function keystroke(run: number): number {
  const flow = { text: String(1100 + run), unit: 'cfm', origin: 'typed' } as const;
  const job: Job = { ...typedJob, entered: { ...typedJob.entered, 'readout.volumeFlow': flow, 'match.fanFlow': flow } };
  const found = airflowMethods.map((method) => findBy(job, method));
  const counted = findAirflow(job);
  const mean = findTogether(job);
  if (!counted.ok || !mean.ok || found.some(({ ok }) => !ok)) throw new Error('a way of the bench has no answer');
  return mean.value.u + found.length;
}

/** ms: the first run and the fastest of forty. */
function measure(work: (run: number) => number): { first: number; fastest: number } {
  const times = Array.from({ length: runs }, (_, run) => {
    const start = performance.now();
    sink += work(run);
    return performance.now() - start;
  });
  return { first: times[0] ?? Number.NaN, fastest: Math.min(...times) };
}

const figures = [
  ...Object.entries(methods).map(([title, method]) => ({
    title,
    ...measure((run) => {
      const steps: Step[] = [];
      return method(run, (step) => steps.push(step)).u + steps.length;
    }),
  })),
  { title: 'every method, their mean, and what stands beside it', ...measure(beside) },
  { title: 'duct system, before and after', ...measure(ducts) },
  ...airflowMethods.map((method) => ({
    title: `a key typed: ${method}, from its text`,
    ...measure((run) => {
      const answer = findBy({ ...typedJob, id: String(run) }, method);
      if (!answer.ok) throw new Error(`${method} has no answer`);
      return answer.value.u;
    }),
  })),
  { title: 'a key typed: all that the sheet then works out', ...measure(keystroke) },
];
for (const { title, first, fastest } of figures) {
  console.log(
    `${title.padEnd(52)} ${fastest.toFixed(3).padStart(7)} ms  (first ${first.toFixed(1)} ms, budget ${budget} ms)`,
  );
}
if (!Number.isFinite(sink) || figures.some(({ fastest }) => !(fastest < budget))) process.exitCode = 1;
