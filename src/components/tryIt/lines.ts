import { fahrenheitDegree, foot, fromFahrenheit, lineSet, type Tube, tonOfRefrigeration } from '~/calc/index.ts';
import { ahead, dial } from './ahead.ts';

/** The vapour tubes that may be taken, the smaller first, and the one liquid tube. */
export const vaporTubes = ['3/4', '7/8'] as const satisfies readonly Tube[];
export const liquidTube = '3/8' satisfies Tube;
/** K, of the liquid that leaves the outdoor unit. */
export const subcooling = 10 * fahrenheitDegree;

/**
 * A line set of three tons of R-410A, invented, against 25 ft of the same tube: length and lift in m, the vapour tube by its
 * place in the list. What is left of the capacity at least and at most, and of the subcooling, K.
 */
export function lineOf(
  length: number,
  lift: number,
  tube: number,
): readonly [low: number, high: number, subcoolingLeft: number] {
  const vaporTube = vaporTubes[tube] ?? vaporTubes[0];
  const { factor, liquid } = lineSet({
    equipment: 'split',
    metering: 'indoors',
    maker: { factor: null, maximumLength: null, maximumLift: null },
    run: {
      refrigerant: 'R-410A',
      capacity: 3 * tonOfRefrigeration,
      evaporating: fromFahrenheit(45),
      superheat: 15 * fahrenheitDegree,
      liquidTemperature: fromFahrenheit(100),
      subcooling,
      vaporTube,
      ratedVaporTube: vaporTube,
      liquidTube,
      length,
      ratedLength: 25 * foot,
      fittings: 0,
      lift,
    },
  });
  if (!factor || !liquid) throw new RangeError('the example has no answer');
  return [factor.low, factor.high, liquid.subcoolingLeft];
}

export const lines = ahead(
  [
    dial(50 * foot, 200 * foot, 25 * foot, 100 * foot),
    dial(-50 * foot, 50 * foot, 10 * foot, 20 * foot),
    dial(0, 1, 1, 0),
  ],
  lineOf,
);
