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
  chargeFaults: {
    citation:
      'P. A. Domanski, H. I. Henderson, W. V. Payne, Sensitivity analysis of installation faults on heat pump performance, NIST Technical Note 1848 (2014): capacity by refrigerant charge, one heat pump. Coefficients read in two open libraries that carry them.',
    known: 'second-hand',
  },
  faultModels: {
    citation:
      'H. Cheung, J. E. Braun, fault models of NREL/SR-5500-65030: regressions of laboratory data for undercharge, outdoor airflow, liquid-line restriction and non-condensable gas, read in the open measures that carry them.',
    known: 'read',
  },
  atticDesign: {
    citation:
      'ACCA Manual J, 8th edition, figure A12-14: 130 °F in a vented attic under dark shingles, as carried by an open building-energy library. The water in that air, 0.014, is an example’s.',
    known: 'second-hand',
  },
} as const satisfies Record<string, Omit<Source, 'label'>>;
