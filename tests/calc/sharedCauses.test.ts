/** What two tests may share: which causes each answer takes, what of them is new at each visit, and what is left of the difference. */
import { describe, expect, test } from 'vitest';
import { resultsOf } from '../../src/calc/assess.ts';
import { compareTests, differenceOf, type SameCause, sameCauses } from '../../src/calc/confidence/difference.ts';
import { testEffects } from '../../src/calc/confidence/sure.ts';
import type { Outcome, SideBySide, Test } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';
import { wholeTest } from './testCase.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};
const degree = 5 / 9;
const alike = { dryBulb: 0, humidity: 0, scatter: null };
const checked: SideBySide = { returnAir: alike, supplyAir: alike, reference: 'neither', drift: null, shared: null };

describe('a cause', () => {
  test.each([
    [
      'probes',
      ['entering.dryBulb', 'leaving.humidity', 'shared.dryBulb', 'leaving.humidityGain'],
      ['sideBySide', 'drift', 'readings', 'my.entering.dryBulb'],
    ],
    [
      'airflow',
      ['airflow', 'airflow.meter', 'airflow.kind'],
      ['airflow.flutter', 'airflow.clocking', 'airflows', 'the airflow'],
    ],
    ['place', ['supplyMixing'], ['supplyMixing.other', 'supply']],
    [
      'system',
      ['rating.basis', 'rating.altitude', 'blower', 'blower.assumed'],
      ['rating.interpolation', 'outdoorDryBulb', 'the.rating.basis'],
    ],
  ] as const)('of the %s is one by its name', (same, has, hasNot) => {
    for (const name of has) expect([name, sameCauses[same].has(name)]).toEqual([name, true]);
    for (const name of hasNot) expect([name, sameCauses[same].has(name)]).toEqual([name, false]);
  });

  test('of a probe is new at each visit by what a check side by side would leave of it, all of it at most', () => {
    const own = (name: string, change: Partial<Test> = {}) => sameCauses.probes.own(name, { ...wholeTest, ...change });
    // 0.2 °F and 0.7 %, standard uncertainties, of limits of 0.9 °F and 3 % that are half-widths of rectangles.
    expect(own('entering.dryBulb')).toBeCloseTo((0.2 * Math.sqrt(3)) / 0.9, 9);
    expect(own('leaving.humidity')).toBeCloseTo((0.007 * Math.sqrt(3)) / 0.03, 9);
    expect(own('shared.dryBulb')).toBe(0);
    const bulb = { dryBulb: 24, relativeHumidity: null, wetBulb: 17 };
    const probeLimits = { dryBulb: 0.1, relativeHumidity: 0.01, wetBulb: 0.4 };
    expect(own('entering.humidity', { entering: bulb, probeLimits })).toBeCloseTo(
      (0.2 * degree * Math.sqrt(3)) / 0.4,
      9,
    );
    expect([own('entering.dryBulb', { probeLimits }), own('entering.humidity', { probeLimits })]).toEqual([1, 1]);
  });
});

