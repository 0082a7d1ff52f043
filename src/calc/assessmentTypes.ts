/** Everything that can be said of a test: remarks, checks, ranges, the verdict. SI, plain data. */
import type { Budget, Improvement, Ratio, Verdict } from './confidenceTypes.ts';
import type { SourceKey } from './sources.ts';
import type { CoilLoad, Expectation, MoistAir } from './types.ts';
import type { Amount, Kind, Outcome } from './workingTypes.ts';

export interface Remark {
  readonly code: string;
  /** `stop` withholds the verdict, `doubt` asks for a look, `note` is good to know. */
  readonly weight: 'stop' | 'doubt' | 'note';
  /** The part of the test that it is about: a step of the sheet can show it there. */
  readonly about: 'entering' | 'leaving' | 'airflow' | 'outdoors' | 'rating' | 'test';
  readonly amounts: readonly Amount[];
}

/** One of the figures that should agree with the others, with the range that is usual. */
export interface Check {
  readonly code:
    | 'airflowPerCapacity'
    | 'temperatureDrop'
    | 'supplyHumidity'
    | 'condensate'
    | 'apparatusDewPoint'
    | 'bypassFactor';
  readonly kind: Kind;
  readonly value: number | null;
  readonly usual: readonly [number, number];
  readonly source: SourceKey;
}

/** The figures of a coil load that carry a range each. */
export type Ranged =
  | 'total'
  | 'sensible'
  | 'latent'
  | 'sensibleHeatRatio'
  | 'condensate'
  | 'dryAirFlow'
  | 'temperatureDrop'
  | 'supplyHumidity'
  | 'apparatusDewPoint'
  | 'bypassFactor';
/** `null` where there is no range to be had. */
export type Ranges = Readonly<Record<Ranged, Budget | null>>;

/** Everything that can be said of a test. */
export interface Assessment {
  /** Pressure that the test was worked out at, Pa. */
  readonly pressure: number;
  readonly entering: Outcome<MoistAir>;
  readonly leaving: Outcome<MoistAir>;
  readonly measured: Outcome<CoilLoad>;
  readonly expected: Outcome<Expectation>;
  readonly ratio: Outcome<Ratio>;
  readonly verdict: Outcome<Verdict>;
  /** Ranges of what was measured. */
  readonly ranges: Ranges;
  /** What would make the ratio surer, the best first; empty without a ratio. */
  readonly improvements: readonly Improvement[];
  readonly checks: readonly Check[];
  readonly remarks: readonly Remark[];
}
