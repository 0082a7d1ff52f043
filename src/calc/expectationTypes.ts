/** What a system should make here and now, step by step. SI, plain data. */
import type { Axis, Basis } from './ratingTypes.ts';
import type { SourceKey } from './sources.ts';

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
