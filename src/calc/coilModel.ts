import { type Apparatus, apparatus } from './apparatus.ts';
import { heatDryAir, heatVapor, vaporEnthalpy } from './constants.ts';
import { enthalpyAt, ratioOfEnthalpy } from './enthalpy.ts';
import { saturatedRatio, saturationTemperature } from './saturatedAir.ts';
import type { MoistAir } from './types.ts';
import { ratioOfWetBulb } from './wetBulb.ts';

/** What of a state of moist air the coil model looks at. */
export type CoilAir = Pick<MoistAir, 'dryBulb' | 'wetBulb' | 'humidityRatio' | 'enthalpy' | 'pressure'>;

/** Air of this dry bulb and wet bulb, °C, and pressure, Pa; `null` where there is none. A state without what no coil asks for. */
export function coilAir(dryBulb: number, wetBulb: number, pressure: number): CoilAir | null {
  if (!(wetBulb <= dryBulb)) return null;
  const humidityRatio = ratioOfWetBulb(dryBulb, wetBulb, pressure);
  if (!(humidityRatio >= 0)) return null;
  return { dryBulb, wetBulb, humidityRatio, enthalpy: enthalpyAt(dryBulb, humidityRatio), pressure };
}

/** What a coil makes of an air stream: total without blower heat, W; dry-air flow, kg/s. */
export interface CoilDuty {
  readonly entering: CoilAir;
  readonly dryAirFlow: number;
  readonly total: number;
}

export interface LeavingAir {
  readonly apparatusDewPoint: number;
  readonly dryBulb: number;
  readonly humidityRatio: number;
  readonly sensible: number;
}

/**
 * Apparatus dew point and bypass factor of a rating, from its total and sensible capacity without blower heat; `null` for a
 * dry coil or a rating whose line does not meet saturation. EnergyPlus Engineering Reference, single-speed DX coil.
 */
export function ratedApparatus(duty: CoilDuty, sensible: number): Apparatus | null {
  const { entering, dryAirFlow, total } = duty;
  const water = (total - sensible) / (dryAirFlow * (vaporEnthalpy + heatVapor * entering.dryBulb));
  const leavingHumidityRatio = entering.humidityRatio - water;
  return apparatus({
    enteringDryBulb: entering.dryBulb,
    enteringHumidityRatio: entering.humidityRatio,
    leavingDryBulb: entering.dryBulb - sensible / (dryAirFlow * (heatDryAir + heatVapor * leavingHumidityRatio)),
    leavingHumidityRatio,
    pressure: entering.pressure,
  });
}

/** Bypass factor of the same coil at another airflow: b = exp(−A₀/ṁ), so ln b goes with one over the flow. Same source. */
export function bypassAtFlow(bypassFactor: number, flowRatio: number): number {
  return bypassFactor ** (1 / flowRatio);
}

/**
 * The air that leaves a coil of a known bypass factor and total: the surface has the enthalpy h₁ − (Q/ṁ)/(1 − b). Where that
 * surface would be damper than the air the coil is dry, and all is sensible. `null` where no such surface exists. Same source.
 */
export function leavingAir({ entering, dryAirFlow, total }: CoilDuty, bypassFactor: number): LeavingAir | null {
  const { dryBulb: t1, humidityRatio: W1, enthalpy: h1, pressure } = entering;
  const contact = h1 - total / dryAirFlow / (1 - bypassFactor);
  const surface = saturationTemperature(contact, pressure, entering.wetBulb);
  if (surface === null) return null;
  const h2 = h1 - total / dryAirFlow;
  if (saturatedRatio(surface, pressure) >= W1) {
    const dryBulb = t1 - total / (dryAirFlow * (heatDryAir + heatVapor * W1));
    return { apparatusDewPoint: surface, dryBulb, humidityRatio: W1, sensible: total };
  }
  const dryBulb = surface + bypassFactor * (t1 - surface);
  const humidityRatio = ratioOfEnthalpy(dryBulb, h2);
  const sensible = dryAirFlow * (enthalpyAt(t1, humidityRatio) - h2);
  return { apparatusDewPoint: surface, dryBulb, humidityRatio, sensible };
}
