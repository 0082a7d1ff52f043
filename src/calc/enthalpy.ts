import { heatDryAir, heatVapor, vaporEnthalpy } from './constants.ts';
import { within } from './errors.ts';
import { limits } from './limits.ts';

/** Enthalpy, J/kg dry air, from dry bulb (°C) and humidity ratio (kg/kg dry air). ASHRAE Fundamentals ch. 1, Eq. 30. */
export function enthalpy(dryBulb: number, humidityRatio: number): number {
  within('dryBulb', dryBulb, limits.dryBulb);
  within('humidityRatio', humidityRatio, limits.humidityRatio);
  return enthalpyAt(dryBulb, humidityRatio);
}

/** Eq. 30 without a check of its arguments. */
export function enthalpyAt(t: number, W: number): number {
  return heatDryAir * t + W * (vaporEnthalpy + heatVapor * t);
}

/** Eq. 30 solved for the humidity ratio. */
export function ratioOfEnthalpy(t: number, h: number): number {
  return (h - heatDryAir * t) / (vaporEnthalpy + heatVapor * t);
}

/** Eq. 30 solved for the dry bulb, °C. */
export function dryBulbOfEnthalpy(h: number, W: number): number {
  return (h - vaporEnthalpy * W) / (heatDryAir + heatVapor * W);
}
