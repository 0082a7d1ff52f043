import type { Source } from '../sources.ts';

/** Works on uncertainty, with what is known of them. */
export const confidenceWorks = {
  uncertaintyGuide: {
    citation:
      'JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in measurement (GUM 1995 with minor corrections). Clause and table numbers read in works that carry its examples.',
    known: 'second-hand',
  },
  monteCarlo: {
    citation:
      'JCGM 101:2008, Supplement 1 to the GUM: propagation of distributions using a Monte Carlo method. Its examples of clause 9 from memory, worked out again.',
    known: 'memory',
  },
  conformity: {
    citation:
      'JCGM 106:2012, Evaluation of measurement data: The role of measurement uncertainty in conformity assessment. Its example of 7.3 from memory, worked out again.',
    known: 'memory',
  },
} as const satisfies Record<string, Omit<Source, 'label'>>;
