/** Rating tables: what is printed, what is corrected, where one is read and what it gives. SI, plain data. */

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
  readonly enteringDryBulb?: number | undefined;
  readonly dryAirFlow?: number | undefined;
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

/** What kind of machine the published curves are for, and which of its stages. They do not cover variable speed. */
export type GenericUnit = 'airConditioner' | 'heatPump';
export type GenericStage = 'one' | 'low' | 'high' | 'variable';
