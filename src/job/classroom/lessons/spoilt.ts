/** A question with three answers to raise hands for: which of three mistakes spoilt a test. */
import { drawing } from '../draw.ts';
import { giveawaysOf, spoiltTest } from '../spoilt.ts';
import { type Mistake, mistakes } from '../spoiltTypes.ts';
import { tell } from './support.ts';
import type { Lesson } from './types.ts';

interface Spoilt {
  readonly options: readonly Mistake[];
  /** Which of them was made. */
  readonly made: number;
  /** The seed of the house. */
  readonly house: number;
}

const testOf = ({ options, made, house }: Spoilt) => spoiltTest(options[made] ?? null, drawing(house));

export const spoilt: Lesson<Spoilt> = {
  first: { options: ['probeSeesCoil', 'wetProbe', 'lowStage'], made: 1, house: 1 },
  draw: (draw) => {
    const left = [...mistakes];
    const options = [0, 1, 2].map(() => left.splice(draw.step(0, left.length - 1, 1), 1)[0] as Mistake);
    return { options, made: draw.step(0, 2, 1), house: draw.step(2, 9999, 1) };
  },
  ask: (of) => {
    const { facts, worked, water } = testOf(of);
    const telling = new Set(of.options.flatMap(giveawaysOf));
    return {
      told: [
        ...facts.filter(({ name }) => telling.has(name)),
        tell('waterWorked', 'massFlow', water),
        tell('shareWorked', 'fraction', worked.share),
      ],
      grid: null,
      asTable: true,
      control: { by: 'choice', options: of.options },
      scale: {
        look: 'bar',
        kind: 'fraction',
        pen: 'measured',
        ends: [0, 1.5],
        given: [{ name: 'shareWorked', values: [worked.share] }],
        top: null,
      },
    };
  },
  answer: (of) => {
    const { without } = testOf(of);
    return {
      answer: of.made,
      marks: without ? [{ name: 'shareWithout', values: [without.share] }] : [],
      top: null,
      told: [],
    };
  },
};
