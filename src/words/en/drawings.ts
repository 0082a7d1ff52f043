/** Words of the page on how drawings are read. The keys of lines, hatches and marks are names of `styles/lines.css`. */

export const title = 'How to read our drawings';
export const description = 'Every line, hatch, mark and verdict of the drawings on this site, and what it means.';
export const say =
  'Each kind of line means one thing on every sheet, in light, in dark and on paper. No colour carries a meaning of its own.';

export const linesHeading = 'Lines';
export const lines = {
  measured: 'measured',
  should: 'what it should make, here and now',
  agreed: 'the line agreed on before the test',
  dimension: 'a range, or a difference between two figures',
  scale: 'a scale, an axis, the leader of a label',
  grid: 'a grid behind a chart',
  step: 'what the heat of the blower adds on its own',
  beyond: 'the coil’s line, beyond the air that leaves it',
  contour: 'a line of equal figures on a table that is drawn',
  cell: 'the cell of a table that is read',
} as const;

export const chartHeading = 'Lines of the air chart';
export const chartSay = 'Along each of them one quantity stays the same.';
export const chart = {
  saturation: 'saturation: air that holds all the water it can',
  humidity: 'equal relative humidity',
  'wet-bulb': 'equal wet bulb',
  enthalpy: 'equal enthalpy (heat content)',
  volume: 'equal volume of a pound or kilogram of dry air',
} as const;

export const hatchesHeading = 'Hatches';
export const hatchesSay = 'A hatched area is a range or a region. Where two hatches cross, there is doubt.';
export const hatches = {
  measured: 'the range of what was measured',
  expected: 'the range of what it should make',
  outside: 'not in the table',
  drying: 'the share of the work that dries the air (latent)',
} as const;

export const shadesHeading = 'Shades';
export const shadesSay = 'Bands of a table that is drawn run from paper to ink: more ink is more.';

export const marksHeading = 'Marks';
export const marks = {
  return: 'return air: what goes into the coil',
  supply: 'supply air: what comes out of it',
  coil: 'the coil’s own temperature (apparatus dew point)',
  dot: 'a reading on a scale',
  aim: 'what is tried out, and not read',
  arrow: 'the way a process goes',
  tube: 'a refrigerant line, by its two walls',
} as const;

export const verdictsHeading = 'Verdicts';
export const verdictsSay =
  'The bar is the range of the result. The upright line is what was agreed on before the test. Better is to the right.';
export const verdicts = {
  meets: { name: 'Meets', means: 'The whole range is at the line or past it.' },
  cannotTell: { name: 'Cannot tell', means: 'The line is inside the range. Neither good news nor bad.' },
  short: { name: 'Short', means: 'The whole range is below the line.' },
} as const;
export const rangeSay =
  'A range runs from the 10\u00a0% point of a result to its 90\u00a0% point: nine chances in ten that the truth is above the low end, nine in ten that it is below the high end. The sign ± is kept for the limit of an instrument.';
