import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chiSquareAllowed, solve } from '../../../src/calc/airflow/leastSquares.ts';
import {
  type AirflowFound,
  type AirflowMethod,
  airflowMethods,
  combineAirflows,
  standardAirDensity,
  usualReason,
} from '../../../src/calc/index.ts';
import { codes, errorOf, stepsOf } from './support.ts';

type Causes = Readonly<Record<string, number>>;

/** An answer as a method gives it: a flow as standard air, m³/s, and what each cause does to it. */
function answer(
  method: AirflowMethod,
  volumeFlow: number,
  causes: Causes,
  change: Partial<AirflowFound> = {},
): AirflowFound {
  const sources = Object.entries(causes).map(([name, u]) => ({
    name,
    u: Math.abs(u),
    shape: 'normal' as const,
    degreesOfFreedom: null,
    moves: { airflow: Math.sign(u) },
    basis: 'commonPractice' as const,
  }));
  return {
    method,
    volumeFlow,
    at: 'standard',
    dryAirFlow: volumeFlow * standardAirDensity,
    u: Math.hypot(...Object.values(causes)),
    sources,
    evidence: true,
    partial: false,
    speed: 'cooling',
    remarks: [],
    problems: [],
    ...change,
  };
}

describe('combineAirflows', () => {
  test('one answer is itself, and says that it is alone', () => {
    const mean = combineAirflows([answer('hood', 0.5, { hood: 0.06 })]);
    expect(mean).toMatchObject({ volumeFlow: 0.5, at: 'standard', birge: 1, consistent: true, degreesOfFreedom: 0 });
    expect(mean.u).toBeCloseTo(0.06, 12);
    expect(codes(mean)).toEqual(['oneMethodOnly']);
  });

  test('independent answers count by one over the square of their uncertainty', () => {
    const mean = combineAirflows([answer('hood', 0.5, { a: 0.08 }), answer('flowGrid', 0.52, { b: 0.04 })]);
    // Own arithmetic: weights 1/5 and 4/5, u = 1/√(1/0.08² + 1/0.04²) = 0.035777.
    expect(mean.weighed.map(({ weight }) => weight)).toEqual([expect.closeTo(0.2, 12), expect.closeTo(0.8, 12)]);
    expect(mean.volumeFlow).toBeCloseTo(0.516, 12);
    expect(mean.u).toBeCloseTo(0.035777, 6);
    expect([mean.consistent, mean.disagreements, codes(mean)]).toEqual([true, [], []]);
  });

  test('a gauge that two methods share is not averaged away', () => {
    const shared = [
      answer('traverse', 0.5, { a: 0.03, gauge: 0.04 }),
      answer('flowGrid', 0.5, { b: 0.03, gauge: 0.04 }),
    ];
    const apart = [answer('traverse', 0.5, { a: 0.03, c: 0.04 }), answer('flowGrid', 0.5, { b: 0.03, d: 0.04 })];
    // Own arithmetic: √(0.04² + 0.03²/2) and 0.05/√2.
    expect(combineAirflows(shared).u).toBeCloseTo(0.045277, 6);
    expect(combineAirflows(apart).u).toBeCloseTo(0.035355, 6);
  });

  test('a gauge that moves one up and the other down is averaged away', () => {
    const mean = combineAirflows([
      answer('traverse', 0.5, { a: 0.03, gauge: 0.04 }),
      answer('fanTable', 0.5, { b: 0.03, gauge: -0.04 }),
    ]);
    expect(mean.u).toBeCloseTo(0.03 / Math.SQRT2, 9);
    expect(mean.sources.map(({ name }) => name)).toEqual(['a', 'b']);
  });

  test('a worse answer that shares all its error with a better one has no weight, and never a negative one', () => {
    const mean = combineAirflows([
      answer('traverse', 0.5, { a: 0.001, gauge: 0.02 }),
      answer('flowGrid', 0.6, { b: 0.001, gauge: 0.08 }),
    ]);
    expect(mean.weighed.map(({ weight }) => weight)).toEqual([1, 0]);
    expect(mean.volumeFlow).toBeCloseTo(0.5, 12);
  });

  test('two that are far apart disagree: the range is widened by the Birge ratio, and the usual reason is given', () => {
    const mean = combineAirflows([answer('hood', 0.4, { a: 0.05 }), answer('traverse', 0.5, { b: 0.05 })]);
    // Own arithmetic: gap 0.2222 of the mean, χ² = gap²/(2·0.05²) = 9.8765, B = √χ².
    expect(mean.chiSquare).toBeCloseTo(9.8765, 4);
    expect(mean.birge).toBeCloseTo(3.1427, 4);
    expect(mean.u).toBeCloseTo((3.1427 * 0.05) / Math.SQRT2, 5);
    expect([mean.consistent, codes(mean)]).toEqual([false, ['airflowsDisagree']]);
    expect(mean.disagreements).toMatchObject([{ high: 'traverse', low: 'hood', usual: 'leaksOrBackPressure' }]);
    expect(mean.disagreements[0]?.gap).toBeCloseTo(0.2222, 4);
  });

  test('settings, unfinished grids and other speeds do not count, and why is said', () => {
    const mean = combineAirflows([
      answer('readout', 0.6, { a: 0.1 }, { evidence: false }),
      answer('traverse', 0.5, { b: 0.05 }),
      answer('hood', 0.4, { c: 0.05 }, { partial: true }),
      answer('temperatureRise', 0.4, { d: 0.05 }, { speed: 'other' }),
      answer('fanTable', 0.4, { e: 0.05 }, { speed: 'unsure' }),
    ]);
    expect(mean.volumeFlow).toBeCloseTo(0.5, 12);
    expect(mean.leftOut).toEqual([
      { method: 'readout', why: 'setting' },
      { method: 'hood', why: 'partial' },
      { method: 'temperatureRise', why: 'otherSpeed' },
      { method: 'fanTable', why: 'speedUnsure' },
    ]);
  });

  test('refuses nothing that counts, and one method twice', () => {
    expect(errorOf(() => combineAirflows([]))).toEqual(['noEvidence', 'methods']);
    const setting = answer('readout', 0.6, { a: 0.1 }, { evidence: false });
    expect(errorOf(() => combineAirflows([setting]))).toEqual(['noEvidence', 'methods']);
    const hood = answer('hood', 0.5, { a: 0.05 });
    expect(errorOf(() => combineAirflows([hood, hood]))).toEqual(['repeatedRow', 'methods']);
  });

  const share = fc.double({ min: 0.01, max: 0.3, noNaN: true });
  const answers = fc
    .tuple(
      fc.subarray([...airflowMethods], { minLength: 2 }),
      fc.array(fc.tuple(fc.double({ min: 0.2, max: 1, noNaN: true }), share, share), { minLength: 8, maxLength: 8 }),
    )
    .map(([methods, figures]) =>
      methods.map((method, i) => {
        const [flow, own, gauge] = figures[i]!;
        return answer(method, flow, { [method]: own, gauge });
      }),
    );

  test('weights are none below nothing and come to one; the mean lies among the answers; the Birge ratio is never below 1', () => {
    fc.assert(
      fc.property(answers, (found) => {
        const mean = combineAirflows(found);
        const weights = mean.weighed.map(({ weight }) => weight);
        expect(Math.min(...weights)).toBeGreaterThanOrEqual(0);
        expect(weights.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
        const flows = found.map(({ volumeFlow }) => volumeFlow);
        expect(mean.volumeFlow).toBeGreaterThanOrEqual(Math.min(...flows) - 1e-9);
        expect(mean.volumeFlow).toBeLessThanOrEqual(Math.max(...flows) + 1e-9);
        expect(mean.birge).toBeGreaterThanOrEqual(1);
        // Without the widening no worse than the best single answer, no better than what all of them share.
        const least = Math.min(...found.map(({ sources }) => sources.at(-1)!.u));
        expect(mean.u / mean.birge).toBeLessThanOrEqual(Math.min(...found.map(({ u }) => u)) + 1e-12);
        expect(mean.u / mean.birge).toBeGreaterThanOrEqual(least - 1e-12);
      }),
    );
  });

  test('its sources come to its own uncertainty, a shared one once', () => {
    fc.assert(
      fc.property(answers, (found) => {
        const { sources, u } = combineAirflows(found);
        expect(new Set(sources.map(({ name }) => name)).size).toBe(sources.length);
        expect(Math.hypot(...sources.map((source) => source.u * (source.moves.airflow ?? 0)))).toBeCloseTo(u, 9);
      }),
    );
  });

  test('does not mind the order, nor the unit in which all flows are counted', () => {
    fc.assert(
      fc.property(answers, (found) => {
        const mean = combineAirflows(found);
        const turned = combineAirflows([...found].reverse());
        const doubled = combineAirflows(found.map((one) => ({ ...one, dryAirFlow: 2 * one.dryAirFlow })));
        expect(turned.volumeFlow).toBeCloseTo(mean.volumeFlow, 9);
        expect(doubled.volumeFlow).toBeCloseTo(2 * mean.volumeFlow, 9);
        expect(doubled.chiSquare / mean.chiSquare || 1).toBeCloseTo(1, 6);
      }),
    );
  });

  test('shows weights, χ² and uncertainty', () => {
    const steps = stepsOf((t) =>
      combineAirflows([answer('hood', 0.5, { a: 0.08 }), answer('flowGrid', 0.52, { b: 0.04 })], t),
    );
    expect(steps.map(({ id }) => id)).toEqual([
      'airflow.combined.mean',
      'airflow.combined.birge',
      'airflow.combined.uncertainty',
    ]);
    expect(steps[0]?.puts.map(({ symbol }) => symbol)).toEqual(['g(hood)', 'ṁ(hood)', 'g(flowGrid)', 'ṁ(flowGrid)']);
  });
});

test.each([
  ['grille', 'hood', 'areaFactor'],
  ['hood', 'grille', 'areaFactor'],
  ['readout', 'traverse', 'readoutUnchecked'],
  ['traverse', 'temperatureRise', 'probeTooHot'],
  ['temperatureRise', 'flowGrid', 'dryCoilOrCoolStreak'],
  ['fanTable', 'flowGrid', 'airPastPlate'],
  ['fanTable', 'traverse', 'blowerNotAsTable'],
  ['traverse', 'fanTable', 'wrongColumnOrHoles'],
  ['flowGrid', 'pressureMatch', 'returnNotShut'],
  ['flowGrid', 'traverse', 'disturbedSection'],
  ['pressureMatch', 'pressureMatch', 'returnNotShut'],
] as const)('that %s finds more than %s is usually %s', (high, low, code) => {
  expect(usualReason(high, low)).toBe(code);
});

test('every pair of methods has a usual reason', () => {
  for (const high of airflowMethods)
    for (const low of airflowMethods) expect(usualReason(high, low)).toMatch(/^[a-z]+([A-Z][a-z]+)+$/);
});

test.each([1, 2, 3, 4, 5, 6, 7])('χ² with %d degrees of freedom is above its limit one time in twenty', (dof) => {
  // The density integrated by Simpson's rule in z = √x, where it has no pole.
  const density = (z: number) => 2 * z ** (dof - 1) * Math.exp((-z * z) / 2);
  const integral = (to: number) => {
    const n = 2000;
    const h = to / n;
    let sum = density(0) + density(to);
    for (let i = 1; i < n; i++) sum += (i % 2 ? 4 : 2) * density(i * h);
    return (sum * h) / 3;
  };
  expect(integral(Math.sqrt(chiSquareAllowed(dof))) / integral(12)).toBeCloseTo(0.95, 4);
});

test('linear equations come out', () => {
  const x = solve(
    [
      [4, 2, 0.6],
      [2, 5, 1],
      [0.6, 1, 3],
    ],
    [9.8, 15, 11.6],
  );
  expect(x).toEqual([1, 2, 3].map((value) => expect.closeTo(value, 9)));
});
