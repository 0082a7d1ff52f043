/** What would make a ratio surer: which checks are named, what each promises, and that it keeps its promise. */
import { describe, expect, test } from 'vitest';
import {
  assess,
  type Improvement,
  type Outcome,
  type Ratio,
  type SideBySide,
  type Test,
} from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};
const degree = 5 / 9;
const made = (change: Partial<Test>): Test => ({ ...wholeTest, ...change });
const ratioOf = (change: Partial<Test>): Ratio => value(assess(made(change)).ratio);
const named = (change: Partial<Test>): readonly string[] =>
  assess(made(change)).improvements.map(({ change: code }) => code);
function promised(change: Partial<Test>, code: string): Improvement {
  const found = assess(made(change)).improvements.find((one) => one.change === code);
  if (!found) throw new Error(`no ${code}`);
  return found;
}
/** The uncertainty that is left when a cause keeps only a part of its size: u² less what the cause loses of its share. */
function leftOf({ u, shares }: Ratio, name: string, part: number): number {
  const lost = shares.filter((one) => one.name === name).reduce((sum, { share }) => sum + share, 0) * (1 - part ** 2);
  return u * Math.sqrt(1 - lost);
}

const rating = wholeTest.rating as NonNullable<Test['rating']>;
const { airflow } = wholeTest;
const alike = { dryBulb: 0, humidity: 0, scatter: null };
const whole: SideBySide = { returnAir: alike, supplyAir: alike, reference: 'neither', drift: null, shared: null };
const withLimit = (limit: number): Partial<Test> => ({ airflow: { ...airflow, limit } });

describe('a check that could still be made', () => {
  test('of the probes, where none was made or it was half of one, promises what a whole check gives', () => {
    const half: readonly SideBySide[] = [
      { ...whole, supplyAir: null },
      { ...whole, supplyAir: { ...alike, humidity: null } },
      { ...whole, returnAir: { ...alike, humidity: null } },
      { ...whole, drift: { dryBulb: 0.3, humidity: 0 } },
      { ...whole, drift: { dryBulb: 0, humidity: 0.02 } },
    ];
    const after = ratioOf({ sideBySide: whole }).u;
    expect(promised({}, 'sideBySide')).toMatchObject({ u: expect.closeTo(after, 9), takes: 1800 });
    for (const sideBySide of half) {
      expect(promised({ sideBySide }, 'sideBySideAgain')).toMatchObject({ u: expect.closeTo(after, 9), takes: 1200 });
      expect(named({ sideBySide })).not.toContain('sideBySide');
    }
    expect(named({})).not.toContain('sideBySideAgain');
    for (const drift of [null, { dryBulb: 0.1, humidity: 0.01 }])
      expect(named({ sideBySide: { ...whole, drift } }).filter((code) => code.startsWith('sideBySide'))).toEqual([]);
  });

  test('again keeps what a standard showed of the error that both share', () => {
    const shared = { dryBulb: 0.1, humidity: 0.012, error: { dryBulb: 0, humidity: 0 } };
    const after = ratioOf({ sideBySide: { ...whole, shared } }).u;
    expect(promised({ sideBySide: { ...whole, supplyAir: null, shared } }, 'sideBySideAgain').u).toBeCloseTo(after, 9);
  });

  test('of more points in the supply plane promises what nine of them give that lie as far apart as a laboratory allows', () => {
    const nine = Array.from({ length: 9 }, (_, i) => 13 + ((i - 4) / 8) * 1.5 * degree);
    expect(promised({}, 'supplyPoints')).toMatchObject({
      u: expect.closeTo(ratioOf({ supplyPoints: nine }).u, 9),
      takes: 600,
    });
    expect(named({ supplyPoints: nine })).not.toContain('supplyPoints');
    expect(named({ supplyPoints: [13, 13.1, 13] })).not.toContain('supplyPoints');
    expect(named({ supplyPoints: [12, 14] })).toContain('supplyPoints');
  });

  test('of the airflow goes in two steps: another method reaches 7 %, two that agree 5 %', () => {
    const of = (limit: number) =>
      named(withLimit(limit)).filter((code) => /^(airflowMethod|secondAirflow)$/.test(code));
    expect(of(0.1)).toEqual(['airflowMethod']);
    expect(of(0.07)).toEqual(['secondAirflow']);
    expect(of(0.06)).toEqual(['secondAirflow']);
    expect(of(0.05)).toEqual([]);
    expect(promised(withLimit(0.1), 'airflowMethod')).toMatchObject({
      u: expect.closeTo(ratioOf(withLimit(0.07)).u, 9),
      takes: 2400,
    });
    expect(promised({}, 'secondAirflow')).toMatchObject({
      u: expect.closeTo(ratioOf(withLimit(0.05)).u, 9),
      takes: 3600,
    });
  });

  test('of the airflow takes the causes of a method together, and leaves the kind of air to its own question', () => {
    const cause = (name: string, limit: number) => {
      return {
        name,
        u: limit / Math.sqrt(3),
        shape: 'rectangular',
        degreesOfFreedom: null,
        moves: { airflow: 1 },
      } as const;
    };
    // 8 % and 6 % are 10 % together.
    const two = { airflow: { ...airflow, sources: [cause('meter', 0.08), cause('place', 0.06)] } };
    expect(promised(two, 'airflowMethod').u).toBeCloseTo(ratioOf(withLimit(0.07)).u, 9);
    const unsure = { airflow: { ...airflow, kind: 'unsure', limit: 0.1 } } as const;
    const { shares, u } = ratioOf(unsure);
    const kind = shares.find(({ name }) => name === 'airflow.kind')?.u ?? 0;
    expect(promised(unsure, 'airflowMethod').u).toBeGreaterThan(kind);
    expect(promised(unsure, 'airflowMethod').u).toBeCloseTo(leftOf({ u, shares } as Ratio, 'airflow', 0.7), 9);
  });

  test.each([
    ['airflowKind', { airflow: { ...airflow, kind: 'unsure' } }, 'airflow.kind', 300],
    ['ratingBasis', { rating: { ...rating, basis: 'unsure' } }, 'rating.basis', 300],
    [
      'makersTable',
      {
        rating: {
          ...rating,
          from: 'generic',
          rows: [],
          certified: 10e3,
          generic: { unit: 'airConditioner', stage: 'one', dryAirFlow: null },
        },
      },
      'rating.temperatures',
      1200,
    ],
  ] as const)('%s takes its cause away, and is not named where there is none', (code, change, cause, takes) => {
    const before = ratioOf(change as Partial<Test>);
    expect(promised(change as Partial<Test>, code)).toMatchObject({
      u: expect.closeTo(leftOf(before, cause, 0), 9),
      takes,
    });
    expect(named({})).not.toContain(code);
  });

  test('of the blower power leaves 5 % of it in doubt in place of 45 %', () => {
    const change = { blower: { ...wholeTest.blower, power: null } };
    expect(promised(change, 'blowerPower')).toMatchObject({
      u: expect.closeTo(leftOf(ratioOf(change), 'blower.assumed', 1 / 9), 9),
      takes: 600,
    });
    expect(named({})).not.toContain('blowerPower');
  });

  test('against a humidity standard leaves 1 % of what both share, overnight, where nothing better is known', () => {
    const change = { sideBySide: whole };
    expect(promised(change, 'humidityStandard')).toMatchObject({
      u: expect.closeTo(leftOf(ratioOf(change), 'shared.humidity', 1 / 3), 9),
      takes: 43_200,
    });
    const error = { dryBulb: 0, humidity: 0 };
    const fine = { ...wholeTest.probeLimits, relativeHumidity: 0.01 };
    const bulb = {
      entering: { dryBulb: 24, relativeHumidity: null, wetBulb: 17.5 },
      leaving: { dryBulb: 13, relativeHumidity: null, wetBulb: 12 },
    };
    for (const other of [
      {},
      { sideBySide: { ...whole, shared: { dryBulb: null, humidity: 0.02, error } } },
      { sideBySide: whole, probeLimits: fine },
      { sideBySide: whole, ...bulb },
    ] as const)
      expect(named(other)).not.toContain('humidityStandard');
    expect(named({ sideBySide: { ...whole, shared: { dryBulb: 0.1, humidity: null, error } } })).toContain(
      'humidityStandard',
    );
  });
});

