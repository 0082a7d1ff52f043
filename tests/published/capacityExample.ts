/**
 * The worked budget of one capacity: 75 °F and 50 % in, 56 °F and 88 % out, 1200 cfm at the return. All of it arithmetic
 * outside this project with the ideal-gas equations.
 */
import {
  budget,
  coilLoad,
  cubicFootPerMinute,
  dryAirFlow,
  type ErrorSource,
  fahrenheitDegree,
  fromFahrenheit,
  moistAir,
  simulate,
} from '../../src/calc/index.ts';
import type { Check } from './check.ts';

const at = { t1: 75, rh1: 50, t2: 56, rh2: 88, cfm: 1200 };
type Input = keyof typeof at;

/** °F, per cent and cfm in, W out. */
function total({ t1, rh1, t2, rh2, cfm }: Readonly<Record<Input, number>>): number {
  const entering = moistAir({ dryBulb: fromFahrenheit(t1), relativeHumidity: rh1 / 100 });
  const leaving = moistAir({ dryBulb: fromFahrenheit(t2), relativeHumidity: rh2 / 100 });
  const flow = dryAirFlow({
    volumeFlow: cfm * cubicFootPerMinute,
    at: { specificVolume: entering.specificVolume },
  });
  return coilLoad({ entering, leaving, dryAirFlow: flow }).total;
}

type Moves = ErrorSource<Input>['moves'];
const cause = (name: string, u: number, moves: Moves, shape: 'normal' | 'rectangular' = 'rectangular') => {
  return { name, u, shape, degreesOfFreedom: null, moves } as const;
};

/** Two errors of one limit that share a part: r is the part of the variance. */
function pair(name: string, u: number, r: number, first: Input, second: Input): ErrorSource<Input>[] {
  return [
    cause(`${name} shared`, u * Math.sqrt(r), { [first]: 1, [second]: 1 }),
    cause(`${name} first`, u * Math.sqrt(1 - r), { [first]: 1 }),
    cause(`${name} second`, u * Math.sqrt(1 - r), { [second]: 1 }),
  ];
}

interface Limits {
  readonly dryBulb: number;
  readonly humidity: number;
  readonly flow: number;
}
const root3 = Math.sqrt(3);
const flowCause = (limit: number) => cause('airflow', (limit * at.cfm) / root3, { cfm: 1 });

function causes({ dryBulb, humidity, flow }: Limits, r: number): ErrorSource<Input>[] {
  return [
    ...pair('dry bulb', dryBulb / root3, r, 't1', 't2'),
    ...pair('humidity', humidity / root3, r, 'rh1', 'rh2'),
    flowCause(flow),
  ];
}

/** After a side-by-side check: the probes share ±3 %, and each keeps a remainder of its own. */
function matched(flow: number): ErrorSource<Input>[] {
  return [
    cause('shared humidity', 3 / root3, { rh1: 1, rh2: 1 }),
    ...(['t1', 't2'] as const).map((key) => cause(key, 0.2, { [key]: 1 }, 'normal')),
    ...(['rh1', 'rh2'] as const).map((key) => cause(key, 0.7, { [key]: 1 }, 'normal')),
    flowCause(flow),
  ];
}

const percentOf = (sources: readonly ErrorSource<Input>[]) => {
  const { u, value } = budget(total, at, sources);
  return (100 * u) / value;
};
const slope = (key: Input, step: number) =>
  (100 * (total({ ...at, [key]: at[key] + step }) - total({ ...at, [key]: at[key] - step }))) / (2 * step * total(at));
const shift = (moves: Partial<typeof at>) => 100 * (total({ ...at, ...moves }) / total(at) - 1);

const source = 'arithmetic outside this project, linear propagation with ideal-gas moist air';
const idealGas = 'moist air there is an ideal gas, here it follows the real-gas tables';

