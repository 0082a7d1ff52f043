/** Words of the page of checks. */
import type { Known } from '../../calc/sources.ts';

export const title = 'Checks';
export const description =
  'Every figure from outside that the calculations of this site are held to, beside our own: difference, tolerance, source.';

export const summary = (total: string, subjects: number) =>
  `${total} figures from outside on ${subjects} subjects, each beside what this site makes of it. The tests of the site run the same lists, and this page worked them out when it was built.`;
export const how = [
  'No figure in the column “there” was worked out by the code that it checks. A tolerance is the rounding of the source, or wider with its reason.',
  '“Used” is the difference as a share of what is allowed. Above 100\u00a0% a test of this site fails.',
];

export const totalsHeading = 'How many, and how known';
export const totals = { known: 'How it is known', count: 'Figures', all: 'All together', within: 'Within tolerance' };

export const subjectsHeading = 'Figure by figure';
export const countOf = (count: number) => (count === 1 ? '1 figure' : `${count} figures`);
export const farthest = (share: string) => `farthest off: ${share} of what is allowed`;

export const columns = {
  figure: 'Figure',
  there: 'There',
  here: 'Here',
  difference: 'Difference',
  allowed: 'Allowed',
  used: 'Used',
  unit: 'Unit',
  wider: 'A wider tolerance',
};

export const leftOutHeading = 'Looked at and not tested against';
export const leftOutSay = (count: number) =>
  `${count} published figures have no counterpart here, or one that we do not hold ourselves to. Each has its reason.`;
export const leftOutColumns = { what: 'Figure', source: 'Source', why: 'Why' };

/** How a figure is known; a source alone cannot tell that it was converted or worked out again. */
export const knownAs: Readonly<Record<Known | 'read, converted' | 'memory, recomputed', string>> = {
  read: 'read',
  'read, converted': 'read, units converted',
  'second-hand': 'read in another work',
  computed: 'worked out elsewhere',
  memory: 'from memory',
  'memory, recomputed': 'from memory, worked out again by hand',
  'common practice': 'common practice',
};

/** What each list is about. */
export const subjects = {
  saturation: 'Saturation pressure',
  enhancement: 'Enhancement factor of real air',
  handbookTables: 'Tables of the handbook',
  handbookExamples: 'Worked examples of the handbook',
  realGas: 'Real air, all states at once',
  realGasStates: 'Real air, state by state',
  otherStates: 'Moist air from other sources',
  atmosphere: 'Standard atmosphere',
  factors: 'Factors 4.5, 1.08, 0.68',
  coil: 'Coil: loads, apparatus dew point, drying out',
  airflow: 'Finding the airflow',
  airflowCurve: 'Capacity at another airflow',
  coolingCurves: 'Published cooling curves',
  otherModels: 'Cooling curves of other models',
  thinAir: 'Thin air',
  ducts: 'Ducts',
  processes: 'Worked examples, typed into the air chart',
  goldenJobs: 'Three whole jobs',
  refrigerants: 'Refrigerants',
  lines: 'Refrigerant lines',
  commonPractice: 'What the trade says of supply air',
  uncertainty: 'Guides to uncertainty',
  faults: 'What faults cost',
  capacityExample: 'A worked uncertainty of capacity',
} as const;
