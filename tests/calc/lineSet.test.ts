import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type LineRun,
  type LineSetInput,
  lineSet,
  ratedLineLength,
  refrigerants,
  type Step,
  tonOfRefrigeration,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';
import { nothing, split, withRun } from './lineRun.ts';

const factorOf = (input: LineSetInput) => lineSet(input).factor?.factor ?? Number.NaN;

describe('the factor of a line set', () => {
  test('is one for the line of the rating', () => {
    expect(lineSet(withRun({ length: ratedLineLength })).factor).toMatchObject({ factor: 1, low: 1, high: 1 });
  });

  test('is a band between two thirds of the loss in density and all of it', () => {
    const { factor, vapor, rated } = lineSet(split);
    const loss = 1 - vapor!.density / rated!.density;
    expect(factor!.low).toBeCloseTo(1 - loss, 12);
    expect(factor!.high).toBeCloseTo(1 - (2 / 3) * loss, 12);
    expect(factor!.factor).toBeGreaterThan(factor!.low);
    expect(factor!.factor).toBeLessThan(factor!.high);
  });

  test('falls with length, with fittings, with a narrower tube, and with a vapour that has to climb', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...refrigerants),
        fc.double({ min: 8, max: 40, noNaN: true }),
        fc.double({ min: 6000, max: 14000, noNaN: true }),
        (refrigerant, length, capacity) => {
          const of = (changes: Partial<LineRun>) => factorOf(withRun({ refrigerant, length, capacity, ...changes }));
          expect(of({ length: length + 5 })).toBeLessThan(of({}));
          expect(of({ fittings: 5 })).toBeLessThan(of({}));
          expect(of({ vaporTube: '5/8' })).toBeLessThan(of({}));
          expect(of({ lift: -8 })).toBeLessThan(of({}));
          expect(of({ vaporTube: '7/8' })).toBeGreaterThan(of({}));
        },
      ),
    );
  });

  test('is below one with a narrower tube even at the length of the rating', () => {
    const { factor, cautions } = lineSet(withRun({ length: ratedLineLength, vaporTube: '5/8' }));
    expect(factor!.high).toBeLessThan(0.995);
    expect(cautions).toContain('otherVaporTube');
  });

  test('is the maker’s where the maker gives one, whatever ours would be', () => {
    const { factor, vapor } = lineSet({ ...split, maker: { ...nothing, factor: 0.955 } });
    expect(factor).toEqual({ factor: 0.955, low: 0.955, high: 0.955, basis: 'maker', source: 'makersTable' });
    expect(vapor).not.toBeNull();
  });

  test('is not given beyond the length or the lift that the maker allows, up or down', () => {
    const tooLong = lineSet({ ...split, maker: { ...nothing, factor: 0.97, maximumLength: 25 } });
    expect(tooLong.factor).toBeNull();
    expect(tooLong.cautions).toContain('beyondMakersLength');
    const maker = { ...nothing, maximumLift: 10 };
    expect(lineSet({ ...withRun({ lift: -12 }), maker }).cautions).toContain('beyondMakersLift');
    expect(lineSet({ ...withRun({ lift: 12 }), maker }).factor).toBeNull();
    expect(lineSet({ ...withRun({ lift: 9 }), maker }).factor).not.toBeNull();
  });
});

describe('where no line set is worked out', () => {
  test.each([
    ['packaged', { equipment: 'packaged', metering: 'indoors' }],
    ['meteringOutdoors', { equipment: 'split', metering: 'outdoors' }],
  ] as const)('%s: only the maker’s factor is taken', (reason, kind) => {
    const bare = lineSet({ ...split, ...kind });
    expect(bare).toMatchObject({ applies: false, reason, factor: null, vapor: null, liquid: null, oilReturn: null });
    const made = lineSet({ ...split, ...kind, maker: { ...nothing, factor: 0.98 } });
    expect(made.factor).toMatchObject({ factor: 0.98, basis: 'maker' });
  });

  test('nothing is known without a run, but what the maker says', () => {
    expect(lineSet({ ...split, run: null })).toMatchObject({ applies: true, factor: null, vapor: null });
    expect(factorOf({ ...split, run: null, maker: { ...nothing, factor: 0.99 } })).toBe(0.99);
  });
});