describe('the same test twice', () => {
  /** 2·Σu² over all causes, of which those that are shared keep only the part that is new at each visit. */
  function expected(made: Test, part: (name: string) => number): readonly [ratio: number, total: number] {
    const { ratio, total } = value(testEffects(made, resultsOf(made)));
    const of = (effects: readonly { readonly name: string; readonly u: number }[]) =>
      Math.sqrt(2 * effects.reduce((sum, { name, u }) => sum + (u * part(name)) ** 2, 0));
    return [of(ratio?.effects ?? []), of(total.effects)];
  }
  function found(made: Test, same: readonly SameCause[]): readonly [ratio: number, total: number] {
    const { ratio, total } = value(compareTests(made, made, same, 0.9));
    return [ratio?.u ?? 0, total.u];
  }
  const close = (pair: readonly [number, number]) => [expect.closeTo(pair[0], 9), expect.closeTo(pair[1], 4)];

  test('differs by what is not shared, and by what of the shared is new at each visit', () => {
    const own = sameCauses.probes.own;
    const probes = (name: string) => (/^(entering|leaving)\./.test(name) ? own(name, wholeTest) : 1);
    expect(found(wholeTest, [])).toEqual(close(expected(wholeTest, () => 1)));
    expect(found(wholeTest, ['probes'])).toEqual(close(expected(wholeTest, probes)));
    expect(found(wholeTest, ['airflow'])).toEqual(close(expected(wholeTest, (name) => (name === 'airflow' ? 0.3 : 1))));
    expect(found(wholeTest, ['place'])).toEqual(
      close(expected(wholeTest, (name) => (name === 'supplyMixing' ? 0.5 : 1))),
    );
    const system = (name: string) => (name === 'blower' ? 0 : 1);
    expect(found(wholeTest, ['system'])).toEqual(close(expected(wholeTest, system)));
    expect(found(wholeTest, ['place', 'system'])).toEqual(
      close(expected(wholeTest, (name) => (name === 'supplyMixing' ? 0.5 : system(name)))),
    );
  });

  test('has of probes that were checked only their shared error in common: what each keeps is new each time', () => {
    const made = { ...wholeTest, sideBySide: checked };
    expect(found(made, ['probes'])).toEqual(close(expected(made, (name) => (name.startsWith('shared.') ? 0 : 1))));
  });

  test('has other errors of the probes where one of the two was checked, whichever it was', () => {
    const made = { ...wholeTest, sideBySide: checked };
    for (const [first, second] of [
      [made, wholeTest],
      [wholeTest, made],
    ] as const) {
      const u = (same: readonly SameCause[]) => value(compareTests(first, second, same, 0.9)).ratio?.u;
      expect(u(['probes'])).toBeCloseTo(u([]) ?? 0, 12);
    }
  });

  test('reads what the check side by side put right', () => {
    const returnAir = { ...alike, dryBulb: 0.6 };
    const made = {
      ...wholeTest,
      sideBySide: { ...checked, returnAir, supplyAir: null, reference: 'leaving' as const },
    };
    const { total } = value(compareTests(wholeTest, made, [], 0.9));
    const lower = {
      ...wholeTest,
      entering: { ...wholeTest.entering, dryBulb: (wholeTest.entering.dryBulb as number) - 0.6 },
    };
    const [first, second] = [wholeTest, lower].map((one) => value(testEffects(one, resultsOf(one))).total.value) as [
      number,
      number,
    ];
    expect(total.value).toBeCloseTo(second - first, 6);
  });
});

describe('what cannot be compared', () => {
  test('is said of the earlier test first, then of the later', () => {
    const [first, second] = (['entering', 'leaving'] as const).map((side) => ({
      ...wholeTest,
      [side]: { ...wholeTest[side], dryBulb: null },
    })) as [Test, Test];
    expect(compareTests(first, second, [], 0.9)).toMatchObject({ ok: false, waiting: ['entering.dryBulb'] });
    expect(compareTests(wholeTest, second, [], 0.9)).toMatchObject({ ok: false, waiting: ['leaving.dryBulb'] });
  });

  test('has no difference of shares where either has none, and a cause that is no number is named', () => {
    const bare = { ...wholeTest, rating: null };
    expect(value(compareTests(wholeTest, bare, [], 0.9)).ratio).toBeNull();
    expect(value(compareTests(bare, wholeTest, [], 0.9)).ratio).toBeNull();
    const lost = { value: 1, effects: [{ name: 'a', u: Number.NaN, degreesOfFreedom: null }] };
    const sound = { value: 1, effects: [] };
    for (const [before, after] of [
      [lost, sound],
      [sound, lost],
    ] as const)
      expect(codeOf(() => differenceOf(before, after, () => 1, 0.9))).toBe('notFinite');
    const bad = [{ name: 'readings', u: -1, shape: 'normal', degreesOfFreedom: null, moves: { airflow: 1 } }] as const;
    expect(compareTests(wholeTest, { ...wholeTest, scatter: bad }, [], 0.9)).toMatchObject({
      ok: false,
      problem: { code: 'outOfRange' },
    });
  });

  test('counts what both do not share with degrees of freedom of its own', () => {
    // Two unshared causes of one size and four degrees each: Welch and Satterthwaite give eight together.
    const one = { value: 1, effects: [{ name: 'a', u: 0.1, degreesOfFreedom: 4 }] };
    const apart = differenceOf(one, one, () => 1, 0.9);
    expect(apart.degreesOfFreedom).toBeCloseTo(8, 9);
    expect(apart.shares.map(({ name }) => name).sort()).toEqual(['after.a', 'before.a']);
    const names = differenceOf(
      one,
      { value: 1, effects: [{ name: 'b', u: 0.1, degreesOfFreedom: 4 }] },
      () => 0,
      0.9,
    ).shares;
    expect(names.map(({ name }) => name).sort()).toEqual(['after.b', 'before.a']);
  });
});
