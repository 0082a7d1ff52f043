/** Two tests compared: what both share goes out of their difference, what is each one's own counts twice. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assess } from '../../src/calc/assess.ts';
import { compareTests, differenceOf, type Found, sameCauses } from '../../src/calc/confidence/difference.ts';
import type { Test } from '../../src/calc/types.ts';
import { demoJob } from '../../src/job/demo.ts';
import { toTest } from '../../src/job/toTest.ts';

const found = (value: number, effects: Readonly<Record<string, number>>): Found => ({
  value,
  effects: Object.entries(effects).map(([name, u]) => ({ name, u, degreesOfFreedom: null })),
});
const none = () => 1;
const all = () => 0;

/*
 * Worked by hand. Before 0.80, after 0.92; one instrument moves both by +0.040 and +0.046; reading scatter of 0.030 and 0.020.
 * Shared: u² = (0.046 − 0.040)² + 0.030² + 0.020² = 0.000036 + 0.0009 + 0.0004 = 0.001336, u = 0.036551.
 * Apart:  u² = 0.046² + 0.040² + 0.030² + 0.020² = 0.002116 + 0.0016 + 0.0013 = 0.005016, u = 0.070824.
 */
const before = found(0.8, { instrument: 0.04, scatter: 0.03 });
const after = found(0.92, { instrument: 0.046, scatter: 0.02 });

describe('the difference of two results', () => {
  test('is as worked by hand, with one instrument and with two', () => {
    const shared = differenceOf(before, after, (name) => (name === 'instrument' ? 0 : 1), 0.9);
    expect(shared.value).toBeCloseTo(0.12, 12);
    expect(shared.u).toBeCloseTo(0.036551, 6);
    // 1.281552 is the 90 % point of the normal distribution, from any table of it.
    expect(shared.interval.low).toBeCloseTo(0.12 - 1.281552 * 0.036551, 5);
    expect(differenceOf(before, after, none, 0.9).u).toBeCloseTo(0.070824, 6);
  });

  test('has no uncertainty where everything is shared and does the same, and that of both where nothing is', () => {
    const effects = fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), fc.double({ min: -1, max: 1, noNaN: true }));
    fc.assert(
      fc.property(effects, fc.double({ min: 0, max: 2, noNaN: true }), (one, value) => {
        const same = found(value, one);
        expect(differenceOf(same, same, all, 0.9).u).toBe(0);
        const own = Math.hypot(...Object.values(one));
        expect(differenceOf(same, same, none, 0.9).u).toBeCloseTo(own * Math.SQRT2, 12);
      }),
    );
  });

  test('with a part of a cause that is new each time is as worked by hand', () => {
    // 0.6 of it new: common 0.8 · (0.046 − 0.040) = 0.0048, own 0.6 · 0.040 = 0.024 and 0.6 · 0.046 = 0.0276.
    // u² = 0.00002304 + 0.000576 + 0.00076176 = 0.0013608, u = 0.036889.
    const [first, second] = [found(0.8, { instrument: 0.04 }), found(0.92, { instrument: 0.046 })];
    expect(differenceOf(first, second, () => 0.6, 0.9).u).toBeCloseTo(0.036889, 6);
  });

  test('adds up what a shared cause does in opposite ways', () => {
    const [up, down] = [found(1, { a: 0.03 }), found(1, { a: -0.03 })];
    expect(differenceOf(up, down, all, 0.9).u).toBeCloseTo(0.06, 12);
  });

  test('pairs causes of one name in their order, and leaves what only one of them has', () => {
    const twice: Found = { value: 1, effects: [0.03, 0.04].map((u) => ({ name: 'a', u, degreesOfFreedom: null })) };
    const once = found(1, { a: 0.03 });
    expect(differenceOf(twice, once, all, 0.9).u).toBeCloseTo(0.04, 12);
    expect(differenceOf(once, twice, all, 0.9).u).toBeCloseTo(0.04, 12);
  });
});

const demo = toTest(demoJob).test;
const with_ = (changed: Partial<Test>): Test => ({ ...demo, ...changed });
const value = <T>(outcome: { readonly ok: true; readonly value: T } | { readonly ok: false }): T => {
  if (!outcome.ok) throw new Error('no value');
  return outcome.value;
};
const everything = Object.keys(sameCauses) as (keyof typeof sameCauses)[];

describe('two tests', () => {
  test('of which one is the other differ by nothing, and are the surer the more they share', () => {
    const { ratio, ranges } = assess(demo);
    const alone = value(ratio).u;
    const apart = value(compareTests(demo, demo, [], 0.9));
    expect(apart.ratio?.value).toBe(0);
    expect(apart.ratio?.u).toBeCloseTo(alone * Math.SQRT2, 10);
    expect(apart.total.u).toBeCloseTo((ranges.total?.u ?? 0) * Math.SQRT2, 6);
    let last = apart.ratio?.u ?? 0;
    for (let count = 1; count <= everything.length; count++) {
      const now = value(compareTests(demo, demo, everything.slice(0, count), 0.9)).ratio?.u ?? 0;
      expect(now).toBeLessThan(last);
      last = now;
    }
    // Each probe errs anew at each visit all the same, and so does the airflow.
    expect(last).toBeGreaterThan(alone / 4);
    expect(last).toBeLessThan(alone);
  });

  test('with and without a check side by side have probes with other errors, whatever is said', () => {
    const checked = with_({ sideBySide: { returnAir: { dryBulb: 0, humidity: 0 } } as Test['sideBySide'] });
    const said = value(compareTests(demo, checked, ['probes'], 0.9));
    expect(said.ratio?.u).toBe(value(compareTests(demo, checked, [], 0.9)).ratio?.u);
  });

  test('give no difference of shares where one has no expectation, and say what is waited for where nothing is measured', () => {
    const bare = with_({ rating: null });
    expect(value(compareTests(bare, demo, [], 0.9)).ratio).toBeNull();
    expect(value(compareTests(bare, demo, [], 0.9)).total.value).toBeCloseTo(0, 6);
    const open = with_({ leaving: { ...demo.leaving, dryBulb: null } });
    expect(compareTests(demo, open, [], 0.9)).toMatchObject({ ok: false, waiting: ['leaving.dryBulb'] });
  });
});
