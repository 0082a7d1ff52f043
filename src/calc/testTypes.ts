/** A whole test, as `assess` takes it. SI, plain data; `null` is a value not given. */
import type { ErrorSource, SideBySide, TestInput } from './confidenceTypes.ts';
import type { LineSetInput } from './lineSetTypes.ts';
import type { Basis, GenericStage, GenericUnit, Multipliers, RatingRow } from './ratingTypes.ts';
import type { BlowerPlace } from './types.ts';

/** Kinds of blower for which a power can be assumed: inside a rating, by its era, or in the field, by its motor. */
export type BlowerKind =
  | 'ratedCoilOnly'
  | 'ratedCoilOnlySeer2'
  | 'ratedMobileHomeSeer2'
  | 'ratedWithBlower'
  | 'ratedWithBlowerSeer2'
  | 'permanentSplit'
  | 'electronic'
  | 'ductedMiniSplit';

/** A probe's reading; a value not given yet is `null`. Humidity is given as relative humidity or as wet bulb. */
export interface AirReading {
  readonly dryBulb: number | null;
  readonly relativeHumidity: number | null;
  readonly wetBulb: number | null;
}

export type AirflowPlace = 'entering' | 'leaving' | 'unsure';
export type AirflowKind = 'actual' | 'standard' | 'unsure';
export type FullSpeed = 'oneSpeed' | 'highStage' | 'held' | 'unsure';

/** A whole test in SI, as `assess` takes it. The entering reading is the entering condition: it is given nowhere else. */
export interface Test {
  readonly entering: AirReading;
  readonly leaving: AirReading;
  readonly airflow: {
    readonly volumeFlow: number | null;
    readonly place: AirflowPlace;
    readonly kind: AirflowKind;
    /** Half-width as a fraction of the figure; `null`: the usual one. */
    readonly limit: number | null;
    /** The causes of error of an airflow that was found by a method worked out here; they outrank the limit. */
    readonly sources: readonly ErrorSource<'airflow'>[] | null;
  };
  /** Height above sea level, m; `null` counts as sea level. */
  readonly altitude: number | null;
  /** Station pressure from an instrument on the spot; outranks the height. */
  readonly barometer: number | null;
  readonly outdoorDryBulb: number | null;
  readonly fullSpeed: FullSpeed | null;
  readonly rating: {
    /** Only the rows that the lookup may touch; `null` totals are figures not typed yet. */
    readonly rows: readonly RatingRow[];
    readonly basis: Basis | 'unsure';
    /** `null`: not known; the rating's blower is then taken to be like this system's. */
    readonly blowerPower: number | null;
    /** What to assume it by where it is not known; `null`: nothing is known of it. */
    readonly blowerKind: BlowerKind | null;
    readonly beyond: 'refuse' | 'extend';
    /** `generic`: published curves through `certified` stand for the table, and `rows` are not read. */
    readonly from: 'table' | 'generic';
    /** Which stage of the machine a table is for, as far as it says; tests are made at full speed. */
    readonly stage: 'one' | 'high' | 'low' | null;
    /** The certified capacity of this match at 95 °F outdoors and 67 °F entering wet bulb, W. */
    readonly certified: number | null;
    /** What the published curves have to be told; only read when `from` is `generic`. */
    readonly generic: {
      readonly unit: GenericUnit;
      readonly stage: GenericStage;
      /** Of the certified rating, kg/s; `null`: what the published machines had for their capacity. */
      readonly dryAirFlow: number | null;
    } | null;
    readonly multipliers: Multipliers;
  } | null;
  /** What joins the two units; `null`: nothing known, and so as in the rating. */
  readonly lineSet: LineSetInput | null;
  readonly blower: {
    readonly place: BlowerPlace;
    readonly power: number | null;
    /** What to assume the power by where it is not known; `null`: nothing is known of the motor. */
    readonly kind: BlowerKind | null;
  };
  /** The size on the nameplate, W. */
  readonly nominalCapacity: number | null;
  /** The share of the expectation agreed on before the test, a fraction. */
  readonly line: number;
  /** Limits of each probe, half-widths of rectangular distributions. */
  readonly probeLimits: {
    readonly dryBulb: number;
    readonly relativeHumidity: number;
    readonly wetBulb: number;
  };
  /** Limits of what else was read, half-widths; `null`, and `null` in it: the usual one. */
  readonly otherLimits: {
    readonly outdoorDryBulb: number | null;
    /** Pa, whether of an instrument or of the height. */
    readonly pressure: number | null;
    /** W, of this system's own blower. */
    readonly blowerPower: number | null;
  } | null;
  /** What the two probes showed in one air; `null`: nobody looked. Both readings are corrected by it. */
  readonly sideBySide: SideBySide | null;
  /** Dry bulbs at the points of the supply plane whose mean is the leaving reading; none or one: it was read at one point. */
  readonly supplyPoints: readonly number[];
  /** Errors found in the readings themselves: the scatter of a log's means. */
  readonly scatter: readonly ErrorSource<TestInput>[];
  /** The chance on either side of a range: 0.9, or 0.95 for disputes. */
  readonly confidence: number;
}
