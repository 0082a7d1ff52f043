import { expect, test } from 'vitest';
import { assess, type Outcome, simulateAssessment } from '../../src/calc/index.ts';
import { demoJob } from '../../src/job/demo.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { Job } from '../../src/job/types.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};

/** The same readings, typed in the other units: 75 °F is 23.888… °C, and so on. */
const inSi: Job = {
  ...demoJob,
  entered: {
    ...demoJob.entered,
    'entering.dryBulb': { text: String((75 - 32) / 1.8), unit: 'degC', origin: 'typed' },
    'leaving.dryBulb': { text: String((56 - 32) / 1.8), unit: 'degC', origin: 'typed' },
    outdoorDryBulb: { text: String((91 - 32) / 1.8), unit: 'degC', origin: 'typed' },
  },
};

test('the range and the verdict do not hang on the units in which the readings were typed', () => {
  const [ip, si] = [demoJob, inSi].map((job) => assess(toTest(job).test));
  const [first, second] = [value(ip!.ratio), value(si!.ratio)];
  expect(second.value).toBeCloseTo(first.value, 9);
  expect(second.u).toBeCloseTo(first.u, 9);
  expect(value(si!.verdict)).toMatchObject({
    outcome: value(ip!.verdict).outcome,
    low: value(ip!.verdict).low,
    high: value(ip!.verdict).high,
  });
});

test('the draws of the demo agree with its first order', () => {
  const { test: made } = toTest(demoJob);
  const drawn = value(simulateAssessment(made, { draws: 50_000, seed: 1 }));
  const { interval } = value(assess(made).ratio);
  expect(Math.abs(value(drawn.ratio).interval.low - interval.low)).toBeLessThan(0.01);
  expect(Math.abs(value(drawn.ratio).interval.high - interval.high)).toBeLessThan(0.01);
});
