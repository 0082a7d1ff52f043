/** A whole test as one function of its raw inputs, against the whole assessment done anew with each of them moved. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { resultsOf } from '../../src/calc/assess.ts';
import { sourceFacts } from '../../src/calc/confidence/sure.ts';
import { firstResults, testInputs, testResults, testWork } from '../../src/calc/confidence/testWork.ts';
import type { Outcome, RatingRow, Test, TestInput } from '../../src/calc/index.ts';
import { rows, wholeTest } from './testCase.ts';

const value = <T>(outcome: Outcome<T>): T => {
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

const cases = fc.record({
  rating: fc.constantFrom(...Object.keys(tables)),
  air: fc.constantFrom(...(Object.keys(airs) as (keyof typeof airs)[])),
  place: fc.constantFrom('entering', 'leaving', 'unsure'),
  kind: fc.constantFrom('actual', 'standard', 'unsure'),
  blower: fc.constantFrom('before coil', 'after coil', 'outside probes'),
  barometer: fc.constantFrom(101_325, 99_000, 84_000),
});
type Case = typeof cases extends fc.Arbitrary<infer T> ? T : never;
function testOf({ rating: name, air, place, kind, blower, barometer }: Case): Test {
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
const workOf = (made: Test) =>
  testWork(made, sourceFacts(resultsOf(made)) as NonNullable<ReturnType<typeof sourceFacts>>);
/** The figures of an assessment in the order of the work. */
function figures(made: Test): readonly number[] {
  const { load, ratio, entering, leaving } = resultsOf(made);
  const { total, sensible, latent, sensibleHeatRatio, condensate, dryAirFlow, apparatus } = value(load);
  const drop = value(entering).dryBulb - value(leaving).dryBulb;
  const coil = apparatus ?? { dewPoint: Number.NaN, bypassFactor: Number.NaN };
  const first = [value(ratio).value, total, sensible, latent, sensibleHeatRatio, condensate];
  return [...first, dryAirFlow, drop, value(leaving).relativeHumidity, coil.dewPoint, coil.bypassFactor];
}
const close = (list: Iterable<number>, what: readonly number[]) =>
  [...list].forEach((one, i) => {
    const expected = what[i] as number;
    const isClose = Number.isNaN(expected)
      ? Number.isNaN(one)
      : Math.abs(one - expected) <= 1e-7 * Math.max(Math.abs(expected), 0.01);
    if (!isClose) throw new Error(`${testResults[i]}: ${one} instead of ${expected}`);
  });

/** What each input does to a test, worked anew; the inputs that no reading has are left to their own tests below. */
const moves: Partial<Record<TestInput, (made: Test, by: number) => Test>> = {
  'entering.dryBulb': (made, by) => ({
    ...made,
    entering: { ...made.entering, dryBulb: (made.entering.dryBulb as number) + by },
  }),
  'leaving.dryBulb': (made, by) => ({
    ...made,
    leaving: { ...made.leaving, dryBulb: (made.leaving.dryBulb as number) + by },
  }),
  airflow: (made, by) => ({
    ...made,
    airflow: { ...made.airflow, volumeFlow: (made.airflow.volumeFlow as number) * (1 + by) },
  }),
  pressure: (made, by) => ({ ...made, barometer: (made.barometer as number) + by }),
  outdoorDryBulb: (made, by) => ({ ...made, outdoorDryBulb: (made.outdoorDryBulb as number) + by }),
  'blower.power': (made, by) => ({ ...made, blower: { ...made.blower, power: (made.blower.power as number) + by } }),
};
const humidity = (reading: Test['entering'], by: number): Test['entering'] =>
  reading.wetBulb === null
    ? { ...reading, relativeHumidity: (reading.relativeHumidity as number) + by / 100 }
    : { ...reading, wetBulb: reading.wetBulb + by / 3 };
const input = (name: TestInput) => testInputs.indexOf(name as (typeof testInputs)[number]);

describe('the work of a test', () => {
  test('gives at the readings what the assessment gives, whatever table, place, kind, blower and air', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const made = testOf(one);
        const { at, work } = workOf(made);
        const out = new Float64Array(testResults.length);
        work(at, out);
        close(out, figures(made));
      }),
      { numRuns: 120 },
    );
  });

  test('gives with its inputs moved what the assessment gives of readings that are moved as far', () => {
    const steps = fc.record({
      'entering.dryBulb': fc.double({ min: -0.3, max: 0.3, noNaN: true }),
      'leaving.dryBulb': fc.double({ min: 0, max: 0.3, noNaN: true }),
      airflow: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
      pressure: fc.double({ min: -300, max: 300, noNaN: true }),
      outdoorDryBulb: fc.double({ min: -1, max: 1, noNaN: true }),
      'blower.power': fc.double({ min: -100, max: 100, noNaN: true }),
    });
    const humidities = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(cases, steps, humidities, humidities, (one, by, first, second) => {
        // Rows of their own lie so near to one another that a step would leave the cell.
        fc.pre(one.rating !== 'of published curves');
        const made = testOf(one);
        const { at, work } = workOf(made);
        const values = Float64Array.from(at);
        let moved: Test = {
          ...made,
          entering: humidity(made.entering, first),
          leaving: humidity(made.leaving, second),
        };
        values[1] = (moved.entering.wetBulb ?? moved.entering.relativeHumidity) as number;
        values[3] = (moved.leaving.wetBulb ?? moved.leaving.relativeHumidity) as number;
        for (const [name, step] of Object.entries(by) as [TestInput, number][]) {
          moved = (moves[name] as (made: Test, by: number) => Test)(moved, step);
          values[input(name)] = (values[input(name)] as number) + step;
        }
        const out = new Float64Array(testResults.length);
        work(values, out);
        close(out, figures(moved));
      }),
      { numRuns: 120 },
    );
  });

  test('gives a shorter list without what comes last', () => {
    const { at, work } = workOf(wholeTest);
    const out = new Float64Array(firstResults);
    work(at, out);
    close(out, figures(wholeTest).slice(0, firstResults));
    expect(testResults.slice(firstResults)).toContain('apparatusDewPoint');
  });
});
