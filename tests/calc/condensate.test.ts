/** A timed catch of water against what the probes see, worked by hand. */
import { describe, expect, test } from 'vitest';
import { leakPrices } from '../../src/calc/confidence/leaks.ts';
import { heldAgainst } from '../../src/calc/confidence/standards.ts';
import { type Budget, condensateCheck, moistAir } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

/** What the probes say, kg/s, with a standard uncertainty. */
const probes = (value: number, u: number, degreesOfFreedom: number | null = null): Budget =>
  ({
    value,
    u,
    degreesOfFreedom,
    interval: { probability: 0.9, k: 1.28, low: value - u, high: value + u },
    shares: [],
  }) as Budget;
const entering = { dryBulb: 24 };
const caught = (mass: number, duration: number, massLimit: number | null, seen = probes(mass / duration, 1e-4)) =>
  condensateCheck({ mass, duration, massLimit }, seen, entering);
/** Standard uncertainty of independent limits, half-widths of rectangles. */
const together = (...limits: readonly number[]) => Math.hypot(...limits) / Math.sqrt(3);

describe('water caught over a time', () => {
  test('is known to its jug, its watch and its drain: 2 %, 15 s and a tenth where nobody says otherwise', () => {
    const { value, u, shares } = caught(1.8, 1800, null).caught;
    expect(value).toBeCloseTo(0.001, 12);
    expect(u / value).toBeCloseTo(together(0.02, 15 / 1800, 0.1), 5);
    expect(shares.map(({ name }) => name)).toEqual(['condensate.drain', 'condensate.mass', 'condensate.time']);
    // A scale to 0.18 kg of 1.8 kg is a tenth; one without error leaves the others.
    expect(caught(1.8, 1800, 0.18).caught.u / value).toBeCloseTo(together(0.1, 15 / 1800, 0.1), 5);
    expect(caught(1.8, 1800, 0).caught.u / value).toBeCloseTo(together(15 / 1800, 0.1), 5);
  });

  test('differs from what the probes see by both uncertainties together, to the same confidence', () => {
    const check = caught(1.8, 1800, null, probes(0.0008, 3e-4, 4));
    expect(check.difference.value).toBeCloseTo(0.0002, 12);
    expect(check.difference.u).toBeCloseTo(Math.hypot(check.caught.u, 3e-4), 9);
    expect(check.difference.degreesOfFreedom).toBeCloseTo(4 * (check.difference.u / 3e-4) ** 4, 3);
    expect(check.difference.shares.map(({ name }) => name)).toContain('condensate.probes');
    const disputed = { ...probes(0.001, 1e-4), interval: { probability: 0.95, k: 1.64, low: 0, high: 1 } } as Budget;
    const { caught: first, difference } = caught(1.8, 1800, null, disputed);
    expect([first.interval.probability, difference.interval.probability]).toEqual([0.95, 0.95]);
  });

  test('agrees until the whole range of the difference is on one side of nothing', () => {
    const outcome = (seen: number) => caught(1.8, 1800, null, probes(seen, 1e-9)).outcome;
    // The range reaches 1.2816·u to either side of 0.001 kg/s.
    const reach = 1.2815516 * caught(1.8, 1800, null).caught.u;
    expect([outcome(0.001 - 0.99 * reach), outcome(0.001 + 0.99 * reach)]).toEqual(['agrees', 'agrees']);
    expect([outcome(0.001 - 1.01 * reach), outcome(0.001 + 1.01 * reach)]).toEqual(['more', 'less']);
  });

  test('stands for the heat of the vapour that it was: 2501 kJ/kg at 0 °C and 1.86 for each kelvin', () => {
    expect(caught(1.8, 1800, null).latent).toBeCloseTo(0.001 * (2501e3 + 1860 * 24), 6);
  });

  test.each([
    [1e-6, 1, null],
    [1e4, 1e6, null],
    [0.9e-6, 60, 'outOfRange'],
    [1.1e4, 60, 'outOfRange'],
    [1, 0.9, 'outOfRange'],
    [1, 1.1e6, 'outOfRange'],
    [Number.NaN, 60, 'notFinite'],
  ])('of %d kg in %d s is taken, or refused as %s', (mass, duration, code) => {
    expect(codeOf(() => caught(mass, duration, null, probes(0.001, 1e-4)))).toBe(code);
  });
});

