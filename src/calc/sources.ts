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
  standardAir: {
    label: 'standard air',
    citation: '10 CFR 430 subpart B appendix M1, definitions: standard air is dry air of 0.075 lb/ft³, 1.2014 kg/m³.',
    known: 'read',
  },
  coilModel: {
    label: 'EnergyPlus, DX coil',
    citation:
      'EnergyPlus Engineering Reference, single-speed electric DX air cooling coil: apparatus dew point, bypass factor and its change with airflow. Net capacity is gross capacity less blower heat.',
    known: 'read',
  },
  flowCurve: {
    label: 'published flow curve',
    citation:
      'EnergyPlus example cooling coils, as carried in an open building-model library: capacity over 0.8 + 0.2 of the air mass flow ratio. Six curves of NREL/TP-5500-56354 (2013) run from 0.7 % below it to 0.6 % above it at 80 % flow; one regression of laboratory faults (NREL/SR-5500-65030) has 10 % less there.',
    known: 'read',
  },
  blowerDefault: {
    label: 'coil-only default',
    citation:
      'EnergyPlus Engineering Reference: 773.3 W per m³/s of air (365 W per 1000 scfm) where the blower is not known, credited there to AHRI 210/240 and 340/360.',
    known: 'read',
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
