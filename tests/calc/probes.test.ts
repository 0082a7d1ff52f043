import { describe, expect, test } from 'vitest';
import { leakPrices } from '../../src/calc/confidence/leaks.ts';
import { random } from '../../src/calc/confidence/random.ts';
import {
  assess,
  compareProbes,
  condensateCheck,
  explanations,
  fromFahrenheit,
  moistAir,
  type Outcome,
  type ProbePair,
  type Test,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';
import { wholeTest } from './testCase.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};

const pair = (time: number, apart: number, humidity: number | null = null): ProbePair => ({
  time,
  entering: { dryBulb: 24 + apart, humidity: humidity === null ? null : 0.5 + humidity },
  leaving: { dryBulb: 24, humidity: humidity === null ? null : 0.5 },
});
const measure = { measure: 'relativeHumidity' } as const;

describe('compareProbes', () => {
  test('five stamped readings in any order give the mean of their differences and s/√5, ν = 4', () => {
    const differences = [0.3, 0.1, 0.2, 0.2, 0.2];
    const pairs = differences.map((apart, i) => pair(120 * i, apart, -0.01));
    const { difference, isCommon, drift } = compareProbes([...pairs].reverse(), measure);
    expect(difference.dryBulb).toBeCloseTo(0.2, 12);
    expect(difference.humidity).toBeCloseTo(-0.01, 12);
    expect(difference.scatter?.dryBulb).toBeCloseTo(Math.sqrt(0.02 / 4 / 5), 12);
    expect(difference.scatter?.degreesOfFreedom).toBe(4);
    expect(isCommon).toBe(true);
    expect(drift?.dryBulb).toBeCloseTo(0.1, 12);
  });

  test('a thousand readings that follow one another are known to five parts, not to s/√n', () => {
    const chance = random(3);
    let wander = 0;
    const pairs = Array.from({ length: 1000 }, (_, i) => {
      wander = 0.99 * wander + 0.02 * chance.normal();
      return pair(i, wander);
    });
    const { difference } = compareProbes(pairs, measure);
    const apart = pairs.map(({ entering, leaving }) => entering.dryBulb - leaving.dryBulb);
    const mean = apart.reduce((sum, one) => sum + one, 0) / 1000;
    const s = Math.sqrt(apart.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 999);
    expect(difference.scatter?.dryBulb).toBeGreaterThan((3 * s) / Math.sqrt(1000));
  });

  test('one reading has no scatter; a humidity that one of the probes lacks is not compared', () => {
    expect(compareProbes([pair(0, 0.6, 0.02)], measure)).toMatchObject({
      difference: { scatter: null },
      isCommon: false,
      drift: null,
    });
    expect(compareProbes([pair(0, 0.1, 0.02), pair(1, 0.1)], measure).difference.humidity).toBeNull();
  });

  test('refuses nothing to compare and what is no reading', () => {
    expect(codeOf(() => compareProbes([], measure))).toBe('noRows');
    expect(codeOf(() => compareProbes([pair(0, Number.NaN)], measure))).toBe('notFinite');
    expect(codeOf(() => compareProbes([pair(0, 0, 5)], measure))).toBe('outOfRange');
  });
});

describe('condensateCheck', () => {
  const assessment = assess(wholeTest);
  const { condensate } = assessment.ranges;
  const entering = value(assessment.entering);
  const probes = condensate as NonNullable<typeof condensate>;
  const caught = (share: number) =>
    condensateCheck({ mass: share * probes.value * 1800, duration: 1800, massLimit: null }, probes, entering);

  test('agrees with what the probes see when it does, and can say less or more', () => {
    expect(caught(1).outcome).toBe('agrees');
    expect(caught(1).difference.value).toBeCloseTo(0, 12);
    expect(caught(2.5).outcome).toBe('more');
    expect(caught(0.1).outcome).toBe('less');
  });

  test('is surer than two humidity probes: about a tenth against a half', () => {
    const { u, value: rate } = caught(1).caught;
    expect(u / rate).toBeGreaterThan(0.05);
    expect(u / rate).toBeLessThan(0.1);
    expect(probes.u / probes.value).toBeGreaterThan(0.4);
  });

  test('gives the latent load that it stands for: 1 lb/h is about 1090 Btu/h by the probes’ own count', () => {
    const { latent } = condensateCheck({ mass: 0.45359237, duration: 3600, massLimit: 0 }, probes, entering);
    expect(latent / 0.29307).toBeGreaterThan(1060);
    expect(latent / 0.29307).toBeLessThan(1110);
    expect(caught(1).latent / value(assessment.measured).latent).toBeCloseTo(1, 2);
  });

  test('refuses no water and no time', () => {
    expect(codeOf(() => condensateCheck({ mass: 0, duration: 60, massLimit: null }, probes, entering))).toBe(
      'outOfRange',
    );
    expect(codeOf(() => condensateCheck({ mass: 1, duration: 0, massLimit: null }, probes, entering))).toBe(
      'outOfRange',
    );
  });
});

describe('where to look', () => {
  const air = (t: number, relativeHumidity: number) => moistAir({ dryBulb: fromFahrenheit(t), relativeHumidity });

  test('leaks are priced by the states: a bypass reads high, attic air reads low', () => {
    const prices = leakPrices(air(75, 0.5), air(56, 0.88));
    const reads = Object.fromEntries(prices.map(({ code, reads: share }) => [code, Math.round(100 * share)]));
    expect(reads).toEqual({ bypass: 11, cabinet: -8, returnLeak: -14 });
  });

  test('the measurement comes first and the circuit last, and only the circuit is for licensed people', () => {
    const list = explanations(assess(wholeTest));
    const groups = ['measurement', 'leaks', 'mechanical', 'refrigerant'];
    const order = list.map(({ group }) => groups.indexOf(group));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    for (const { group, licensed } of list) expect(licensed).toBe(group === 'refrigerant');
  });

  test('a tenth of the charge is below what this test can see, and half of the outdoor air is not far from it', () => {
    const list = explanations(assess(wholeTest));
    const tenth = list.find(({ code, size }) => code === 'undercharge' && size === 0.1);
    expect(tenth).toMatchObject({ isVisible: false });
    expect(tenth?.reads?.low).toBeCloseTo(-0.049, 3);
    expect(list.find(({ code, size }) => code === 'undercharge' && size === 0.3)?.isVisible).toBe(true);
  });

  test('figures count only where their whole range lies beyond the usual', () => {
    const evidence = (test: Test, code: string) =>
      explanations(assess(test)).find((one) => one.code === code)?.evidence;
    // The supply air is far from saturated, by more than its probe can err: air has missed the coil, or come in behind it.
    const dry: Test = { ...wholeTest, leaving: { ...wholeTest.leaving, relativeHumidity: 0.7 } };
    expect(evidence(dry, 'bypass')).toBe('supports');
    expect(evidence(wholeTest, 'bypass')).toBe('silent');
    const little: Test = { ...wholeTest, airflow: { ...wholeTest.airflow, volumeFlow: 0.36 } };
    expect(evidence(little, 'indoorAirflow')).toBe('supports');
    const blunt: Test = { ...little, airflow: { ...little.airflow, volumeFlow: 0.49, limit: 0.3 } };
    expect(evidence(blunt, 'indoorAirflow')).toBe('silent');
  });

  test('is empty while nothing is known', () => {
    const nothing = { dryBulb: null, relativeHumidity: null, wetBulb: null };
    expect(explanations(assess({ ...wholeTest, entering: nothing }))).toEqual([]);
  });
});