describe('a leak', () => {
  test('of air like that of the return costs nothing behind the return probe, and only its share elsewhere', () => {
    const air = moistAir({ dryBulb: 24, relativeHumidity: 0.5 });
    const prices = leakPrices(air, moistAir({ dryBulb: 13, relativeHumidity: 0.9 }), air);
    expect(prices).toEqual([
      { code: 'bypass', share: 0.1, reads: expect.closeTo(1 / 9, 12), source: 'definition' },
      { code: 'cabinet', share: 0.02, reads: expect.closeTo(1 / 1.02 - 1, 12), source: 'atticDesign' },
      { code: 'returnLeak', share: 0.05, reads: expect.closeTo(0, 12), source: 'atticDesign' },
    ]);
  });

  test('of air as much hotter as the coil takes off makes 5 % behind the return probe read a twentieth low', () => {
    const [entering1, leaving] = [
      moistAir({ dryBulb: 24, relativeHumidity: 0.5 }),
      moistAir({ dryBulb: 13, relativeHumidity: 0.9 }),
    ];
    const attic = moistAir({ enthalpy: 2 * entering1.enthalpy - leaving.enthalpy, dryBulb: 38 });
    const [, cabinet, returnLeak] = leakPrices(entering1, leaving, attic);
    // The coil really takes 1 + 0.05·1 and 1.02 + 0.02·1 of what is shown.
    expect(returnLeak?.reads).toBeCloseTo(1 / 1.05 - 1, 12);
    expect(cabinet?.reads).toBeCloseTo(1 / 1.04 - 1, 12);
  });
});

describe('what a standard showed, worked by hand', () => {
  const limits = { standard: 0.01, probes: 0.03 };
  test.each([
    // The other probe is told by the difference of 0.01: 0.04 and 0.03, in the middle 0.035; 0.01 and a quarter of it stay in doubt.
    ['the return probe', { entering: 0.04, leaving: null }, 0.5, { error: 0.035, correction: 0.035, limit: 0.01875 }],
    ['the supply probe', { entering: null, leaving: 0.03 }, 0.5, { error: 0.035, correction: 0.035, limit: 0.01875 }],
    ['both', { entering: 0.05, leaving: 0.02 }, 0.5, { error: 0.035, correction: 0.035, limit: 0.01875 }],
    [
      'both, the supply reading moved by all of it',
      { entering: 0.05, leaving: 0.02 },
      1,
      { error: 0.05, correction: 0.05, limit: 0.0225 },
    ],
    [
      'both, the return reading moved by all of it',
      { entering: 0.05, leaving: 0.02 },
      0,
      { error: 0.02, correction: 0.02, limit: 0.015 },
    ],
    ['both below it', { entering: -0.05, leaving: -0.02 }, 0.5, { error: -0.035, correction: -0.035, limit: 0.01875 }],
    [
      'both by as much as it can be out itself',
      { entering: 0.01, leaving: 0.01 },
      0.5,
      { error: 0.01, correction: 0, limit: 0.02 },
    ],
    ['both by less', { entering: -0.004, leaving: -0.004 }, 0.5, { error: -0.004, correction: 0, limit: 0.014 }],
  ] as const)('by %s', (_, shown, leavingShare, found) => {
    const held = heldAgainst(shown, 0.01, leavingShare, limits);
    for (const key of ['error', 'correction', 'limit'] as const) expect(held?.[key]).toBeCloseTo(found[key], 12);
  });

  test('leaves no more in doubt than the probes had, where nothing is taken off', () => {
    expect(heldAgainst({ entering: 0.009, leaving: 0.009 }, 0, 0.5, { standard: 0.01, probes: 0.015 })?.limit).toBe(
      0.015,
    );
  });
});
