/** Tests of every kind that a whole test can be of, and the figures that an assessment has of them. */
import fc from 'fast-check';
import { resultsOf } from '../../src/calc/assess.ts';
import { sourceFacts } from '../../src/calc/confidence/sure.ts';
import { testInputs, testResults, testWork } from '../../src/calc/confidence/testWork.ts';
import type { Outcome, RatingRow, Test, TestInput } from '../../src/calc/index.ts';
import { rows, wholeTest } from './testCase.ts';

export const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};
type Rating = NonNullable<Test['rating']>;
const rating = wholeTest.rating as Rating;
const { multipliers } = rating;
/** Every row once for each value of another axis, its total in proportion to it, so that all cells lie on one surface. */
const blocks = (axis: 'dryAirFlow' | 'enteringDryBulb', at: readonly number[], per: number): readonly RatingRow[] =>
  rows.flatMap((row) =>
    at.map((one) => ({ ...row, [axis]: one, total: (row.total as number) * (1 + per * (one - (at[0] as number))) })),
  );

/** Tables that every step of an expectation is taken with. */
const tables: Readonly<Record<string, Rating>> = {
  net: rating,
  gross: { ...rating, basis: 'gross' },
  unsure: { ...rating, basis: 'unsure' },
  'with blocks of airflow': { ...rating, rows: blocks('dryAirFlow', [0.5, 0.75], 0.4), beyond: 'extend' },
  'with three blocks, the flow below them': {
    ...rating,
    rows: blocks('dryAirFlow', [0.7, 0.8, 0.9], 0.4),
    beyond: 'extend',
  },
  'with dry bulbs': { ...rating, rows: blocks('enteringDryBulb', [22, 26], 0.01) },
  'with one airflow': { ...rating, rows: blocks('dryAirFlow', [0.6], 0) },
  'with one airflow, gross': { ...rating, basis: 'gross', rows: blocks('dryAirFlow', [0.6], 0) },
  'with multipliers': {
    ...rating,
    multipliers: {
      ...multipliers,
      airflow: [
        { dryAirFlow: 0.45, total: 0.95, sensible: null },
        { dryAirFlow: 0.75, total: 1.03, sensible: null },
      ],
    },
  },
  'with the maker’s match and line': {
    ...rating,
    multipliers: { ...multipliers, indoorMatch: 0.98, lineLength: 0.96 },
  },
  'of published curves': {
    ...rating,
    from: 'generic',
    rows: [],
    certified: 10e3,
    generic: { unit: 'airConditioner', stage: 'one', dryAirFlow: 0.62 },
  },
};
/** Damp enough for a wet coil at any height. */
const damp = { ...wholeTest.entering, relativeHumidity: 0.56 };
const airs = {
  humidity: [damp, wholeTest.leaving],
  'wet bulbs': [
    { dryBulb: 24, relativeHumidity: null, wetBulb: 17.5 },
    { dryBulb: 13, relativeHumidity: null, wetBulb: 12 },
  ],
  both: [damp, { dryBulb: 13, relativeHumidity: null, wetBulb: 12 }],
} as const;

export const cases = fc.record({
  rating: fc.constantFrom(...Object.keys(tables)),
  air: fc.constantFrom(...(Object.keys(airs) as (keyof typeof airs)[])),
  place: fc.constantFrom('entering', 'leaving', 'unsure'),
  kind: fc.constantFrom('actual', 'standard', 'unsure'),
  blower: fc.constantFrom('before coil', 'after coil', 'outside probes'),
  barometer: fc.constantFrom(101_325, 99_000, 84_000),
});
type Case = typeof cases extends fc.Arbitrary<infer T> ? T : never;
export function testOf({ rating: name, air, place, kind, blower, barometer }: Case): Test {
  const [entering, leaving] = airs[air];
  return {
    ...wholeTest,
    entering,
    leaving,
    airflow: { ...wholeTest.airflow, place, kind } as Test['airflow'],
    blower: { ...wholeTest.blower, place: blower } as Test['blower'],
    barometer,
    rating: tables[name] as Rating,
  };
}
export const workOf = (made: Test) =>
  testWork(made, sourceFacts(resultsOf(made)) as NonNullable<ReturnType<typeof sourceFacts>>);
/** The figures of an assessment in the order of the work. */
export function figures(made: Test): readonly number[] {
  const { load, ratio, entering, leaving } = resultsOf(made);
  const { total, sensible, latent, sensibleHeatRatio, condensate, dryAirFlow, apparatus } = value(load);
  const drop = value(entering).dryBulb - value(leaving).dryBulb;
  const coil = apparatus ?? { dewPoint: Number.NaN, bypassFactor: Number.NaN };
  const first = [value(ratio).value, total, sensible, latent, sensibleHeatRatio, condensate];
  return [...first, dryAirFlow, drop, value(leaving).relativeHumidity, coil.dewPoint, coil.bypassFactor];
}
export const close = (list: Iterable<number>, what: readonly number[]) =>
  [...list].forEach((one, i) => {
    const expected = what[i] as number;
    const isClose = Number.isNaN(expected)
      ? Number.isNaN(one)
      : Math.abs(one - expected) <= 1e-7 * Math.max(Math.abs(expected), 0.01);
    if (!isClose) throw new Error(`${testResults[i]}: ${one} instead of ${expected}`);
  });
/** Where an input stands. */
export const input = (name: TestInput) => testInputs.indexOf(name as (typeof testInputs)[number]);
