/** The guides to uncertainty, by their own worked examples: first order, coverage, Monte Carlo, conformity. */
import { budget, conformance, type ErrorSource, type Shape, simulate } from '../../src/calc/index.ts';
import type { Check } from './check.ts';
import type { NotOurs } from './notOurs.ts';

const none = { shape: 'normal', degreesOfFreedom: null } as const;

/** The mean of repeated readings: each reading its own cause of one name, off by its share of the scatter. */
function means<Input extends string>(
  readings: Readonly<Record<Input, readonly number[]>>,
): { readonly at: Record<Input, number>; readonly sources: readonly ErrorSource<Input>[] } {
  const inputs = Object.keys(readings) as Input[];
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const at = Object.fromEntries(inputs.map((input) => [input, mean(readings[input])])) as Record<Input, number>;
  const count = readings[inputs[0] as Input].length;
  const sources = Array.from({ length: count }, (_, i) => ({
    ...none,
    name: 'readings',
    u: 1 / Math.sqrt(count * (count - 1)),
    degreesOfFreedom: count - 1,
    moves: Object.fromEntries(inputs.map((input) => [input, (readings[input][i] as number) - at[input]])) as Record<
      Input,
      number
    >,
  }));
  return { at, sources };
}

const temperatures = means({
  t: [
    96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.2,
    101.57, 101.84, 102.36, 102.72,
  ],
});
const twenty = () => budget(({ t }) => t, temperatures.at, temperatures.sources);

const tenResistors = Object.fromEntries(Array.from({ length: 10 }, (_, i) => [`R${i}`, 1000]));
const sum = (inputs: Readonly<Record<string, number>>) => Object.values(inputs).reduce((all, one) => all + one, 0);
const oneStandard: ErrorSource<string>[] = [
  { ...none, name: 'standard', u: 0.1, moves: Object.fromEntries(Object.keys(tenResistors).map((key) => [key, 1])) },
];
const tenStandards = Object.keys(tenResistors).map((key): ErrorSource<string> => {
  return { ...none, name: key, u: 0.1, moves: { [key]: 1 } };
});

