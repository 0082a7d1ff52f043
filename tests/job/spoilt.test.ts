import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawing } from '../../src/job/classroom/draw.ts';
import { spoiltTest, spoiltTestsOf } from '../../src/job/classroom/spoilt.ts';
import { type FactName, mistakes, type SpoiltTest } from '../../src/job/classroom/spoiltTypes.ts';
import { facts, mistakes as said } from '../../src/words/en/spoilt.ts';

const seed = fc.integer({ min: 1, max: 99_999 });
const runs = { numRuns: 25 };
const fact = (test: SpoiltTest, name: FactName) => test.facts.find((one) => one.name === name)?.value ?? Number.NaN;

test('a set has four spoilt tests and a sound one, none twice, and the same number gives the same set', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9999 }), (set) => {
      const found = spoiltTestsOf(set).map(({ mistake }) => mistake);
      expect(found).toHaveLength(5);
      expect(new Set(found).size).toBe(5);
      expect(found).toContain(null);
    }),
    { numRuns: 15 },
  );
  expect(spoiltTestsOf(3)).toEqual(spoiltTestsOf(3));
});

test('every mistake is planted within a few sets', () => {
  const found = new Set(
    Array.from({ length: 12 }, (_, set) => spoiltTestsOf(set + 1).map(({ mistake }) => mistake)).flat(),
  );
  expect(found.size).toBe(mistakes.length + 1);
});

/** What a class is to see in the figures, and that no other test shows it. */
const signs: Readonly<Record<(typeof mistakes)[number], (test: SpoiltTest) => boolean>> = {
  lowStage: (one) => fact(one, 'power') / fact(one, 'powerInTable') < 0.75,
  bypassOpen: (one) => fact(one, 'returnDryBulb') - fact(one, 'returnAtUnit') > 1.5,
  probeSeesCoil: (one) => fact(one, 'supplySecond') - fact(one, 'supplyDryBulb') > 1,
  wetProbe: (one) => fact(one, 'supplyHumidity') === 1,
  seaLevelPressure: (one) => fact(one, 'altitude') > 1000 && fact(one, 'pressureUsed') > 100e3,
  grossRow: (one) => fact(one, 'tableAtRating') - fact(one, 'certified') > 100,
  demandedAirflow: (one) =>
    fact(one, 'airflowUsed') / fact(one, 'airflowFanTable') > 1.12 && fact(one, 'staticCooling') > 200,
  furnaceTap: (one) => fact(one, 'staticAtAirflow') / fact(one, 'staticCooling') > 1.2,
};

describe.each(mistakes)('%s', (mistake) => {
  test('shows in its figures, and no other mistake does', () => {
    fc.assert(
      fc.property(seed, (number) => {
        const one = spoiltTest(mistake, drawing(number));
        const seen = mistakes.filter((name) => signs[name](one));
        expect(seen).toEqual([mistake]);
        for (const name of one.giveaways) expect(Number.isFinite(fact(one, name)), name).toBe(true);
        expect(one.giveaways.length).toBeGreaterThan(0);
        expect(said[mistake].name).not.toBe('');
      }),
      runs,
    );
  });
});

/** Which way a mistake pushes the share, by more than a sound test strays. */
test.each([
  ['probeSeesCoil', 1],
  ['seaLevelPressure', 1],
  ['demandedAirflow', 1],
  ['furnaceTap', 1],
  ['wetProbe', -1],
  ['grossRow', -1],
] as const)('without %s the share is another', (mistake, direction) => {
  fc.assert(
    fc.property(seed, (number) => {
      const { worked, without } = spoiltTest(mistake, drawing(number));
      expect(direction * (worked.share - without!.share)).toBeGreaterThan(0.02);
      expect(without!.share).toBeGreaterThan(0.9);
      expect(without!.share).toBeLessThan(1.08);
    }),
    runs,
  );
});

test('a sound test shows none of the signs, and the water caught is that of its result', () => {
  fc.assert(
    fc.property(seed, (number) => {
      const one = spoiltTest(null, drawing(number));
      expect(mistakes.filter((name) => signs[name](one))).toEqual([]);
      expect(one.worked.share).toBeGreaterThan(0.9);
      expect(one.worked.share).toBeLessThan(1.08);
      expect(Math.abs(fact(one, 'waterCaught') / one.water - 1)).toBeLessThan(0.25);
      for (const { name, value } of one.facts) {
        expect(Number.isFinite(value), name).toBe(true);
        expect(facts[name]).toBeDefined();
      }
    }),
    runs,
  );
});
