import { footPerMinute, inch, inchOfWater } from '../units.ts';

/** What the ways of finding an airflow accept, SI: wide enough for every duct of a house or shop, narrow enough for a slip of the pen. */
export const airflowLimits = {
  /** Zero and less are no velocity: a tube turned round, a blocked hole, air that comes back. */
  velocityPressure: [1e-3, 3000],
  velocity: [0.01, 70],
  /** Of a duct or a grille, m. */
  side: [0.02, 10],
  /** Without its sign, Pa. */
  staticPressure: [0, 5000],
  /** A pressure that another is divided by, Pa. */
  planePressure: [0.1, 5000],
  specificVolume: [0.1, 20],
  density: [0.05, 10],
  voltage: [10, 1000],
  current: [0.1, 2000],
  powerFactor: [0.1, 1],
  heat: [10, 1e6],
  efficiency: [0.3, 1],
  heatingValue: [1e6, 3e8],
  gasVolume: [1e-4, 100],
  time: [1, 86400],
  /** K: less than this is lost in the probes. */
  temperatureRise: [0.5, 80],
  areaFactor: [0.05, 1.5],
  /** Relative half-width of a gauge's error. */
  gaugeLimit: [0, 0.5],
  /** K. */
  probeLimit: [0, 10],
} as const satisfies Record<string, readonly [number, number]>;

/** The marks that the written practice of measuring sets, each with its source beside its use. */
export const practice = {
  /** Straight duct before a traverse, in duct diameters, behind a fan and behind anything else (`fieldTraverse`). */
  straightAfterFan: 5,
  straightAfterOther: 7.5,
  /** A reading taken again may differ by this share (`fieldTraverse`). */
  repeat: 0.1,
  /** Below this a Pitot tube sees too little, m/s (`fieldTraverse`). */
  pitotVelocity: 600 * footPerMinute,
  /** Three quarters of the velocity pressures exceed a tenth of the greatest (`traverseRules`). */
  acceptShare: 0.75,
  acceptPressure: 0.1,
  /** External static pressure that costs a blower its life, Pa (`highStatic`). */
  highStatic: 0.8 * inchOfWater,
  /** Where a constant-airflow motor usually holds its airflow, Pa (common practice). */
  plateau: [0.1 * inchOfWater, 1 * inchOfWater],
  /** Sides at which the rule goes from five lines to six and to seven, m (`traverseRules`). */
  sixLinesFrom: 30 * inch,
  sevenLinesAbove: 36 * inch,
  /** Diameter up to which six points do, m (common practice). */
  sixPointsUpTo: 10 * inch,
  /** Airflow for which machines may be rated, and at work before a model warns, cubic feet a minute per ton (`coilModel`). */
  ratedPerTon: [300, 450],
  workingPerTon: [200, 500],
} as const;
