import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Assessment, assess, type Test } from '../../src/calc/index.ts';
import { assessMeasured } from '../../src/calc/measured.ts';
import { hostile } from './hostileTest.ts';
import { wholeTest } from './testCase.ts';

/** What an assessment says without its expectation. */
const measuredPart = ({ pressure, entering, leaving, measured, checks }: Assessment) => ({
  pressure,
  entering,
  leaving,
  measured,
  checks,
});

test('the measured half is what the whole assessment says of it, whatever is put in', () => {
  fc.assert(
    fc.property(fc.oneof(hostile, fc.constant(wholeTest), fc.anything()), (input) => {
      expect(measuredPart(assessMeasured(input as Test))).toEqual(measuredPart(assess(input as Test)));
    }),
    { numRuns: 1000 },
  );
});

test('the measured half names nothing that the expectation waits for', () => {
  const { measured, expected, ratio, verdict } = assessMeasured(wholeTest);
  expect(measured.ok).toBe(true);
  const { improvements, remarks } = assessMeasured(wholeTest);
  expect([improvements, remarks]).toEqual([[], []]);
  for (const part of [expected, ratio, verdict]) expect(part).toEqual({ ok: false, waiting: [], problem: null });
});

test.each([
  ['entering', 'actual', ['dryAirFlow.actual']],
  ['leaving', 'standard', ['dryAirFlow.standard']],
  ['unsure', 'actual', ['entering.dryAirFlow.actual', 'leaving.dryAirFlow.actual', 'dryAirFlow.middle']],
  ['leaving', 'unsure', ['standard.dryAirFlow.standard', 'leaving.dryAirFlow.actual', 'dryAirFlow.middle']],
] as const)('an airflow at %s, counted as %s, shows each reading, and a middle only of several', (place, kind, ids) => {
  const steps: string[] = [];
  assess({ ...wholeTest, airflow: { ...wholeTest.airflow, place, kind } }, ({ id }) => steps.push(id));
  expect(steps.filter((id) => id.includes('dryAirFlow.'))).toEqual(ids);
});

test('what is no test at all is unreadable in every part', () => {
  const none = assessMeasured(null as unknown as Test);
  expect(none).toEqual(assess(null as unknown as Test));
  const problem = { code: 'unreadable', quantity: 'test', value: 0, min: 0, max: 0 };
  const { pressure, ranges, improvements, checks, remarks, ...parts } = none;
  expect(Object.keys(parts).sort()).toEqual(['entering', 'expected', 'leaving', 'measured', 'ratio', 'verdict']);
  for (const part of Object.values(parts)) expect(part).toEqual({ ok: false, waiting: [], problem });
  expect([pressure, improvements, checks, remarks]).toEqual([101_325, [], [], []]);
  expect(Object.values(ranges).every((range) => range === null)).toBe(true);
});
