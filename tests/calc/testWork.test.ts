/** A whole test as one function of its raw inputs, against the whole assessment done anew with each of them moved. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstResults, testResults } from '../../src/calc/confidence/testWork.ts';
import type { Test, TestInput } from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';
import { cases, close, figures, input, testOf, workOf } from './workCases.ts';

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