describe('the liquid line', () => {
  test('lifting costs subcooling, falling gives some, and the two are alike', () => {
    const level = lineSet(split).liquid!.subcoolingLeft;
    const up = lineSet(withRun({ lift: 9 })).liquid!;
    const down = lineSet(withRun({ lift: -9 })).liquid!;
    expect(up.static).toBeCloseTo(-down.static, 6);
    expect(up.subcoolingLeft).toBeLessThan(level);
    expect(down.subcoolingLeft).toBeGreaterThan(level);
    expect((down.subcoolingLeft - level) / (level - up.subcoolingLeft)).toBeCloseTo(1, 1);
  });

  test('the liquid boils when more is taken than it was cooled below its bubble point', () => {
    const high = lineSet(withRun({ lift: 25, subcooling: 2 }));
    expect(high.liquid).toMatchObject({ flashes: true });
    expect(high.cautions).toContain('liquidFlashes');
    expect(lineSet(withRun({ lift: 9, subcooling: 2.6 })).cautions).toContain('littleSubcooling');
  });

  test('nothing is said of it without a subcooling, and of the vapour line all the same', () => {
    const { liquid, vapor, factor } = lineSet(withRun({ subcooling: null }));
    expect(liquid).toBeNull();
    expect(vapor).not.toBeNull();
    expect(factor).not.toBeNull();
  });
});

describe('oil return', () => {
  test.each([
    ['carried', {}],
    ['slow', { vaporTube: '1-1/8' }],
    ['slowInRiser', { vaporTube: '7/8', lift: -6, capacity: 2.6 * tonOfRefrigeration }],
    ['fast', { refrigerant: 'R-22', vaporTube: '1/2', length: 3 }],
  ] as const)('is %s', (oilReturn, changes) => {
    const found = lineSet(withRun(changes));
    expect(found.oilReturn).toBe(oilReturn);
    expect(found.cautions.includes(oilReturn as 'slow')).toBe(oilReturn !== 'carried');
  });
});

test('the working ends in the factor, and every step has figures', () => {
  const steps: Step[] = [];
  const { factor, vapor } = lineSet(withRun({ lift: 5 }), (step) => steps.push(step));
  expect(steps.at(-1)).toMatchObject({ id: 'lineSet.factor', gives: { value: factor!.factor } });
  expect(steps.find(({ id }) => id === 'lineSet.dewDrop')?.gives.value).toBe(vapor!.dewDrop);
  for (const { puts, gives } of steps)
    for (const { value } of [...puts, gives]) expect(Number.isFinite(value)).toBe(true);
});

test('bad figures and impossible lines are refused by name', () => {
  expect(codeOf(() => lineSet(withRun({ length: -1 })))).toBe('outOfRange');
  expect(codeOf(() => lineSet(withRun({ capacity: Number.NaN })))).toBe('notFinite');
  expect(codeOf(() => lineSet(withRun({ lift: 100 })))).toBe('outOfRange');
  expect(codeOf(() => lineSet(withRun({ vaporTube: '9/8' as '7/8' })))).toBe('unknown');
  expect(codeOf(() => lineSet(withRun({ vaporTube: '1/4' })))).toBe('outOfRange');
  expect(codeOf(() => lineSet({ ...split, maker: { ...nothing, factor: 4 } }))).toBe('outOfRange');
});

test('what goes in and what comes out crosses to a worker whole', () => {
  const found = lineSet(split);
  expect(structuredClone(found)).toEqual(found);
  expect(lineSet(JSON.parse(JSON.stringify(split)))).toEqual(found);
});
