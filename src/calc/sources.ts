/**
 * The one bibliography. Steps of working, derates, checks and articles name their source by key, and the compiler holds
 * that every key exists. `known` says how we know what the source says: read in it, read in another work that carries
 * it, worked out from a read equation, recalled, or a habit of the trade for which no source is claimed.
 */
import { airflowWorks } from './airflow/works.ts';
import { articleWorks } from './articleWorks.ts';
import { confidenceWorks } from './confidence/works.ts';
import { type SourceKey, sourceLabels } from './sourceLabels.ts';

export type { SourceKey };

export type Known = 'read' | 'second-hand' | 'computed' | 'memory' | 'common practice';

export interface Source {
  readonly label: string;
  readonly citation: string;
  readonly known: Known;
}

const works = {
  handbookPsychrometrics: {
    citation: '2021 ASHRAE Handbook: Fundamentals (SI), chapter 1, Psychrometrics. Equations 1 to 43, tables 1 to 3.',
    known: 'read',
  },
  handbookLoads: {
    citation: '2021 ASHRAE Handbook: Fundamentals (SI), chapter 18, heat gain calculations using standard air values.',
    known: 'read',
  },
  realGas: {
    citation:
      'S. Herrmann, H.-J. Kretzschmar, D. P. Gatley, Thermodynamic properties of real moist air, HVAC&R Research 15(5), 961–986 (2009), as computed by CoolProp.',
    known: 'computed',
  },
  enhancementForm: {
    citation:
      'A. L. Buck, New equations for computing vapor pressure and enhancement factor, Journal of Applied Meteorology 20, 1527–1532 (1981): the form f = 1 + A + p·(B + C·(t + D + E·p)²) from memory, its shorter form and his table read in works that carry them. The coefficients are our own fit to real-gas states.',
    known: 'computed',
  },
  psychrolibTests: {
    citation:
      'psychrometrics/psychrolib, tests test_psychrolib_si.py and test_psychrolib_ip.py at 3066345: tables of the 2017 ASHRAE Handbook: Fundamentals, chapter 1, and an independent spreadsheet of its equations.',
    known: 'read',
  },
  airEnthalpyMethod: {
    citation:
      'ANSI/ASHRAE Standard 37-2009, Methods of testing for rating electrically driven unitary air-conditioning and heat-pump equipment, section 7.3.3, indoor air-enthalpy method. Section numbers read in 10 CFR 430 appendix M1; the form of the equations from memory.',
    known: 'memory',
  },
  standardAir: {
    citation: '10 CFR 430 subpart B appendix M1, definitions: standard air is dry air of 0.075 lb/ft³, 1.2014 kg/m³.',
    known: 'read',
  },
  coilModel: {
    citation:
      'EnergyPlus Engineering Reference, single-speed electric DX air cooling coil: apparatus dew point, bypass factor and its change with airflow. Net capacity is gross capacity less blower heat.',
    known: 'read',
  },
  flowCurve: {
    citation:
      'EnergyPlus example cooling coils, as carried in an open building-model library: capacity over 0.8 + 0.2 of the air mass flow ratio. Six curves of NREL/TP-5500-56354 (2013) run from 0.7 % below it to 0.6 % above it at 80 % flow; one regression of laboratory faults (NREL/SR-5500-65030) has 10 % less there.',
    known: 'read',
  },
  genericCurves: {
    citation:
      'NREL/TP-5500-56354 (2013), tables 9, 10 and 14 to 19: gross capacity of residential machines by entering wet bulb, outdoor dry bulb and air mass flow, as carried by three open building-energy libraries.',
    known: 'second-hand',
  },
  sensibleDefault: {
    citation:
      'Sensible heat ratio where nobody states one, 80/67 °F in and 95 °F out: 0.73 net at 394.2 cfm a ton with 0.25 W/cfm inside (an NREL building-stock model, read) and the regression of the California Title 24 residential reference manual (0.691 at 350, 0.718 at 400 cfm a ton, gross; carried by an open library).',
    known: 'second-hand',
  },
  outdoorCoilAltitude: {
    citation:
      'Derived: the same volume at another air pressure holds mass in proportion to it (standard atmosphere; air mass flow as EnergyPlus defines it). The outdoor coil loses mass too: by the condenser airflow data of NREL/SR-5500-65030 about 2 % of the capacity at 5000 ft, known to ±2 %.',
    known: 'computed',
  },
  blowerDefault: {
    citation:
      'EnergyPlus Engineering Reference: 773.3 W per m³/s of air (365 W per 1000 scfm) where the blower is not known, credited there to AHRI 210/240 and 340/360.',
    known: 'read',
  },
  blowerSeer2: {
    citation:
      '10 CFR 430 subpart B appendix M1, equations 3.3: 441 W per 1000 scfm for ordinary coil-only ratings, 406 W for mobile homes and where space is short. Recalled; the equations were found there without their figures.',
    known: 'memory',
  },
  blowerField: {
    citation:
      'Defaults of open building-energy models (an NREL building-stock model and the RESNET blower model): in the field 0.5 W/cfm for a permanent-split motor, 0.375 for an electronically commutated one, 0.18 in ducted mini-splits; inside ratings 0.25, and 0.281 at the 0.5 in. w.c. of ratings since 2023.',
    known: 'read',
  },
  ductStandard: {
    citation:
      'ANSI/ASHRAE Standard 152, equations 6-23 and 6-25: delivery effectiveness of ducts in cooling, as carried by an open building-energy library. Of the correction for regain only its first term is used: what comes back of what was lost, 0.10 from an attic.',
    known: 'second-hand',
  },
  atticTemperatures: {
    citation:
      'ACCA Manual J, 8th edition, figure A12-14: attic temperatures at cooling design conditions, as carried by an open building-energy library.',
    known: 'second-hand',
  },
  ratingConditions: {
    citation:
      '10 CFR 430 subpart B appendix M1, cooling test A: air entering the indoor coil at 80 °F dry bulb and 67 °F wet bulb, the outdoor coil at 95 °F.',
    known: 'read',
  },
  fieldSteadiness: {
    citation:
      'California Energy Commission, 2008 Reference Appendices, Residential, RA3.2.2: 15 minutes of running before the readings, and until the return wet bulb is steady.',
    known: 'read',
  },
  refrigerantHandling: {
    citation:
      'US EPA, 40 CFR part 82 subpart F, and its questions and answers for certified technicians: certification (section 608) to attach hoses or open the circuit, no venting.',
    known: 'read',
  },
  flammableRefrigerant: {
    citation:
      'ANSI/ASHRAE Standards 34 and 15, UL 60335-2-40: class A2L burns slowly (at most 10 cm/s) and still ignites; a leak sensor stops the compressor and runs the blower. Read in trade summaries.',
    known: 'second-hand',
  },
  storedEnergy: {
    citation:
      'US OSHA, 29 CFR 1910.147 (lock, tag, release stored energy, verify) and the text of 1910.333(b)(2)(ii) in WAC 296-24-975: capacitors are discharged, and a control switch or interlock is no disconnect.',
    known: 'read',
  },
  heatStress: {
    citation:
      'US NIOSH, Protecting your workers from heat stress (poster, 2014): new workers at most 20 % of the exposure on day one and 20 % more each day; returning workers 50, 60, 80 and 100 %.',
    known: 'read',
  },
  ladders: {
    citation: 'US OSHA guidance on portable ladders, 29 CFR 1926.1053: one out for four up, 3 ft above the landing.',
    known: 'read',
  },
  backdraft: {
    citation:
      'J. B. Cummings, C. R. Withers, FSEC-CR-1666-97 (1997): backdrafting of combustion appliances among the consequences of uncontrolled airflow in buildings.',
    known: 'read',
  },
  carbonMonoxide: {
    citation:
      'Building Performance Institute, Technical Standards for the Building Analyst Professional (28 February 2005): work stops when carbon monoxide in the room is above 35 ppm; asbestos is not disturbed.',
    known: 'read',
  },
  asbestos: {
    citation:
      'US EPA, CPSC, American Lung Association, Asbestos in your home, EPA 400-K-90-100: do not cut, drill or disturb what may hold asbestos; a trained person takes the sample.',
    known: 'read',
  },
  glassFibre: {
    citation: 'US OSHA and NIOSH chemical data, fibrous glass dust: irritates eyes, skin and throat.',
    known: 'read',
  },
  mould: {
    citation:
      'US EPA, Should you have the air ducts in your home cleaned?: wet or mouldy insulated duct cannot be cleaned effectively; dry within 24 to 48 hours, and stop the water first.',
    known: 'read',
  },
  certifiedRating: {
    citation:
      'The certified capacity of this very pair at 95 °F outdoors and 80/67 °F indoors, as typed from its certificate or its data sheet.',
    known: 'read',
  },
  refrigerants: {
    citation:
      'I. H. Bell, J. Wronski, S. Quoilin, V. Lemort, Pure and pseudo-pure fluid thermophysical property evaluation and the open-source thermophysical property library CoolProp, Ind. Eng. Chem. Res. 53, 2498–2508 (2014): saturated and superheated states computed with version 8.0.0, after the equations of Lemmon (R-410A, 2003), Tillner-Roth and Yokozeki (R-32, 1997) and Kamei (R-22, 1995). R-454B as R-32 and R-1234yf, 0.689 to 0.311 by mass; its viscosities by mole-fraction mixing, an estimate within 10 %.',
    known: 'computed',
  },
  colebrook: {
    citation:
      'C. F. Colebrook, Turbulent flow in pipes, with particular reference to the transition region between the smooth and rough pipe laws, Journal of the ICE 11, 133–156 (1939), with the Darcy–Weisbach equation and 64/Re for laminar flow, as textbooks carry them; roughness of drawn tubing 1.5 µm after L. F. Moody, Trans. ASME 66, 671–684 (1944).',
    known: 'second-hand',
  },
  suctionLoss: {
    citation:
      'The density of the vapour at the compressor, at constant enthalpy: 1.8 % for each °F that the dew point falls in the suction line, for R-22, R-410A and R-32 alike. ASHRAE Handbook: Refrigeration, chapter 1, has the same for R-22 (96.8 % at 1 K; recalled, and worked out again). It holds for a fixed evaporating temperature; that a coil which re-balances keeps a quarter to a third of it is an estimate.',
    known: 'computed',
  },
  copperTube: {
    citation:
      'ASTM B280, seamless copper tube for air conditioning and refrigeration field service: outside diameters and walls, read in a table that carries them.',
    known: 'second-hand',
  },
  gasVelocity: {
    citation:
      '2010 ASHRAE Handbook: Refrigeration, chapter 1, table 1: recommended gas velocity in suction lines 4.5 to 20 m/s (900 to 4000 fpm).',
    known: 'read',
  },
  ratedLine: {
    citation:
      '10 CFR 430 subpart B appendix M1, section 2.2: 25 ft of tubing, or what the maker furnishes if that is longer, at least 10 ft of it outdoors. Read there for several indoor coils; for a single one from memory of AHRI 210/240.',
    known: 'read',
  },
  ...airflowWorks,
  ...confidenceWorks,
  makersTable: {
    citation: 'The expanded ratings of the equipment at hand, as typed from its data sheet.',
    known: 'read',
  },
  definition: {
    citation: 'Follows from the definitions of the quantities.',
    known: 'computed',
  },
  commonPractice: {
    citation: 'A habit of the trade. No source is claimed for it; local codes and the maker’s instructions outrank it.',
    known: 'common practice',
  },
} as const satisfies Record<SourceKey, Omit<Source, 'label'>>;

/** What an article may name: a source of the calculations, or one of the articles' own. */
export type AnySourceKey = SourceKey | keyof typeof articleWorks;

/** Every source with its label, citation and mark. */
export const sources = {
  ...Object.fromEntries(
    Object.entries(works).map(([key, work]) => [key, { label: sourceLabels[key as SourceKey], ...work }]),
  ),
  ...articleWorks,
} as Readonly<Record<AnySourceKey, Source>>;
