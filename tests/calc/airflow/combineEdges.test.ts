/** Several answers as one: which pairs are said to disagree, by how much, and what is said of a scatter that is allowed. */
import { describe, expect, test } from 'vitest';
import { type AirflowFound, type AirflowMethod, combineAirflows, standardAirDensity } from '../../../src/calc/index.ts';
import { said } from './support.ts';

/** An answer as a method gives it: a flow as standard air, m³/s, and what each cause does to it. */
function answer(method: AirflowMethod, volumeFlow: number, causes: Readonly<Record<string, number>>): AirflowFound {
  return {
    method,
    volumeFlow,
    at: 'standard',
    dryAirFlow: volumeFlow * standardAirDensity,
    u: Math.hypot(...Object.values(causes)),
    sources: Object.entries(causes).map(([name, u]) => ({
      name,
      u,
      shape: 'normal',
      degreesOfFreedom: null,
      moves: { airflow: 1 },
      basis: 'commonPractice',
    })),
    evidence: true,
    partial: false,
    speed: 'cooling',
    remarks: [],
    problems: [],
  };
}

describe('answers that disagree', () => {
  test('are named pair by pair, the farthest apart first, in whatever order they come', () => {
    // Alike in their uncertainty, so that the mean is 0.4733 and a pair is apart by its difference over 0.4733·0.05·√2.
    const three = [
      answer('hood', 0.4, { a: 0.05 }),
      answer('traverse', 0.5, { b: 0.05 }),
      answer('flowGrid', 0.52, { c: 0.05 }),
    ];
    const unit = (1.42 / 3) * 0.05 * Math.SQRT2;
    for (const answers of [three, [...three].reverse()]) {
      const { disagreements } = combineAirflows(answers);
      expect(disagreements.map(({ high, low }) => [high, low])).toEqual([
        ['flowGrid', 'hood'],
        ['traverse', 'hood'],
      ]);
      expect(disagreements[0]?.apart).toBeCloseTo(0.12 / unit, 9);
      expect(disagreements[1]?.apart).toBeCloseTo(0.1 / unit, 9);
      expect(disagreements[0]?.gap).toBeCloseTo(0.12 / (1.42 / 3), 9);
    }
  });

  test('do so sooner where they share a gauge, whose error their difference does not have', () => {
    const two = (gauge: Readonly<Record<string, number>>, other: Readonly<Record<string, number>>) =>
      combineAirflows([
        answer('traverse', 0.5, { a: 0.03, ...gauge }),
        answer('flowGrid', 0.45, { b: 0.02, ...other }),
      ]);
    const shared = two({ gauge: 0.04 }, { gauge: 0.04 });
    const apart = two({ one: 0.04 }, { another: 0.04 });
    expect(apart.disagreements).toEqual([]);
    const [found] = shared.disagreements;
    expect(found!.apart).toBeCloseTo(found!.gap / Math.hypot(0.03, 0.02), 9);
  });

  test.each([
    [1.95, 0],
    [1.97, 1],
  ])('are those that are more than 1.96 standard uncertainties apart: %s', (times, count) => {
    // With one uncertainty the mean is in the middle, m, and the two stand at m·(1 ± times·u/√2).
    const off = (times * 0.05) / Math.SQRT2;
    const { disagreements } = combineAirflows([
      answer('hood', 0.5 * (1 - off), { a: 0.05 }),
      answer('traverse', 0.5 * (1 + off), { b: 0.05 }),
    ]);
    expect(disagreements).toHaveLength(count);
  });
});

describe('a scatter', () => {
  const two = (other: number) =>
    combineAirflows([answer('hood', 0.5, { a: 0.05 }), answer('traverse', other, { b: 0.05 })]);

  test('that is more than expected and still allowed is a note, with what the range is widened by', () => {
    // 0.5 and 0.45: gap 0.10526 of the mean, χ² = gap²/(2·0.05²) = 2.21607, and up to 3.841 is allowed.
    const found = two(0.45);
    expect(found.birge).toBeCloseTo(1.48865, 5);
    expect(found.consistent).toBe(true);
    expect(said({ ...found, method: 'hood' } as unknown as AirflowFound)).toEqual([
      ['airflowsScatter', 'note', ['B', Number(found.birge.toPrecision(6))]],
    ]);
  });

  test('that is less than expected is nothing to speak of', () => {
    expect([two(0.49).birge, two(0.49).remarks]).toEqual([1, []]);
  });
});

test('a cause that several share reaches the mean once, with its sign', () => {
  const { sources } = combineAirflows([
    answer('traverse', 0.5, { a: 0.03, gauge: 0.04 }),
    answer('flowGrid', 0.5, { b: 0.03, gauge: 0.02 }),
  ]);
  const [first, second] = combineAirflows([
    answer('traverse', 0.5, { a: 0.03, gauge: 0.04 }),
    answer('flowGrid', 0.5, { b: 0.03, gauge: 0.02 }),
  ]).weighed.map(({ weight }) => weight) as [number, number];
  const gauge = sources.find(({ name }) => name === 'gauge')!;
  expect(gauge.u * gauge.moves.airflow!).toBeCloseTo(first * 0.04 + second * 0.02, 12);
});

test('a method given twice is named by its second place', () => {
  const hood = answer('hood', 0.5, { a: 0.05 });
  expect(() => combineAirflows([answer('traverse', 0.5, { b: 0.05 }), hood, hood])).toThrow(
    expect.objectContaining({ code: 'repeatedRow', value: 2, min: 0, max: 2 }),
  );
});
