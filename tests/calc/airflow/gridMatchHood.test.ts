import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airflowFromFlowGrid,
  airflowFromGrille,
  airflowFromHood,
  airflowFromPressureMatch,
  airflowFromReadout,
  type FlowGrid,
  type GrilleVane,
  type Hood,
  type PressureMatch,
} from '../../../src/calc/index.ts';
import { airOf, codes, errorOf, standardAir, stepsOf } from './support.ts';

const grid: FlowGrid = {
  plates: [0.4625],
  shownAs: 'actual',
  pressureNormal: 62,
  pressureWithGrid: 48,
  air: standardAir,
};
const match: PressureMatch = {
  fanFlow: 0.5,
  shownAs: 'actual',
  pressureNormal: 50,
  pressureReached: 50,
  air: standardAir,
};
const hood: Hood = {
  returns: [0.3, 0.2],
  hood: 'powered',
  shownAs: 'actual',
  covers: true,
  ductsTight: true,
  air: standardAir,
};
const vane: GrilleVane = {
  grilles: [{ readings: [2, 2.2, 1.8, 2], width: 0.6, height: 0.5, areaFactor: 0.7 }],
  factorFrom: 'maker',
  air: standardAir,
};

describe('airflowFromFlowGrid', () => {
  test('62 Pa without and 48 Pa with the plates turn 980 into 1 114 (known: computed)', () => {
    expect(airflowFromFlowGrid({ ...grid, plates: [0.98] }).volumeFlow).toBeCloseTo(1.1138, 4);
  });

  test('several slots add up, and the signs of the pressures do not matter', () => {
    const one = airflowFromFlowGrid({ ...grid, plates: [0.5] });
    const two = airflowFromFlowGrid({ ...grid, plates: [0.2, 0.3], pressureNormal: -62, pressureWithGrid: -48 });
    expect(two.volumeFlow).toBeCloseTo(one.volumeFlow, 12);
  });

  test('a slot not read yet counts like the others, is said to be missing, and widens', () => {
    const partial = airflowFromFlowGrid({ ...grid, plates: [0.3, null] });
    expect(partial.partial).toBe(true);
    expect(partial.volumeFlow).toBeCloseTo(airflowFromFlowGrid({ ...grid, plates: [0.3, 0.3] }).volumeFlow, 12);
    expect(partial.u).toBeGreaterThan(airflowFromFlowGrid(grid).u);
    expect(airflowFromFlowGrid({ ...grid, plates: [0.3, -1] }).problems.map(({ quantity }) => quantity)).toEqual([
      'plates.1',
    ]);
  });

  test('what an instrument shows without knowing the density is raised by the root of the density ratio', () => {
    const thin = airOf(1.2014 * 0.84);
    const shown = (shownAs: FlowGrid['shownAs']) =>
      airflowFromFlowGrid({ ...grid, pressureNormal: 48, shownAs, air: thin });
    expect(shown('actual').volumeFlow).toBeCloseTo(0.4625, 12);
    // 1/√0.84 = 1.0911 (own arithmetic).
    expect(shown('uncorrected').volumeFlow / 0.4625).toBeCloseTo(1.0911, 4);
    expect([shown('standard').at, shown('standard').volumeFlow]).toEqual(['standard', expect.closeTo(0.4625, 12)]);
  });

  test('a large correction and a plate that raises the pressure are said', () => {
    expect(codes(airflowFromFlowGrid(grid))).toEqual([]);
    expect(codes(airflowFromFlowGrid({ ...grid, pressureNormal: 80 }))).toEqual(['largeGridCorrection']);
    expect(codes(airflowFromFlowGrid({ ...grid, pressureNormal: 40 }))).toEqual(['gridRaisedPressure']);
  });

  test.each([
    ['nothing read', { plates: [null] }, ['missing', 'plates']],
    ['only a plate below zero', { plates: [null, -0.1] }, ['outOfRange', 'plates.1']],
    ['no pressure with the plates', { pressureWithGrid: 0 }, ['outOfRange', 'pressureWithGrid']],
    ['a pressure that is no number', { pressureNormal: Number.NaN }, ['notFinite', 'pressureNormal']],
  ])('refuses %s', (_, change, error) => {
    expect(errorOf(() => airflowFromFlowGrid({ ...grid, ...change }))).toEqual(error);
  });
});