const cases: readonly (readonly [Limits, readonly [number, number, number]])[] = [
  [{ dryBulb: 0.9, humidity: 3, flow: 0.07 }, [11.17, 6.75, 5.08]],
  [{ dryBulb: 0.9, humidity: 2, flow: 0.05 }, [9.41, 5.27, 3.54]],
  [{ dryBulb: 0.5, humidity: 2, flow: 0.05 }, [6.98, 4.45, 3.54]],
  [{ dryBulb: 0.9, humidity: 3, flow: 0.1 }, [11.91, 7.91, 6.54]],
];

/** The sensitivities are those of the air alone: the mass flow there does not move with the return state. */
const table: readonly (readonly [string, number, number, string, () => number])[] = [
  ['1 °F of the return dry bulb', 10.3, 0.25, '%/°F', () => slope('t1', 0.01)],
  ['1 °F of the supply dry bulb', -10.38, 0.05, '%/°F', () => slope('t2', 0.01)],
  ['a point of the return humidity', 3.655, 0.05, '%/%', () => slope('rh1', 0.01)],
  ['a point of the supply humidity', -1.882, 0.05, '%/%', () => slope('rh2', 0.01)],
  ['a per cent of the airflow', 1, 0.05, '%/%', () => slope('cfm', 1) * 12],
  ['1 °F on both thermometers', -0.09, 0.25, '%', () => shift({ t1: 76, t2: 57 })],
  ['3 % on both humidities', 5.32, 0.1, '%', () => shift({ rh1: 53, rh2: 91 })],
];

export const checks: readonly Check[] = [
  ...table.map(([what, expected, tolerance, unit, ours]): Check => {
    const title = `Worked capacity: what ${what} is worth`;
    return { title, expected, tolerance, unit, source, known: 'computed', why: idealGas, ours };
  }),
  ...cases.flatMap(([limits, expected]) =>
    ([0, 0.8, 1] as const).map((r, i): Check => {
      const { dryBulb, humidity, flow } = limits;
      return {
        title: `Worked capacity: ±${dryBulb} °F, ±${humidity} %, ±${100 * flow} % of airflow, ${r} of it shared`,
        expected: expected[i] as number,
        tolerance: 0.15,
        unit: '%',
        source,
        known: 'computed',
        why: idealGas,
        ours: () => percentOf(causes(limits, r)),
      };
    }),
  ),
  ...(
    [
      [0.07, 6.53],
      [0.05, 5.88],
    ] as const
  ).map(
    ([flow, expected]): Check => ({
      title: `Worked capacity: after a side-by-side check, ±${100 * flow} % of airflow`,
      expected,
      tolerance: 0.1,
      unit: '%',
      source,
      known: 'computed',
      why: idealGas,
      ours: () => percentOf(matched(flow)),
    }),
  ),
  {
    title: 'Worked capacity: the airflow’s part of it',
    expected: 4.04,
    tolerance: 0.01,
    unit: '%',
    source,
    known: 'computed',
    ours: () => percentOf([flowCause(0.07)]),
  },
  {
    title: 'Worked capacity: by Monte Carlo',
    expected: 11.16,
    tolerance: 0.2,
    unit: '%',
    source: 'arithmetic outside this project, 100 000 draws',
    known: 'computed',
    why: 'four standard errors of both, and ideal-gas moist air there',
    ours: () => {
      const drawn = simulate(total, at, causes({ dryBulb: 0.9, humidity: 3, flow: 0.07 }, 0), {
        draws: 100_000,
        seed: 1,
      });
      return (100 * drawn.u) / total(at);
    },
  },
  ...(
    [
      ['rectangular', 0.5196],
      ['triangular', 0.3674],
    ] as const
  ).map(
    ([shape, expected]): Check => ({
      title: `A limit of 0.9 °F as a ${shape} error`,
      expected,
      tolerance: 0.0001,
      unit: '°F',
      source: 'JCGM 100:2008 4.3',
      known: 'second-hand',
      ours: () => {
        const width = shape === 'rectangular' ? root3 : Math.sqrt(6);
        const limit = 0.9 * fahrenheitDegree;
        const one = { ...cause(shape, limit / width, { t1: 1 }), shape };
        return budget(({ t1 }) => t1, at, [one]).u / fahrenheitDegree;
      },
    }),
  ),
];
