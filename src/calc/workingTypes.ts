/** What every calculation speaks in: kinds of quantity, steps of working, problems and outcomes. */
import type { SourceKey } from './sources.ts';

export type Kind =
  | 'temperature'
  | 'temperatureDifference'
  | 'pressure'
  /** Of a duct: static and velocity pressures, thousands of times smaller than the air's own. */
  | 'airPressure'
  | 'fraction'
  | 'humidityRatio'
  | 'enthalpy'
  | 'specificVolume'
  | 'volumeFlow'
  | 'massFlow'
  | 'power'
  | 'voltage'
  | 'current'
  /** Heat in a volume of fuel gas, J/m³. */
  | 'heatingValue'
  | 'length'
  /** Bores and roughness: lengths far below a metre. */
  | 'diameter'
  | 'area'
  | 'volume'
  | 'velocity'
  | 'duration'
  | 'ratio'
  | 'specificHeat'
  | 'density'
  | 'viscosity'
  | 'mass'
  | 'count';

/** One number put into, or given by, a step of working. */
export interface Amount {
  readonly symbol: string;
  readonly kind: Kind;
  readonly value: number;
}

/** One line of working: an equation in symbols only, the amounts put in (constants too), the result and its source. */
export interface Step {
  readonly id: string;
  readonly equation: string;
  readonly puts: readonly Amount[];
  readonly gives: Amount;
  readonly source: SourceKey;
}

/** The optional last argument of a calculation that a person should be able to follow. Without it nothing is built. */
export type Trace = (step: Step) => void;

/** A bad argument as plain data: what a `CalcError` says, able to cross to a worker. */
export interface Problem {
  readonly code: string;
  readonly quantity: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
}

/** A result, or what it still waits for, or why it cannot be had. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly waiting: readonly string[]; readonly problem: Problem | null };
