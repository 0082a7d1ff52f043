/**
 * The shapes that the calculation package takes and returns: SI, plain data only, so that `structuredClone` and JSON keep
 * every value whole. Temperatures in °C, pressures in Pa, humidity ratios in kg/kg dry air, enthalpies in J/kg dry air,
 * volume flows in m³/s, mass flows in kg/s of dry air, powers in W; fractions, never percent. `null` is a value not given.
 */
import type { ErrorSource, SideBySide, TestInput } from './confidenceTypes.ts';
import type { LineSetInput } from './lineSetTypes.ts';
import type { SourceKey } from './sources.ts';

export type * from './assessmentTypes.ts';
export type * from './confidenceTypes.ts';
export type * from './workingTypes.ts';

/** A state of moist air. The wet bulb is the thermodynamic one; `density` is of the moist air, kg/m³. */
export interface MoistAir {
  readonly dryBulb: number;
  readonly wetBulb: number;
  readonly dewPoint: number;
  readonly relativeHumidity: number;
  readonly humidityRatio: number;
  readonly enthalpy: number;
  readonly specificVolume: number;
  readonly density: number;
  readonly pressure: number;
  readonly vaporPressure: number;
}

/** Net: the blower's heat is taken off. Gross: what the coil alone does. */
export type Basis = 'net' | 'gross';
export type Axis = 'outdoorDryBulb' | 'enteringWetBulb' | 'enteringDryBulb' | 'dryAirFlow';

/** One printed line of a rating table. A missing figure is `null`; an axis that is not stated is left out. */
export interface RatingRow {
  readonly outdoorDryBulb: number;
  readonly enteringWetBulb: number;
  readonly enteringDryBulb?: number;
  readonly dryAirFlow?: number;
  readonly total: number | null;
  readonly sensible?: number | null;
  readonly power?: number | null;
  /** How far the source itself may be out here: relative half-width. */
  readonly band?: number | null;
}

/** Capacities on a rectilinear grid. */
export interface RatingTable {
  readonly from: 'table' | 'generic';
  readonly basis: Basis;
  /** Blower power inside the rating, W. */
  readonly blowerPower: number;
  /** Ascending. One value: stated, not varied. None: not stated. */
  readonly axes: Readonly<Record<Axis, readonly number[]>>;
  /** Row-major in the order of `Axis` (dry-air flow varies fastest); `null` is a hole in the printed table. */
  readonly total: readonly (number | null)[];
  readonly sensible: readonly (number | null)[] | null;
  readonly power: readonly (number | null)[] | null;
  /** Relative half-width of the total that the source itself admits at each point; `null` for a maker's table. */
  readonly band: readonly (number | null)[] | null;
  /** The same of the sensible share, one for the whole table; 0 for a maker's table. */
  readonly sensibleBand: number;
  /** The maker's own corrections of these figures. Each is applied once, as a step of its own. */
  readonly multipliers: Multipliers;
}

/** One line of a maker's airflow correction: factors on the printed figures at this dry-air flow, kg/s. */
export interface AirflowMultiplier {
  readonly dryAirFlow: number;
  readonly total: number;
  readonly sensible: number | null;
}

/** A maker's own corrections, factors on the printed figures; nothing given: an empty list, `null`. */
export interface Multipliers {
  /** Ascending in airflow. Outranks the published airflow curve. */
  readonly airflow: readonly AirflowMultiplier[];
  /** For this indoor unit, where the table is printed for another. */
  readonly indoorMatch: number | null;
  /** For this length of line set. Outranks every other figure for it. */
  readonly lineLength: number | null;
}

/** Where the table is read. Axes that the table does not vary may be left out. */
export interface RatingConditions {
  readonly outdoorDryBulb: number;
  readonly enteringWetBulb: number;
  readonly enteringDryBulb?: number;
  readonly dryAirFlow?: number;
}

/** What a table gives. `null` everywhere when the point is outside and no value beyond the table was asked for. */
export interface Rated {
  readonly total: number | null;
  readonly sensible: number | null;
  readonly power: number | null;
  /** The indices of the low and the high row of each axis that the table states. */
  readonly cell: Readonly<Partial<Record<Axis, readonly [number, number]>>>;
  /** The axes on which the point lies outside the table (or on which a hole was touched). */
  readonly outside: readonly Axis[];
}

