/** Words of the reference page: the line language and the bibliography. */
import type { Known } from '../../calc/sources.ts';

export const title = 'Look up';
export const description = 'How to read the drawings of this site, and every source that its figures rest on.';

export const linesHeading = 'How to read our drawings';
export const linesSay =
  'Each kind of line means one thing on every sheet, in light, in dark and on paper. No colour carries a meaning of its own.';

export const hatchesHeading = 'Hatches';
export const hatchesSay = 'A hatched area is a range or a region. Where two hatches cross, there is doubt.';

export const marksHeading = 'Marks';
export const verdictsHeading = 'Verdicts';
export const verdictsSay =
  'The bar is the range of the result. The upright line is what was agreed on before the test. Better is to the right.';

export const lines = {
  measured: 'measured',
  should: 'what it should make, here and now',
  agreed: 'the line agreed on before the test',
  dimension: 'a range, or a difference between two figures',
  scale: 'a scale, a grid, the leader of a label',
  beyond: 'the coil’s line, beyond the air that leaves it',
} as const;

export const hatches = {
  measured: 'the range of what was measured',
  expected: 'the range of what it should make',
  outside: 'not in the table',
  drying: 'the share of the work that dries the air (latent)',
} as const;

export const marks = {
  return: 'return air: what goes into the coil',
  supply: 'supply air: what comes out of it',
  dot: 'a reading on a scale',
} as const;

export const verdicts = {
  meets: { name: 'Meets', means: 'The whole range is at the line or past it.' },
  cannotTell: { name: 'Cannot tell', means: 'The line is inside the range. Neither good news nor bad.' },
  short: { name: 'Short', means: 'The whole range is below the line.' },
} as const;

export const rangeSay =
  'A range runs from the 10\u00a0% point of a result to its 90\u00a0% point: nine chances in ten that the truth is above the low end, nine in ten that it is below the high end. The sign ± is kept for the limit of an instrument.';

export const sourcesHeading = 'Sources';
export const sourcesSay =
  'Where the figures and the formulas come from, and how we know what each source says. A figure that rests on habit alone says so.';

export const known: Readonly<Record<Known, string>> = {
  read: 'read in the work named',
  'second-hand': 'read in another work that carries it',
  computed: 'worked out from a read equation',
  memory: 'from memory, still to be checked',
  'common practice': 'common practice',
};

/** Behind a source in the margin, where it was not read. */
export const knownShort: Readonly<Partial<Record<Known, string>>> = {
  'second-hand': 'second-hand',
  memory: 'from memory',
};
