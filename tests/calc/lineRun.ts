/** A split system with a hundred feet of line between its halves, and the same with something changed. */
import {
  foot,
  fromFahrenheit,
  type LineRun,
  type LineSetInput,
  type MakersLineLimits,
  ratedLineLength,
  tonOfRefrigeration,
} from '../../src/calc/index.ts';

export const nothing: MakersLineLimits = { factor: null, maximumLength: null, maximumLift: null };
export const run: LineRun = {
  refrigerant: 'R-410A',
  capacity: 3 * tonOfRefrigeration,
  evaporating: fromFahrenheit(45),
  superheat: 8,
  liquidTemperature: fromFahrenheit(100),
  subcooling: 5.5,
  vaporTube: '3/4',
  ratedVaporTube: '3/4',
  liquidTube: '3/8',
  length: 100 * foot,
  ratedLength: ratedLineLength,
  fittings: 0,
  lift: 0,
};
export const split: LineSetInput = { equipment: 'split', metering: 'indoors', maker: nothing, run };
export const withRun = (changes: Partial<LineRun>): LineSetInput => ({ ...split, run: { ...run, ...changes } });
