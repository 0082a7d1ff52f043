/** Three whole jobs, from the readings to the ratio, through the same `assess` that the worksheet calls. */
import {
  assess,
  btuPerHour,
  cubicFootPerMinute,
  emptyRating,
  emptyTest,
  fromFahrenheit,
  type Outcome,
  type Test,
} from '../../src/calc/index.ts';
import type { Check } from './check.ts';
import { type GoldenJob, goldenJobRows } from './data/goldenJobRows.ts';

const source = 'CoolProp 8.0.0 (HAPropsSI), arithmetic of an invented job outside this project';

export function goldenTest(job: GoldenJob): Test {
  const [enteringDryBulb, enteringHumidity] = job.entering;
  const [leavingDryBulb, leavingHumidity] = job.leaving;
  const standard = job.airflowAt === 'standard';
  return {
    ...emptyTest,
    entering: { dryBulb: fromFahrenheit(enteringDryBulb), relativeHumidity: enteringHumidity, wetBulb: null },
    leaving: { dryBulb: fromFahrenheit(leavingDryBulb), relativeHumidity: leavingHumidity, wetBulb: null },
    airflow: {
      volumeFlow: job.cfm * cubicFootPerMinute,
      place: standard ? 'unsure' : job.airflowAt,
      kind: standard ? 'standard' : 'actual',
      limit: job.airflowLimit,
      sources: null,
    },
    barometer: job.pressure,
    outdoorDryBulb: fromFahrenheit(job.outdoor),
    fullSpeed: 'oneSpeed',
    rating: {
      ...emptyRating,
      rows: job.ratingRows.map(([outdoor, wetBulb, total]) => ({
        outdoorDryBulb: fromFahrenheit(outdoor),
        enteringWetBulb: fromFahrenheit(wetBulb),
        total: total * btuPerHour,
      })),
      basis: job.basis,
      blowerPower: job.blowerInside,
    },
    blower: { place: 'after coil', power: job.blowerHere, kind: null },
    probeLimits: { dryBulb: job.dryBulbLimit, relativeHumidity: job.humidityLimit, wetBulb: job.dryBulbLimit },
  };
}

function value<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`no result: ${JSON.stringify(outcome)}`);
  return outcome.value;
}

type Result = ReturnType<typeof assess>;

/** What is compared: its name, its unit, the outside figure and ours. */
const figures: readonly (readonly [string, string, (job: GoldenJob) => number, (result: Result) => number])[] = [
  ['dry-air flow', 'kg/s', (job) => job.dryAirFlow, ({ measured }) => value(measured).dryAirFlow],
  ['total', 'W', (job) => job.total, ({ measured }) => value(measured).total],
  ['sensible', 'W', (job) => job.sensible, ({ measured }) => value(measured).sensible],
  ['latent', 'W', (job) => job.latent, ({ measured }) => value(measured).latent],
  ['condensate', 'kg/s', (job) => job.condensate, ({ measured }) => value(measured).condensate],
  ['entering wet bulb', '°C', (job) => job.enteringWetBulb, ({ entering }) => value(entering).wetBulb],
  ['net capacity to expect', 'W', (job) => job.expectedNet, ({ expected }) => value(expected).total],
  ['ratio', '1', (job) => job.ratio, ({ ratio }) => value(ratio).value],
];

/** What a cause adds to the ratio, relative. The outdoor limit of the package is 1 °F; another moves its part in proportion. */
function part(job: GoldenJob, name: string): number {
  const { value: ratio, shares } = value(assess(goldenTest(job)).ratio);
  const { u = Number.NaN } = shares.find((share) => share.name === name) ?? {};
  return (u / ratio) * (name === 'outdoorDryBulb' ? job.outdoorLimit : 1);
}

/** The causes that were taken into account outside. */
const causes = {
  enteringDryBulb: 'entering.dryBulb',
  enteringHumidity: 'entering.humidity',
  leavingDryBulb: 'leaving.dryBulb',
  leavingHumidity: 'leaving.humidity',
  outdoorDryBulb: 'outdoorDryBulb',
  airflow: 'airflow',
} as const satisfies Record<keyof GoldenJob['contributions'], string>;

function ofUncertainty(job: GoldenJob): readonly Check[] {
  const names = Object.values(causes);
  const common = { unit: '1', source, known: 'computed' } as const;
  return [
    {
      title: `Whole job, ${job.name}: uncertainty of the ratio`,
      expected: job.uncertainty,
      tolerance: 0.02 * job.uncertainty,
      ...common,
      ours: () => Math.hypot(...names.map((name) => part(job, name))),
    },
    ...Object.entries(causes).map(([key, name]): Check => {
      const expected = job.contributions[key as keyof typeof causes];
      const title = `Whole job, ${job.name}: what ${name} adds to the uncertainty`;
      return { title, expected, tolerance: 0.02 * expected, ...common, ours: () => part(job, name) };
    }),
  ];
}

export const checks: readonly Check[] = goldenJobRows.flatMap((job) => [
  ...figures.map(([name, unit, theirs, ours]) => ({
    title: `Whole job, ${job.name}: ${name}`,
    expected: theirs(job),
    tolerance: job.tolerance * theirs(job),
    unit,
    source,
    known: 'computed' as const,
    ours: () => ours(assess(goldenTest(job))),
  })),
  ...ofUncertainty(job),
]);