export type BlowerPlace = 'before coil' | 'after coil' | 'outside probes';

export interface CoilLoad {
  /** Net when the blower stands between the probes, gross when it stands outside them. */
  readonly basis: Basis;
  readonly total: number;
  readonly sensible: number;
  readonly latent: number;
  readonly sensibleHeatRatio: number;
  readonly dryAirFlow: number;
  /** Water taken out, kg/s; never negative. */
  readonly condensate: number;
  /** Enthalpy carried away by the condensate, W. Not taken off `total`, because ratings do not take it off. */
  readonly condensateEnthalpy: number;
  /** Of the coil's own process, with the blower's heat taken out; `null` where the line does not meet saturation. */
  readonly apparatus: { readonly dewPoint: number; readonly bypassFactor: number } | null;
}

/**
 * The steps from the nameplate to the expectation, in their order: from the nominal to the certified capacity; read at these
 * temperatures; this indoor unit; the measured volume as if at sea level; the blower's heat inside a net rating put back; the
 * line set; the air pressure here; this system's own blower heat taken off.
 */
export type DerateCause =
  | 'certified'
  | 'temperatures'
  | 'indoorMatch'
  | 'airflow'
  | 'blowerInside'
  | 'lineSet'
  | 'altitude'
  | 'blowerHere';

/** One step from the rating to the expectation, W before and after. */
export interface Derate {
  readonly cause: DerateCause;
  /** `false`: nothing is known that this step could act on. It is listed all the same, with the factor 1. */
  readonly applies: boolean;
  readonly factor: number;
  readonly before: number;
  readonly after: number;
  /** How far the step itself may be out: relative half-width of `after`, rectangular; 0 for none. */
  readonly band: number;
  readonly source: SourceKey;
}

/** The coil as it should work here, from the sensible capacities of its rating. */
export interface CoilHere {
  /** At the airflow here. */
  readonly bypassFactor: number;
  /** The wet bulb at and below which this coil, at this dry bulb, takes out no water, °C. */
  readonly dryOutWetBulb: number;
  /** Dry: all of the total is sensible, and it moves with the dry bulb and no longer with the wet bulb. */
  readonly dry: boolean;
}

export interface Expectation {
  readonly basis: Basis;
  readonly total: number;
  readonly sensible: number | null;
  /** Relative half-width of the sensible capacity's share that its source admits. */
  readonly sensibleBand: number;
  /** `null` where the rating does not say enough. */
  readonly coil: CoilHere | null;
  readonly outside: readonly Axis[];
  readonly derates: readonly Derate[];
}

/** What stands at this site and not in the rating. */
export interface Installation {
  /** Electrical power of this system's blower, all of which ends as heat in the air, W. */
  readonly blowerPower: number;
  /** Station pressure, Pa; sea level when left out. */
  readonly pressure?: number;
  /** What the line set leaves of the capacity, with the lowest and the highest that it may be; `null` for a line as rated. */
  readonly lineSet?: LineSetFactor | null;
}

/** A factor on the gross capacity with its band. */
export interface LineSetFactor {
  readonly factor: number;
  readonly low: number;
  readonly high: number;
  readonly source: SourceKey;
}

/** What kind of machine the published curves are for, and which of its stages. They do not cover variable speed. */
export type GenericUnit = 'airConditioner' | 'heatPump';
export type GenericStage = 'one' | 'low' | 'high' | 'variable';

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
  /** What the two probes showed in one air; `null`: nobody looked. Both readings are corrected by it. */
  readonly sideBySide: SideBySide | null;
  /** Dry bulbs at the points of the supply plane whose mean is the leaving reading; none or one: it was read at one point. */
  readonly supplyPoints: readonly number[];
  /** Errors found in the readings themselves: the scatter of a log's means. */
  readonly scatter: readonly ErrorSource<TestInput>[];
  /** The chance on either side of a range: 0.9, or 0.95 for disputes. */
  readonly confidence: number;
}
