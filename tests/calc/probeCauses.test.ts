/** What a check side by side leaves of the errors of two probes. */
import { describe, expect, test } from 'vitest';
import type { SideBySide, Test } from '../../src/calc/index.ts';
import { type Cause, close, degree, some, sourcesOf } from './causesOf.ts';

const alike = { dryBulb: 0, humidity: 0, scatter: null };
const whole: SideBySide = { returnAir: alike, supplyAir: alike, reference: 'neither', drift: null, shared: null };
const both = (what: string) => ({ [`entering.${what}`]: 1, [`leaving.${what}`]: 1 });
const probes = /^(entering|leaving|shared)\.|^(sideBySide|drift)$/;
const own = (humidity = true): Cause[] => [
  ['entering.dryBulb', 0.2 * degree, { 'entering.dryBulb': 1 }],
  ['entering.humidity', humidity ? 0.007 : 0.03, { 'entering.humidity': 1 }],
  ['leaving.dryBulb', 0.2 * degree, { 'leaving.dryBulb': 1 }],
  ['leaving.humidity', humidity ? 0.007 : 0.03, { 'leaving.humidity': 1 }],
];
const sharedDryBulb: Cause = ['shared.dryBulb', 0.9 * degree, both('dryBulb')];
const sharedHumidity: Cause = ['shared.humidity', 0.03, both('humidity')];
const gain: Cause = ['leaving.humidityGain', 0.01, { 'leaving.humidity': 1 }];

describe('two probes that were checked side by side', () => {
  const checked = (change: Partial<SideBySide>, other: Partial<Test> = {}) =>
    some({ ...other, sideBySide: { ...whole, ...change } }, probes);

  test('share one error within their limits and keep a small one each', () => {
    expect(checked({})).toEqual(close([...own(), sharedDryBulb, sharedHumidity]));
    expect(sourcesOf({ sideBySide: whole }).filter(({ shape }) => shape === 'normal').length).toBe(4);
  });

  test('have a humidity that was compared in dry air alone a little less sure in damp air', () => {
    expect(checked({ supplyAir: null })).toEqual(close([...own(), sharedDryBulb, sharedHumidity, gain]));
    expect(checked({ supplyAir: { ...alike, humidity: null } }).at(-1)).toEqual(close([gain])[0]);
    const bulbs = {
      entering: { dryBulb: 24, relativeHumidity: null, wetBulb: 17.5 },
      leaving: { dryBulb: 13, relativeHumidity: null, wetBulb: 12 },
    };
    const wetBulb = 0.2 * degree;
    expect(checked({ supplyAir: null }, bulbs).map(([name, size]) => [name, size])).toEqual([
      ['entering.dryBulb', expect.closeTo(0.2 * degree, 9)],
      ['entering.humidity', expect.closeTo(wetBulb, 9)],
      ['leaving.dryBulb', expect.closeTo(0.2 * degree, 9)],
      ['leaving.humidity', expect.closeTo(wetBulb, 9)],
      ['shared.dryBulb', expect.closeTo(0.9 * degree, 9)],
      ['shared.humidity', expect.closeTo(0.9 * degree, 9)],
    ]);
  });

  test('keep their humidities as they were where those were not compared, or are read in two measures', () => {
    const returnAir = { ...alike, humidity: null, scatter: { dryBulb: 0.1, humidity: 0.2, degreesOfFreedom: 4 } };
    expect(checked({ returnAir, supplyAir: null, drift: { dryBulb: 1, humidity: 1 } })).toEqual(
      close([
        ...own(false),
        sharedDryBulb,
        ['sideBySide', 0.1, { 'entering.dryBulb': -0.5, 'leaving.dryBulb': 0.5 }],
        ['drift', 1, { 'entering.dryBulb': 0.5, 'leaving.dryBulb': -0.5 }],
      ]),
    );
    const leaving = { dryBulb: 13, relativeHumidity: null, wetBulb: 12 };
    const names = checked({}, { leaving }).map(([name, size]) => [name, size]);
    expect(names.slice(1, 4)).toEqual([
      ['entering.humidity', expect.closeTo(0.03, 9)],
      ['leaving.dryBulb', expect.closeTo(0.2 * degree, 9)],
      ['leaving.humidity', expect.closeTo(0.9 * degree, 9)],
    ]);
    expect(names.map(([name]) => name)).not.toContain('shared.humidity');
  });

  test('share what a standard leaves of their error, where they were held against one', () => {
    const shared = { dryBulb: 0.1, humidity: 0.012, error: { dryBulb: 0, humidity: 0 } };
    expect(checked({ shared }).slice(4)).toEqual(
      close([
        ['shared.dryBulb', 0.1, both('dryBulb')],
        ['shared.humidity', 0.012, both('humidity')],
      ]),
    );
    expect(checked({ shared: { ...shared, dryBulb: null } })[4]).toEqual(close([sharedDryBulb])[0]);
  });

  test.each([
    ['neither', -0.5, 0.5],
    ['entering', -0, 1],
    ['leaving', -1, 0],
  ] as const)(
    'with %s taken as right move both by their share of what the difference is unsure by',
    (reference, first, second) => {
      const scatter = { dryBulb: 0.1, humidity: 0.004, degreesOfFreedom: 4 };
      const returnAir = { ...alike, scatter };
      const moved = (what: string, by: readonly [number, number]) => ({
        [`entering.${what}`]: by[0],
        [`leaving.${what}`]: by[1],
      });
      const found = (change: Partial<SideBySide>) =>
        checked({ returnAir, reference, ...change }).filter(([name]) => name === 'sideBySide');
      expect(found({ supplyAir: null })).toEqual(
        close([
          ['sideBySide', 0.1, moved('dryBulb', [first, second])],
          ['sideBySide', 0.004, moved('humidity', [first, second])],
        ]),
      );
      // Looked at in both airs: one difference for each reading.
      const supplyAir = { ...alike, scatter: { dryBulb: 0.2, humidity: 0.005, degreesOfFreedom: 3 } };
      expect(found({ supplyAir })).toEqual(
        close([
          ['sideBySide', 0.1, moved('dryBulb', [first, 0])],
          ['sideBySide', 0.004, moved('humidity', [first, 0])],
          ['sideBySide', 0.2, moved('dryBulb', [-0, second])],
          ['sideBySide', 0.005, moved('humidity', [-0, second])],
        ]),
      );
      const free = sourcesOf({ sideBySide: { ...whole, returnAir, supplyAir, reference } });
      expect(free.filter(({ name }) => name === 'sideBySide').map(({ degreesOfFreedom }) => degreesOfFreedom)).toEqual([
        4, 4, 3, 3,
      ]);
    },
  );

  test('that drifted apart by more than a little may have been anywhere on the way', () => {
    const drift = (dryBulb: number, humidity: number) =>
      checked({ drift: { dryBulb, humidity } }).filter(([name]) => name === 'drift');
    const opposite = (what: string) => ({ [`entering.${what}`]: 0.5, [`leaving.${what}`]: -0.5 });
    expect(drift(0.2 * degree, 0.01)).toEqual([]);
    expect(drift(0.12, 0.01)).toEqual(close([['drift', 0.12, opposite('dryBulb')]]));
    expect(drift(0.1, 0.011)).toEqual(close([['drift', 0.011, opposite('humidity')]]));
    expect(drift(0.12, 0.011).length).toBe(2);
  });
});
