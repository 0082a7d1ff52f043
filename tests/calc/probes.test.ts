import { describe, expect, test } from 'vitest';
import { leakPrices } from '../../src/calc/confidence/leaks.ts';
import { random } from '../../src/calc/confidence/random.ts';
import {
  alignClocks,
  assess,
  compareProbes,
  condensateCheck,
  explanations,
  fromFahrenheit,
  moistAir,
  type Outcome,
  type ProbeLog,
  type ProbePair,
  pairLogs,
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

describe('two clocks', () => {
  const chance = random(9);
  const curve = (t: number) =>
    24 - 6 * (1 - Math.exp(-Math.max(0, t - 300) / 200)) + 3 * Math.exp(-(((t - 1500) / 200) ** 2));
  function logOf(step: number, late: number, scatter: number): ProbeLog {
    const time = Array.from({ length: Math.floor(2400 / step) }, (_, i) => i * step);
    return {
      time,
      dryBulb: time.map((t) => curve(t + late) + scatter * chance.normal()),
      humidity: time.map(() => 0.5),
    };
  }

  test.each([0, 37, -142, 410])('are brought together when one is %d s behind', (late) => {
    const found = alignClocks(logOf(5, 0, 0.02), logOf(7, late, 0.02));
    expect(Math.abs((found?.shift ?? Number.NaN) - late)).toBeLessThan(3);
    expect(found?.correlation).toBeGreaterThan(0.99);
  });

  test('leaves out what is no number', () => {
    const time = [0, 10, 20];
    const first: ProbeLog = { time, dryBulb: [24, Number.NaN, 24], humidity: [0.5, 0.5, Number.NEGATIVE_INFINITY] };
    const second: ProbeLog = { time, dryBulb: [25, 25, 25], humidity: [0.5, 0.5, 0.5] };
    expect(pairLogs(first, second, { shift: 0, apart: 1 })).toEqual([
      { time: 0, entering: { dryBulb: 24, humidity: 0.5 }, leaving: { dryBulb: 25, humidity: 0.5 } },
      { time: 20, entering: { dryBulb: 24, humidity: null }, leaving: { dryBulb: 25, humidity: 0.5 } },
    ]);
  });

  test('cannot be told from air that stands still', () => {
    const still = (seed: number): ProbeLog => {
      const { normal } = random(seed);
      const time = Array.from({ length: 200 }, (_, i) => 10 * i);
      return { time, dryBulb: time.map(() => 24 + 0.05 * normal()), humidity: time.map(() => null) };
    };
    expect(alignClocks(still(1), still(2))).toBeNull();
    expect(codeOf(() => alignClocks({ time: [0], dryBulb: [24], humidity: [null] }, still(1)))).toBe('noRows');
  });

  test('readings are paired with the nearest of the other clock, none too far apart', () => {
    const first: ProbeLog = { time: [0, 10, 20], dryBulb: [20, 21, 22], humidity: [0.5, null, 0.5] };
    const second: ProbeLog = { time: [91, 103, 140], dryBulb: [20.1, 21.1, 25], humidity: [0.4, 0.4, 0.4] };
    const pairs = pairLogs(first, second, { shift: -91, apart: 4 });
    expect(pairs.map(({ time, leaving }) => [time, leaving.dryBulb])).toEqual([
      [0, 20.1],
      [10, 21.1],
    ]);
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
