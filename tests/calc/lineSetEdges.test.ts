/** The edges of a line set: what is refused, what is cautioned of, and what the working has. */
import { describe, expect, test } from 'vitest';
import {
  CalcError,
  fahrenheitDegree,
  insideDiameter,
  type LineRun,
  type LineSetInput,
  lineSet,
  type MakersLineLimits,
  type Step,
} from '../../src/calc/index.ts';
import { nothing, run, split, withRun } from './lineRun.ts';

const withMaker = (changes: Partial<MakersLineLimits>, more: Partial<LineSetInput> = {}): LineSetInput => ({
  ...split,
  ...more,
  maker: { ...nothing, ...changes },
});

function refused(input: LineSetInput): readonly [string, string] | null {
  try {
    lineSet(input);
    return null;
  } catch (error) {
    if (error instanceof CalcError) return [error.code, error.quantity];
    throw error;
  }
}

describe('what a line cannot be is refused under its own name', () => {
  test.each<[keyof LineRun, number]>([
    ['capacity', 0],
    ['capacity', 2e8],
    ['evaporating', -15.1],
    ['evaporating', 25.1],
    ['superheat', -0.1],
    ['superheat', 15.1],
    ['liquidTemperature', -0.1],
    ['liquidTemperature', 55.1],
    ['subcooling', -0.1],
    ['subcooling', 20.1],
    ['length', 201],
    ['ratedLength', -0.1],
    ['ratedLength', 201],
    ['fittings', -0.1],
    ['fittings', 201],
    ['lift', -60.1],
    ['lift', 60.1],
  ])('%s of %s', (quantity, value) => {
    expect(refused(withRun({ [quantity]: value }))).toEqual(['outOfRange', quantity]);
    expect(refused(withRun({ [quantity]: Number.NaN }))).toEqual(['notFinite', quantity]);
  });

  test.each<[keyof MakersLineLimits, number, string]>([
    ['factor', 0.29, 'maker.factor'],
    ['factor', 1.21, 'maker.factor'],
    ['maximumLength', -1, 'maker.maximumLength'],
    ['maximumLength', 201, 'maker.maximumLength'],
    ['maximumLift', -1, 'maker.maximumLift'],
    ['maximumLift', 201, 'maker.maximumLift'],
  ])('the maker’s %s of %s', (key, value, quantity) => {
    expect(refused(withMaker({ [key]: value }))).toEqual(['outOfRange', quantity]);
  });

  test('but a line may be just as long as it climbs', () => {
    expect(refused(withRun({ length: 12, lift: 12 }))).toBeNull();
    expect(refused(withRun({ length: 11.9, lift: -12 }))).toEqual(['outOfRange', 'length']);
  });
});

describe('what the maker allows', () => {
  test('is allowed to the last inch of length and of lift', () => {
    const limits = { factor: 0.97, maximumLength: run.length, maximumLift: 9 };
    expect(lineSet(withMaker(limits, withRun({ lift: -9 })))).toMatchObject({ cautions: [], factor: { factor: 0.97 } });
    expect(lineSet(withMaker(limits, withRun({ lift: -9.1 }))).cautions).toEqual(['beyondMakersLift']);
    expect(lineSet(withMaker(limits, withRun({ length: run.length + 0.1 }))).cautions).toEqual(['beyondMakersLength']);
  });

  test('counts where the metering device stands outdoors too, and not for a packaged unit, which has no line', () => {
    const limits = { factor: 0.97, maximumLength: 25 };
    expect(lineSet(withMaker(limits, { metering: 'outdoors' }))).toMatchObject({
      cautions: ['beyondMakersLength'],
      factor: null,
    });
    expect(lineSet(withMaker(limits, { equipment: 'packaged' }))).toMatchObject({
      cautions: [],
      factor: { factor: 0.97 },
    });
  });
});

describe('cautions', () => {
  test('are none for the line of an ordinary system', () => {
    expect(lineSet(split).cautions).toEqual([]);
    expect(lineSet(withRun({ subcooling: null })).cautions).toEqual([]);
  });

  test('name the one thing that is wrong', () => {
    expect(lineSet(withRun({ ratedVaporTube: '7/8' })).cautions).toEqual(['otherVaporTube']);
    expect(lineSet(withRun({ lift: 25, subcooling: 2 })).cautions).toEqual(['liquidFlashes']);
    // Its viscosity is a mixture’s estimate, to one part in ten.
    expect(lineSet(withRun({ refrigerant: 'R-454B' })).cautions).toEqual(['viscosityEstimated']);
  });

  test('speak of little subcooling below 2 °F, and of boiling below nothing', () => {
    const left = (subcooling: number) => lineSet(withRun({ lift: 9, subcooling }));
    for (let subcooling = 1; subcooling < 6; subcooling += 0.25) {
      const { liquid, cautions } = left(subcooling);
      const { subcoolingLeft } = liquid!;
      const little = subcoolingLeft < 2 * fahrenheitDegree ? ['littleSubcooling'] : [];
      expect(cautions).toEqual(subcoolingLeft < 0 ? ['liquidFlashes'] : little);
    }
    expect(left(1).cautions).toEqual(['liquidFlashes']);
    expect(left(5.75).cautions).toEqual([]);
  });
});

test('fittings lengthen the liquid line in the proportion of the two bores, and the vapour line as they are', () => {
  const [plain, fitted] = [lineSet(split), lineSet(withRun({ fittings: 6 }))];
  const share = insideDiameter('3/8') / insideDiameter('3/4');
  expect(fitted.liquid!.friction / plain.liquid!.friction).toBeCloseTo((run.length + 6 * share) / run.length, 9);
  expect(fitted.vapor!.friction / plain.vapor!.friction).toBeCloseTo((run.length + 6) / run.length, 9);
});

test('the working has both lines and the liquid, step by step, and the weight of what is lifted', () => {
  const steps: Step[] = [];
  const { liquid } = lineSet(withRun({ lift: 5 }), (step) => steps.push(step));
  const pipe = ['velocity', 'reynolds', 'frictionFactor', 'friction'];
  const vapor = [...pipe, 'vaporPressure', 'dewDrop', 'density'].map((name) => `lineSet.${name}`);
  const wet = [...pipe, 'liquidPressure', 'subcoolingLeft'].map((name) => `lineLiquid.lineSet.${name}`);
  expect(steps.map(({ id }) => id)).toEqual([
    'lineSet.massFlow',
    ...vapor.map((id) => `lineRated.${id}`),
    ...vapor,
    ...wet,
    'lineSet.factor',
  ]);
  const equations = steps.filter(({ id }) => id.endsWith('vaporPressure')).map(({ equation }) => equation);
  // The line of the rating lies level.
  expect(equations).toEqual(['p₂ = √(p₁² − 2·p₁·Δp)', 'p₂ = √(p₁² − 2·p₁·(Δp − ρ·g·z))']);
  expect(steps.at(-2)?.gives.value).toBe(liquid!.subcoolingLeft);
});