/** Voltage in V, current in A, phase in rad, each read five times together. */
const circuit = means({
  V: [5.007, 4.994, 5.005, 4.99, 4.999],
  I: [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
  phi: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
});
type Circuit = typeof circuit.at;
const impedance = {
  R: ({ V, I, phi }: Circuit) => (V / I) * Math.cos(phi),
  X: ({ V, I, phi }: Circuit) => (V / I) * Math.sin(phi),
  Z: ({ V, I }: Circuit) => V / I,
};
/** The same scatter taken as if the three had been read at different times. */
const asIfIndependent = (['V', 'I', 'phi'] as const).flatMap((input) =>
  circuit.sources.map((source) => ({ ...source, name: input, moves: { [input]: source.moves[input] as number } })),
);

const effective = () =>
  budget(({ a, b, c }) => a + b + c, { a: 0, b: 0, c: 0 }, [
    { ...none, name: 'a', u: 0.25, degreesOfFreedom: 9, moves: { a: 1 } },
    { ...none, name: 'b', u: 0.57, degreesOfFreedom: 4, moves: { b: 1 } },
    { ...none, name: 'c', u: 0.82, degreesOfFreedom: 14, moves: { c: 1 } },
  ]);

/** The factor of a two-sided range: both tails together hold 1 − p. */
const factor = (p: number, degreesOfFreedom: number | null) =>
  budget(({ x }) => x, { x: 0 }, [{ ...none, name: 'x', u: 1, degreesOfFreedom, moves: { x: 1 } }], {
    confidence: (1 + p) / 2,
  }).interval.k as number;

const four = { a: 0, b: 0, c: 0, d: 0 };
const added = ({ a, b, c, d }: typeof four) => a + b + c + d;
function fourOf(shape: Shape, last = 1) {
  const sources = (['a', 'b', 'c', 'd'] as const).map((key): ErrorSource<keyof typeof four> => {
    return { ...none, name: key, shape, u: key === 'd' ? last : 1, moves: { [key]: 1 } };
  });
  return simulate(added, four, sources, { draws: 400_000, seed: 1, confidence: 0.975 });
}

const gum = 'JCGM 100:2008';
const supplement = 'JCGM 101:2008, clause 9';
const conformity = 'JCGM 106:2012';
const h2 = `${gum} H.2, its five simultaneous readings`;
const drawn = 'the rounding of the source, and a quantile of 400 000 draws known to about 0.01 of a standard deviation';

export const checks: readonly Check[] = [
  ...(
    [
      ['mean', 100.145, 0.0006, () => twenty().value],
      ['standard uncertainty of the mean', 0.333, 0.0006, () => twenty().u],
      ['degrees of freedom', 19, 1e-9, () => twenty().degreesOfFreedom ?? 0],
    ] as const
  ).map(([what, expected, tolerance, ours]): Check => {
    const title = `Twenty temperatures: ${what}`;
    return { title, expected, tolerance, unit: '°C', source: `${gum} 4.4.3`, known: 'second-hand', ours };
  }),
  {
    title: 'Ten resistors against one standard: their errors add up',
    expected: 1,
    tolerance: 1e-9,
    unit: 'Ω',
    source: `${gum} 5.2.2`,
    known: 'memory, recomputed',
    ours: () => budget(sum, tenResistors, oneStandard).u,
  },
  {
    title: 'Ten resistors against ten standards: their variances add up',
    expected: 0.3162,
    tolerance: 1e-4,
    unit: 'Ω',
    source: `${gum} 5.2.2`,
    known: 'memory, recomputed',
    ours: () => budget(sum, tenResistors, tenStandards).u,
  },
  {
    title: 'Three components: effective degrees of freedom',
    expected: 19,
    tolerance: 0.06,
    unit: '1',
    source: `${gum} G.4.1`,
    known: 'second-hand',
    ours: () => effective().degreesOfFreedom ?? 0,
  },
  {
    title: 'Three components: combined',
    expected: 1.03,
    tolerance: 0.006,
    unit: '%',
    source: `${gum} G.4.1`,
    known: 'second-hand',
    ours: () => effective().u,
  },
  ...(
    [
      [0.95, 16, 2.12],
      [0.9545, 16, 2.17],
      [0.99, 16, 2.92],
      [0.9545, null, 2],
    ] as const
  ).map(
    ([p, free, expected]): Check => ({
      title: `Coverage factor for ${p}, ${free ?? 'no end of'} degrees of freedom`,
      expected,
      tolerance: 0.006,
      unit: '1',
      source: `${gum}, table G.2`,
      known: 'second-hand',
      ours: () => factor(p, free),
    }),
  ),
  ...(
    [
      ['R', 127.732, 0.0711],
      ['X', 219.847, 0.2956],
      ['Z', 254.26, 0.2363],
    ] as const
  ).flatMap(([key, value, u]): Check[] => {
    const found = () => budget(impedance[key], circuit.at, circuit.sources);
    const common = { unit: 'Ω', source: h2, known: 'second-hand' as const };
    return [
      { title: `Impedance ${key}`, expected: value, tolerance: 0.001, ...common, ours: () => found().value },
      { title: `Impedance ${key}: uncertainty`, expected: u, tolerance: 0.0005, ...common, ours: () => found().u },
    ];
  }),
  {
    title: 'Impedance R: degrees of freedom of five readings made together',
    expected: 4,
    tolerance: 1e-9,
    unit: '1',
    source: h2,
    known: 'second-hand',
    ours: () => budget(impedance.R, circuit.at, circuit.sources).degreesOfFreedom ?? 0,
  },
  {
    title: 'Impedance R: the wrong uncertainty when the readings are taken as independent',
    expected: 0.1945,
    tolerance: 0.0005,
    unit: 'Ω',
    source: h2,
    known: 'computed',
    ours: () => budget(impedance.R, circuit.at, asIfIndependent).u,
  },
  ...(
    [
      ['9.2.2', 'four normal numbers', () => fourOf('normal'), 3.92, 0.02],
      ['9.2.3', 'four rectangular numbers', () => fourOf('rectangular'), 3.88, 0.02],
      ['9.2.4', 'three rectangular numbers and a ten times wider one', () => fourOf('rectangular', 10), 17, 0.1],
    ] as const
  ).flatMap(([clause, what, run, expected, tolerance]): Check[] => {
    const common = { tolerance, unit: '1', source: supplement, known: 'memory, recomputed' as const, why: drawn };
    return [
      { title: `${clause}, ${what}: low end`, expected: -expected, ...common, ours: () => run().interval.low },
      { title: `${clause}, ${what}: high end`, expected, ...common, ours: () => run().interval.high },
    ];
  }),
  {
    title: '9.2.4: standard uncertainty',
    expected: 10.15,
    tolerance: 0.05,
    unit: '1',
    source: supplement,
    known: 'memory, recomputed',
    ours: () => fourOf('rectangular', 10).u,
  },
  {
    title: 'A voltage below its upper limit',
    expected: 0.9192,
    tolerance: 0.0005,
    unit: '1',
    source: `${conformity} 7.3`,
    known: 'memory, recomputed',
    ours: () => conformance({ value: -5.47, u: 0.05 }, { upper: -5.4 }).probability,
  },
  ...(
    [
      [0.95, 1.6449],
      [0.975, 1.96],
      [0.99, 2.3263],
    ] as const
  ).map(
    ([confidence, expected]): Check => ({
      title: `Guard band of one side at ${confidence}`,
      expected,
      tolerance: 0.0005,
      unit: '1',
      source: `${conformity} 8.3`,
      known: 'memory, recomputed',
      ours: () => conformance({ value: 0, u: 1 }, { lower: 0, confidence }).acceptFrom ?? 0,
    }),
  ),
  ...(
    [
      [0.93, 0.035, 0.804],
      [0.93, 0.06, 0.691],
      [0.97, 0.06, 0.878],
      [0.88, 0.06, 0.369],
    ] as const
  ).map(
    ([value, u, expected]): Check => ({
      title: `A ratio of ${value} with ${u} against 0.9`,
      expected,
      tolerance: 0.001,
      unit: '1',
      source: 'arithmetic outside this project, by JCGM 106:2012 7.3',
      known: 'computed',
      ours: () => conformance({ value, u }, { lower: 0.9 }).probability,
    }),
  ),
  {
    title: 'Where a ratio with 0.05 is accepted at nineteen in twenty',
    expected: 0.98224,
    tolerance: 0.0001,
    unit: '1',
    source: 'arithmetic outside this project, by JCGM 106:2012 8.3',
    known: 'computed',
    ours: () => conformance({ value: 0.93, u: 0.05 }, { lower: 0.9, confidence: 0.95 }).acceptFrom ?? 0,
  },
];

export const notOurs: readonly NotOurs[] = [
  {
    what: 'Impedance: correlations of R, X and Z (−0.588, −0.485, 0.993) and of the readings',
    source: h2,
    why: 'shared causes stand in the place of correlations, and no result here needs one',
  },
  {
    what: 'Ball bearings: 4.2 % do not conform, 0.8 % are accepted falsely, an acceptance limit of 1.672 µm',
    source: `${conformity} 9.5.4`,
    why: 'needs the spread of a whole production; one system is judged here',
  },
];