describe('airflowFromPressureMatch', () => {
  test('is what the fan shows where it met the pressure', () => {
    const answer = airflowFromPressureMatch(match);
    expect([answer.volumeFlow, answer.extrapolated]).toEqual([0.5, 1]);
    expect(codes(answer)).toEqual([]);
  });

  test('the farther the fan stays below, the more it is multiplied and the less sure it is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 49, noNaN: true }),
        fc.double({ min: 0.1, max: 0.95, noNaN: true }),
        (reached, share) => {
          const near = airflowFromPressureMatch({ ...match, pressureReached: reached });
          const far = airflowFromPressureMatch({ ...match, pressureReached: share * reached });
          expect(far.volumeFlow).toBeGreaterThan(near.volumeFlow);
          expect(far.u).toBeGreaterThan(near.u);
          // Between the square root and the power 0.6 lies the band of one and two thirds standard uncertainties.
          const ratio = 50 / reached;
          const source = near.sources.find(({ name }) => name === 'pressureMatch.exponent');
          expect(Math.log(ratio ** 0.6 / ratio ** 0.5)).toBeCloseTo(Math.sqrt(3) * (source?.u ?? 0), 9);
        },
      ),
    );
  });

  test.each([
    [49, []],
    [40, ['pressureNotReached']],
    [20, ['pressureFarFromReached']],
    [60, ['pressureOvershot']],
  ] as const)('%d Pa of 50 remarks %s', (pressureReached, expected) => {
    expect(codes(airflowFromPressureMatch({ ...match, pressureReached }))).toEqual(expected);
  });

  test.each([
    [{ fanFlow: 0 }, 'fanFlow'],
    [{ pressureReached: 0 }, 'pressureReached'],
    [{ pressureNormal: 9e9 }, 'pressureNormal'],
  ])('refuses %o', (change, quantity) => {
    expect(errorOf(() => airflowFromPressureMatch({ ...match, ...change }))).toEqual(['outOfRange', quantity]);
  });
});

describe('airflowFromHood', () => {
  test('adds the returns', () => {
    expect(airflowFromHood(hood).volumeFlow).toBeCloseTo(0.5, 12);
    expect(stepsOf((t) => airflowFromHood(hood, t))[0]?.puts.map(({ symbol, value }) => [symbol, value])).toEqual([
      ['V̇₁', 0.3],
      ['V̇₂', 0.2],
    ]);
  });

  test('says what each kind of hood, its size and the ducts behind it do', () => {
    const u = (change: Partial<Hood>) => airflowFromHood({ ...hood, ...change }).u;
    expect([u({}), u({ hood: 'plain' })]).toEqual([expect.closeTo(0.06, 12), expect.closeTo(0.12, 12)]);
    expect(u({ hood: 'compensated' })).toBeCloseTo(0.08, 12);
    expect(u({ ductsTight: false })).toBeGreaterThan(u({}));
    expect(u({ covers: false })).toBeGreaterThan(u({}));
    expect(codes(airflowFromHood(hood))).toEqual([]);
    expect(codes(airflowFromHood({ ...hood, hood: 'plain', covers: false, ductsTight: false }))).toEqual([
      'hoodBackPressure',
      'hoodTooSmall',
      'leaksAfterGrille',
    ]);
  });

  test('a return not read yet makes it partial', () => {
    const partial = airflowFromHood({ ...hood, returns: [0.3, null] });
    expect([partial.partial, partial.volumeFlow]).toEqual([true, 0.6]);
    expect(errorOf(() => airflowFromHood({ ...hood, returns: [] }))).toEqual(['missing', 'returns']);
  });
});

