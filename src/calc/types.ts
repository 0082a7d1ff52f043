/**
 * The shapes that the calculation package takes and returns: SI, plain data only, so that `structuredClone` and JSON keep
 * every value whole. Temperatures in °C, pressures in Pa, humidity ratios in kg/kg dry air, enthalpies in J/kg dry air,
 * volume flows in m³/s, mass flows in kg/s of dry air, powers in W; fractions, never percent. `null` is a value not given.
 */
import type { Basis } from './ratingTypes.ts';

export type * from './assessmentTypes.ts';
export type * from './confidenceTypes.ts';
export type * from './expectationTypes.ts';
export type * from './ratingTypes.ts';
export type * from './testTypes.ts';
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
