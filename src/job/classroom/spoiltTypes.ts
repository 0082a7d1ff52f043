/** A test that was spoilt, as data. The words stand in `words/en/spoilt.ts`. */
import type { Kind } from '../../calc/types.ts';

export const mistakes = [
  'lowStage',
  'bypassOpen',
  'probeSeesCoil',
  'wetProbe',
  'seaLevelPressure',
  'grossRow',
  'demandedAirflow',
  'furnaceTap',
] as const;
export type Mistake = (typeof mistakes)[number];

/** What the tester wrote down, always the same things: what is missing gives nothing away. */
export type FactName =
  | 'altitude'
  | 'pressureUsed'
  | 'outdoors'
  | 'returnDryBulb'
  | 'returnHumidity'
  | 'returnAtUnit'
  | 'supplyDryBulb'
  | 'supplySecond'
  | 'supplyThird'
  | 'supplyHumidity'
  | 'airflowUsed'
  | 'airflowFanTable'
  | 'staticAtAirflow'
  | 'staticCooling'
  | 'waterCaught'
  | 'power'
  | 'powerInTable'
  | 'certified'
  | 'tableAtRating';

export interface Fact {
  readonly name: FactName;
  readonly kind: Kind;
  readonly value: number;
}

/** Measured and expected, net, W, and the one over the other. */
export interface Worked {
  readonly measured: number;
  readonly expected: number;
  readonly share: number;
}

export interface SpoiltTest {
  /** `null`: a sound test, which has to be told from the others. */
  readonly mistake: Mistake | null;
  readonly facts: readonly Fact[];
  /** What the tester made of the facts. */
  readonly worked: Worked;
  /** Water that the worked result would take out, kg/s: held against what was caught. */
  readonly water: number;
  /** What it comes to without the mistake; `null` where the test has to be made again. */
  readonly without: Worked | null;
  /** Which facts give it away. */
  readonly giveaways: readonly FactName[];
}
