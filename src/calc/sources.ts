/**
 * The one bibliography. Steps of working, derates, checks and articles name their source by key, and the compiler holds
 * that every key exists. `known` says how we know what the source says: read in it, read in another work that carries
 * it, worked out from a read equation, recalled, or a habit of the trade for which no source is claimed.
 */
export type Known = 'read' | 'second-hand' | 'computed' | 'memory' | 'common practice';

export interface Source {
  readonly label: string;
  readonly citation: string;
  readonly known: Known;
}

export const sources = {
  handbookPsychrometrics: {
    label: 'ASHRAE Fundamentals, ch. 1',
    citation: '2021 ASHRAE Handbook: Fundamentals (SI), chapter 1, Psychrometrics. Equations 1 to 43, tables 1 to 3.',
    known: 'read',
  },
  handbookLoads: {
    label: 'ASHRAE Fundamentals, ch. 18',
    citation: '2021 ASHRAE Handbook: Fundamentals (SI), chapter 18, heat gain calculations using standard air values.',
    known: 'read',
  },
  realGas: {
    label: 'RP-1485',
    citation:
      'S. Herrmann, H.-J. Kretzschmar, D. P. Gatley, Thermodynamic properties of real moist air, HVAC&R Research 15(5), 961–986 (2009), as computed by CoolProp.',
    known: 'computed',
  },
  airEnthalpyMethod: {
    label: 'ASHRAE 37, 7.3.3',
    citation:
      'ANSI/ASHRAE Standard 37-2009, Methods of testing for rating electrically driven unitary air-conditioning and heat-pump equipment, section 7.3.3, indoor air-enthalpy method. Section numbers read in 10 CFR 430 appendix M1; the form of the equations from memory.',
    known: 'memory',
  },
  makersTable: {
    label: 'the maker’s table',
    citation: 'The expanded ratings of the equipment at hand, as typed from its data sheet.',
    known: 'read',
  },
  definition: {
    label: 'definition',
    citation: 'Follows from the definitions of the quantities.',
    known: 'computed',
  },
  commonPractice: {
    label: 'common practice, no source',
    citation: 'A habit of the trade. No source is claimed for it; local codes and the maker’s instructions outrank it.',
    known: 'common practice',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
