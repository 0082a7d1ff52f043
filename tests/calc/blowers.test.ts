import { describe, expect, test } from 'vitest';
import { blowersOf } from '../../src/calc/blowers.ts';
import {
  type BlowerKind,
  cubicFootPerMinute,
  defaultBlowerPower,
  emptyRating,
  type Step,
  standardAirDensity,
  type Test,
} from '../../src/calc/index.ts';
import { measure } from '../../src/calc/measured.ts';
import { wholeTest } from './testCase.ts';

/** 1000 cubic feet a minute of standard air, kg/s: what the published figures are stated for. */
const thousand = 1000 * cubicFootPerMinute * standardAirDensity;

describe('the power of a blower that nobody has measured', () => {
  test.each([
    ['ratedCoilOnly', 365],
    ['ratedCoilOnlySeer2', 441],
    ['ratedMobileHomeSeer2', 406],
    ['ratedWithBlower', 250],
    ['ratedWithBlowerSeer2', 281],
    ['permanentSplit', 500],
    ['electronic', 375],
    ['ductedMiniSplit', 180],
  ] as const)('of the kind %s is %i W for 1000 cfm of standard air, and goes with the airflow', (kind, power) => {
    expect(defaultBlowerPower(thousand, kind)).toBeCloseTo(power, 9);
    expect(defaultBlowerPower(1.3 * thousand, kind)).toBeCloseTo(1.3 * power, 9);
  });

  test('of a kind that is not in the list is that of one without a kind', () => {
    expect(defaultBlowerPower(thousand, 'steam' as BlowerKind)).toBeCloseTo(365, 9);
    expect(defaultBlowerPower(thousand)).toBeCloseTo(365, 9);
  });

  test('here goes with its motor, and is none while no airflow is known', () => {
    const heat = (change: Partial<Test>) => {
      const { blower } = measure({ ...wholeTest, ...change });
      return blower.ok ? blower.value : Number.NaN;
    };
    const unknown = { place: 'after coil', power: null } as const;
    const noFlow = { ...wholeTest.airflow, volumeFlow: null };
    const share = heat({ blower: { ...unknown, kind: null } }) / 365;
    expect(heat({ blower: { ...unknown, kind: 'permanentSplit' } })).toBeCloseTo(500 * share, 9);
    expect(heat({ blower: { ...unknown, kind: 'electronic' }, airflow: noFlow })).toBe(0);
    expect(heat({ airflow: noFlow })).toBe(430);
  });
});

describe('the two blowers of a test', () => {
  type Rating = NonNullable<Test['rating']>;
  const blowers = (power: number | null, kind: BlowerKind | null, rating: Partial<Rating>, flow?: number) =>
    blowersOf(
      { ...wholeTest, blower: { place: 'after coil', power, kind } },
      { ...emptyRating, basis: 'net', blowerPower: null, ...rating },
      flow,
    );
  const bare = { outdoorDryBulb: 35, enteringWetBulb: 19.4, total: 10_000 };
  const row = { ...bare, dryAirFlow: 0.9 * thousand };

  test('are as given', () => {
    expect(blowers(430, null, { blowerPower: 300 }, thousand)).toEqual({ here: 430, inside: 300, assumed: 'none' });
    expect(blowers(430, null, { basis: 'gross' }, thousand)).toEqual({ here: 430, inside: 0, assumed: 'none' });
  });

  test('are the default for the airflow and the motor where only one is known', () => {
    expect(blowers(null, 'electronic', { blowerPower: 300 }, thousand)).toEqual({
      here: expect.closeTo(375, 9),
      inside: 300,
      assumed: 'here',
    });
    expect(blowers(null, null, { basis: 'gross' }, thousand)).toEqual({
      here: expect.closeTo(365, 9),
      inside: 0,
      assumed: 'here',
    });
    const inside = (rating: Partial<Rating>) => blowers(430, null, rating, thousand);
    expect(inside({})).toEqual({ here: 430, inside: expect.closeTo(365, 9), assumed: 'inside' });
    expect(inside({ blowerKind: 'ratedWithBlower' }).inside).toBeCloseTo(250, 9);
  });

  test('have inside the rating what its own airflow asks for, if it states one', () => {
    const generic = { unit: 'airConditioner', stage: 'one', dryAirFlow: 0.8 * thousand } as const;
    expect(blowers(430, null, { rows: [row], generic }, thousand).inside).toBeCloseTo(0.9 * 365, 9);
    expect(blowers(430, null, { rows: [bare], generic }, thousand).inside).toBeCloseTo(0.8 * 365, 9);
    expect(blowers(430, null, { generic: { ...generic, dryAirFlow: null } }, thousand).inside).toBeCloseTo(365, 9);
  });

  test('are equal where neither they nor their kinds are known, else each by its own kind', () => {
    const both = blowers(null, null, { rows: [row] }, thousand);
    expect(both).toEqual({ here: expect.closeTo(365, 9), inside: both.here, assumed: 'both' });
    expect(blowers(null, null, { rows: [row], blowerKind: 'ratedWithBlower' }, thousand)).toEqual({
      here: expect.closeTo(365, 9),
      inside: expect.closeTo(0.9 * 250, 9),
      assumed: 'bothByKind',
    });
    expect(blowers(null, 'permanentSplit', { rows: [row] }, thousand)).toEqual({
      here: expect.closeTo(500, 9),
      inside: expect.closeTo(0.9 * 365, 9),
      assumed: 'bothByKind',
    });
  });

  test('show how the one inside the rating was found, under a name of its own', () => {
    const steps: Step[] = [];
    blowersOf(
      wholeTest,
      { ...emptyRating, basis: 'net', blowerPower: null, blowerKind: 'ratedWithBlower' },
      thousand,
      (step) => steps.push(step),
    );
    expect(steps.map(({ id, gives }) => [id, gives.value])).toEqual([
      ['rating.blowerHeat.default', expect.closeTo(250, 9)],
    ]);
  });
});