describe('airflowFromGrille', () => {
  test('is mean velocity, face and area factor', () => {
    const answer = airflowFromGrille(vane);
    expect(answer.volumeFlow).toBeCloseTo(2 * 0.3 * 0.7, 12);
    expect(codes(answer)).toEqual(['weakestMethod', 'leaksAfterGrille']);
  });

  test('is the weakest, and weaker still with a guessed factor', () => {
    const others = [
      airflowFromHood({ ...hood, ductsTight: false }),
      airflowFromFlowGrid(grid),
      airflowFromPressureMatch(match),
    ];
    const guessed = airflowFromGrille({ ...vane, factorFrom: 'guess' });
    for (const { u } of others) expect(airflowFromGrille(vane).u).toBeGreaterThan(u);
    expect(guessed.u).toBeGreaterThan(airflowFromGrille(vane).u);
    expect(codes(guessed)).toContain('areaFactorGuessed');
  });

  test('names the bad cell, keeps the rest, and counts a grille not read like the others', () => {
    const [one] = vane.grilles;
    const readings = [2, -2, null, 2];
    const bad = airflowFromGrille({ ...vane, grilles: [{ ...one!, readings }] });
    expect(bad.problems.map(({ quantity }) => quantity)).toEqual(['grilles.0.readings.1']);
    expect([bad.partial, bad.flows]).toEqual([true, [expect.closeTo(0.42, 12)]]);
    const two = airflowFromGrille({ ...vane, grilles: [one!, { ...one!, readings: [null] }] });
    expect([two.volumeFlow, two.flows[1], two.partial]).toEqual([expect.closeTo(0.84, 12), null, true]);
    const odd = airflowFromGrille({ ...vane, grilles: [one!, { ...one!, areaFactor: 70 }] });
    expect(odd.problems.map(({ quantity }) => quantity)).toEqual(['grilles.1.areaFactor']);
    expect([odd.volumeFlow, odd.partial]).toEqual([expect.closeTo(0.84, 12), true]);
  });

  test.each([
    ['no grille', { grilles: [] }, ['missing', 'grilles']],
    ['none read', { grilles: [{ ...vane.grilles[0]!, readings: [null] }] }, ['missing', 'grilles']],
    [
      'a factor in percent',
      { grilles: [{ ...vane.grilles[0]!, areaFactor: 70 }] },
      ['outOfRange', 'grilles.0.areaFactor'],
    ],
    ['a face without height', { grilles: [{ ...vane.grilles[0]!, height: 0 }] }, ['outOfRange', 'grilles.0.height']],
    ['a face without width', { grilles: [{ ...vane.grilles[0]!, width: 0 }] }, ['outOfRange', 'grilles.0.width']],
  ])('refuses %s', (_, change, error) => {
    expect(errorOf(() => airflowFromGrille({ ...vane, ...change }))).toEqual(error);
  });
});

test('a grille shows its flow, and the sum what it may be wrong by', () => {
  const ids = stepsOf((t) => airflowFromGrille({ ...vane, grilles: [vane.grilles[0]!, vane.grilles[0]!] }, t)).map(
    ({ id }) => id,
  );
  expect(ids).toEqual(['airflow.flow', 'airflow.flow', 'dryAirFlow.actual', 'airflow.grille.uncertainty']);
});

describe('airflowFromReadout', () => {
  const sensed = { volumeFlow: 0.5, shows: 'sensed', ways: ['standard'] } as const;

  test('a flow that is only asked for is a setting, and no evidence', () => {
    expect([airflowFromReadout(sensed).evidence, codes(airflowFromReadout(sensed))]).toEqual([true, []]);
    const asked = airflowFromReadout({ ...sensed, shows: 'demanded' });
    expect([asked.evidence, codes(asked)]).toEqual([false, ['readoutIsSetting']]);
    const unsure = airflowFromReadout({ ...sensed, shows: 'unsure' });
    expect([unsure.evidence, codes(unsure)]).toEqual([false, ['readoutMayBeSetting']]);
    expect(asked.u).toBeGreaterThan(airflowFromReadout(sensed).u);
  });

  test('where nobody knows how it is counted the middle is taken, and the price is in the range', () => {
    const ways = ['standard', { specificVolume: 1 }] as const;
    const answer = airflowFromReadout({ ...sensed, ways });
    expect(answer.dryAirFlow).toBeCloseTo((0.5 * 1.2014 + 0.5) / 2, 12);
    const price = 0.2014 / 2.2014;
    expect(answer.sources.find(({ name }) => name === 'airflow.way')?.u).toBeCloseTo(price / Math.sqrt(3), 12);
    expect(codes(answer)).toEqual(['airflowWayUnsure']);
    expect(errorOf(() => airflowFromReadout({ ...sensed, ways: [] }))).toEqual(['missing', 'ways']);
    expect(errorOf(() => airflowFromReadout({ ...sensed, volumeFlow: 0 }))).toEqual(['outOfRange', 'volumeFlow']);
  });
});
