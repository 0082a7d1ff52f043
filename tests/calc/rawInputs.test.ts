/** Inputs of a test that no reading stands for: a spot beside the mean, a rating that is out; and air that cannot be. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { resultsOf } from '../../src/calc/assess.ts';
import { testResults } from '../../src/calc/confidence/testWork.ts';
import { moistAir, saturationHumidityRatio, type TestInput } from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';
import { close, figures, input, value, workOf } from './workCases.ts';

describe('an input that is no reading', () => {
  const { at, work } = workOf(wholeTest);
  const { ratio, leaving, entering } = resultsOf(wholeTest);
  const found = value(ratio);
  /** The results with some inputs set. */
  function worked(set: Partial<Record<TestInput, number>>): Float64Array {
    const values = Float64Array.from(at);
    for (const [name, to] of Object.entries(set) as [TestInput, number][]) values[input(name)] = to;
    const out = new Float64Array(testResults.length);
    work(values, out);
    return out;
  }

  test('a rating that is out by 2 % divides the ratio by as much, and one blower heat inside it adds to what is expected', () => {
    expect(worked({ rating: 0.02 })[0]).toBeCloseTo(found.value / 1.02, 12);
    expect(worked({ 'rating.blowerPower': 100 })[0]).toBeCloseTo(found.measured / (found.expected + 100), 12);
  });

  test('a spot warmer or colder than the mean lies on the line of the process, as an assessment of that air has it', () => {
    const [one, two] = [value(entering), value(leaving)];
    for (const by of [0.4, -0.4, 1]) {
      const share = by / (one.dryBulb - two.dryBulb);
      const spot = moistAir({
        dryBulb: two.dryBulb + by,
        humidityRatio: two.humidityRatio + share * (one.humidityRatio - two.humidityRatio),
      });
      const { dryBulb, relativeHumidity } = spot;
      const out = worked({ supplyMixing: by });
      const whole = figures({ ...wholeTest, leaving: { dryBulb, relativeHumidity, wetBulb: null } });
      // What the probe itself showed stays what it was.
      close(
        out,
        whole.map((figure, i) => (testResults[i] === 'supplyHumidity' ? two.relativeHumidity : figure)),
      );
    }
  });

  test('leaves no result where the air would be more than saturated or less than dry, and every result elsewhere', () => {
    const humid = fc.double({ min: 0.6, max: 1.05, noNaN: true });
    fc.assert(
      fc.property(humid, fc.double({ min: -2, max: 0.5, noNaN: true }), (relativeHumidity, by) => {
        const out = worked({ 'leaving.humidity': relativeHumidity, supplyMixing: by });
        let isAir = relativeHumidity <= 1;
        if (isAir) {
          const [one, two] = [value(entering), moistAir({ dryBulb: at[2] as number, relativeHumidity })];
          const share = by / (one.dryBulb - two.dryBulb);
          const W = two.humidityRatio + share * (one.humidityRatio - two.humidityRatio);
          // By the limits of a state, without the rounding that one allows.
          isAir = by >= 0 || W <= saturationHumidityRatio(two.dryBulb + by, two.pressure);
        }
        expect(Number.isFinite(out[1])).toBe(isAir);
        expect(Number.isFinite(out[0])).toBe(isAir);
      }),
      { numRuns: 200 },
    );
    // The driest air there is is air; at one temperature on both sides there is a line of the process no more, but a result.
    for (const set of [
      { 'entering.humidity': 0 },
      { 'leaving.humidity': 0 },
      { 'leaving.dryBulb': at[0] as number, 'leaving.humidity': 0.4 },
    ])
      expect(Number.isFinite(worked(set)[1])).toBe(true);
    // 97 % a kelvin below the mean is fog, 90 % is none; 89.2 % is fog two kelvins below.
    const isAir = (relativeHumidity: number, by: number) =>
      Number.isFinite(worked({ 'leaving.humidity': relativeHumidity, supplyMixing: by })[1]);
    expect([isAir(0.97, -1), isAir(0.9, -1), isAir(0.892, -2), isAir(0.97, 1)]).toEqual([false, true, false, true]);
    for (const set of [{ 'entering.humidity': 1.01 }, { 'entering.humidity': -0.01 }, { 'leaving.humidity': -0.01 }])
      expect([...worked(set)].every(Number.isNaN)).toBe(true);
  });

  test('without a rating there is no ratio and every other figure', () => {
    const bare = { ...wholeTest, rating: null };
    const { at: values, work: bareWork } = workOf(bare);
    const out = new Float64Array(testResults.length);
    bareWork(values, out);
    expect([...out].map(Number.isFinite)).toEqual(testResults.map((result) => result !== 'ratio'));
  });

  test('nothing is left to expect where the blower eats all of it, or the table’s line runs below nothing', () => {
    expect(worked({ 'blower.power': 20e3 })[0]).toBeNaN();
    expect(worked({ outdoorDryBulb: 200 })[0]).toBeNaN();
    // Read by hand: the line through 85 and 95 °F at this wet bulb, and where it comes to nothing.
    const wet = (value(entering).wetBulb * 9) / 5 + 32;
    const [warm, hot] = [33_600 + ((wet - 62) / 5) * 3300, 31_700 + ((wet - 62) / 5) * 3200];
    const nothing = ((85 + (10 * warm) / (warm - hot) - 32) * 5) / 9;
    const ratioAt = (outdoorDryBulb: number) => worked({ outdoorDryBulb, 'blower.power': 0 })[0] as number;
    // Past it the blower heat inside the table would still be there.
    expect([Number.isFinite(ratioAt(nothing - 0.5)), Number.isFinite(ratioAt(nothing + 0.5))]).toEqual([true, false]);
    expect(worked({ outdoorDryBulb: 200 })[1]).toBeCloseTo(found.measured, 6);
  });
});