describe('the list of checks', () => {
  test('begins with the surest and ends with all of this visit together, which is surer than any of them', () => {
    const { improvements } = assess(
      made({ airflow: { ...airflow, limit: 0.1 }, sideBySide: { ...whole, supplyAir: null } }),
    );
    const all = improvements.at(-1) as Improvement;
    const single = improvements.slice(0, -1);
    expect(all.change).toBe('all');
    expect(single.map(({ u }) => u)).toEqual(single.map(({ u }) => u).sort((a, b) => a - b));
    for (const { u, takes } of single) if (takes <= 7200) expect(all.u).toBeLessThan(u);
    // 20 min for the probes, 10 for the plane, 40 for another airflow method and 60 for a second one; the salt of a night is no part of it.
    expect(single.map(({ change }) => change)).toContain('humidityStandard');
    expect(all.takes).toBe(60 * (20 + 10 + 40 + 60));
    const done = { sideBySide: whole, supplyPoints: [13, 13, 13], airflow: { ...airflow, limit: 0.05 } };
    const improved = promised(
      { airflow: { ...airflow, limit: 0.1 }, sideBySide: { ...whole, supplyAir: null } },
      'all',
    );
    expect(improved.u).toBeGreaterThan(ratioOf(done).u);
  });

  test('has no "all" where only one can be made on this visit', () => {
    const one = { sideBySide: whole, supplyPoints: [13, 13.1, 13] };
    expect(named(one)).toEqual(expect.arrayContaining(['secondAirflow', 'humidityStandard']));
    expect(named(one)).not.toContain('all');
    const none = { ...one, airflow: { ...airflow, limit: 0.05 } };
    expect(named(none)).toEqual(['humidityStandard']);
  });

  test('says of each whether its range, rounded outward to whole per cents, would be clear of the line', () => {
    const { ratio, improvements } = assess(made({ line: 0.9 }));
    const { value: figure } = value(ratio);
    // 1.2816 is the 90 % point of the normal distribution: no cause here has few degrees of freedom but nine points.
    const probes = improvements.find(({ change }) => change === 'sideBySide') as Improvement;
    expect(probes.low).toBe(Math.floor(100 * (figure - 1.2816 * probes.u)) / 100);
    expect(probes.high).toBe(Math.ceil(100 * (figure + 1.2816 * probes.u)) / 100);
    for (const line of [probes.low - 0.01, probes.low, probes.low + 0.01, figure, probes.high, probes.high + 0.01]) {
      const again = promised({ line }, 'sideBySide');
      expect(again.decides).toBe(line <= probes.low + 1e-9 || line > probes.high + 1e-9);
    }
  });
});
