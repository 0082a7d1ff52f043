import type { Source } from './sources.ts';

/** Works that only the articles rest on: no step and no figure of a worksheet names them, so no worksheet carries their labels. */
export const articleWorks = {
  laboratoryMethod: {
    label: '10 CFR 430, appendix M1',
    citation:
      '10 CFR 430 subpart B appendix M1: 30 minutes of running in equilibrium and 30 of readings (3.3), at least nine dry-bulb sensors over the plane (2.5.5) that differ by 1.5 °F at most behind the coil (3.1.8), relative humidity to 0.7 % (2.5.6), two methods that agree within 6 % (3.1), 400 scfm for 12,000 Btu/h where no airflow is certified (3.1.4.1.1), no correction for drift.',
    known: 'read',
  },
  austinSystems: {
    label: 'seventeen systems in Austin',
    citation:
      'Operational characteristics of residential and light-commercial air-conditioning systems in a hot and humid climate zone, Building and Environment 46 (2011): airflow outside the makers’ range on almost all of 17 systems, measured capacity below two thirds of the rated one on average. Read in the abstract; the journal from memory.',
    known: 'read',
  },
  floridaAirflow: {
    label: 'FSEC-PF-321-97',
    citation:
      'Florida Solar Energy Center, FSEC-PF-321-97: airflow of 27 systems in the field, mean 320 cfm a ton, from 130 to 510. Read in the abstract.',
    known: 'read',
  },
  californiaPerTon: {
    label: 'California RA3.3, table 1',
    citation:
      'California Energy Commission, 2008 Reference Appendices, Residential, table RA3.3-1: 350 cfm a ton for the design, at least 300 for a valid test of the charge; 0.58 W/cfm for the blower.',
    known: 'read',
  },
  airflowRange: {
    label: 'EnergyPlus, airflow range',
    citation:
      'EnergyPlus Engineering Reference, single-speed electric DX air cooling coil: airflow of a rated coil between 300 and 450 cfm a ton; a warning at work below 200 and above 500.',
    known: 'read',
  },
  californiaProbes: {
    label: 'California RA3.2.2.4',
    citation:
      'California Energy Commission, 2008 Reference Appendices, Residential, RA3.2.2.4.1: both temperature channels in an ice bath within 1 °F of 32 °F, the sensors exchanged and the bath repeated; RA3.2.2: the return sensors go in after 12 minutes.',
    known: 'read',
  },
  fieldAccuracy: {
    label: 'airflow in the field, 2019',
    citation:
      'T. Lipscomb, B. Jacobs, Airflow testing accuracy in the field (2019): in the field airflow is good to 3 to 20 %, the least accurate of what is read.',
    known: 'read',
  },
  coilWetting: {
    label: 'wetting of a dry coil',
    citation:
      'H. I. Henderson, K. Rengarajan (1996), as the EnergyPlus Engineering Reference carries it: a dry coil holds the first water; what runs off lags behind what condenses, and keeps running after.',
    known: 'read',
  },
  heatingConditions: {
    label: 'heating tests H1 to H4',
    citation:
      '10 CFR 430 subpart B appendix M1, heating tests: 70 °F indoors, 47, 35, 17 and 5 °F outdoors. Read in an open library that carries them.',
    known: 'second-hand',
  },
  fieldStandard: {
    label: 'ASHRAE 221, scope',
    citation:
      'ANSI/ASHRAE Standard 221-2020, test method to field-measure the cooling and heating performance of an installed unitary system. Read in its scope; no figure here is taken from it.',
    known: 'read',
  },
  commissioningChecklist: {
    label: 'ENERGY STAR, commissioning',
    citation:
      'ENERGY STAR HVAC commissioning checklist, revision 11: contractor, charge, airflow, balance; the checklist is no guarantee of performance. Read where a national laboratory carries it.',
    known: 'second-hand',
  },
  velocityAtGrilles: {
    label: 'UFGS 15951N, meters',
    citation:
      'UFGS 15951N, testing industrial ventilation systems: a velocity meter estimates a flow and does not replace the readings of a Pitot tube.',
    known: 'read',
  },
} as const satisfies Record<string, Source>;
