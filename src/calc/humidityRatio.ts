import { massRatio } from './constants.ts';
import { dewPointAt } from './dewPoint.ts';
import { factor } from './enhancement.ts';
import { CalcError, within } from './errors.ts';
import { limits } from './limits.ts';
import { logCurve } from './saturation.ts';

/** How far rounding may carry a humidity beyond saturation (relative) or below nothing (kg/kg). */
export const rounding = 1e-9;

/** Humidity ratio of air with the partial pressure `pw` of water, Eq. 20. */
export function ratioAt(pw: number, p: number): number {
  return (massRatio * pw) / (p - pw);
}

/** Partial pressure of water in air of humidity ratio W, Pa: Eq. 20 turned round. */
export function vaporPressureAt(W: number, p: number): number {
  return (p * W) / (massRatio + W);
}

/** Partial pressure of water over a flat surface in air, f·p_ws, Pa. */
export function saturatedVapor(t: number, p: number): number {
  return factor(t, p) * Math.exp(logCurve(t));
}

/** The partial pressure at which the humidity ratio reaches the end of its range. */
export function mostVapor(p: number): number {
  return vaporPressureAt(limits.humidityRatio[1], p);
}

/**
 * Humidity ratio, kg/kg dry air, from dry bulb (°C), relative humidity (fraction) and pressure (Pa):
 * W = 0.621945·f·φ·p_ws/(p − f·φ·p_ws). ASHRAE Fundamentals ch. 1, Eq. 20 with the enhancement factor (Eq. 12).
 */
export function humidityRatio(dryBulb: number, relativeHumidity: number, pressure: number): number {
  within('dryBulb', dryBulb, limits.dryBulb);
  within('relativeHumidity', relativeHumidity, limits.relativeHumidity);
  within('pressure', pressure, limits.pressure);
  return ratioOfRelativeHumidity(relativeHumidity, saturatedVapor(dryBulb, pressure), pressure);
}

/** Humidity ratio of saturated air, kg/kg dry air, at a temperature (°C) and pressure (Pa). */
export function saturationHumidityRatio(temperature: number, pressure: number): number {
  within('temperature', temperature, limits.dewPoint);
  within('pressure', pressure, limits.pressure);
  return ratioOfTemperature('temperature', temperature, pressure);
}

/** Humidity ratio of air at the fraction `rh` of its saturated vapour `pws`. */
export function ratioOfRelativeHumidity(rh: number, pws: number, p: number): number {
  const pw = rh * pws;
  if (pw > mostVapor(p)) {
    throw new CalcError('beyondEquations', 'relativeHumidity', rh, 0, mostVapor(p) / pws);
  }
  return ratioAt(pw, p);
}

/** Humidity ratio of air saturated at t; `quantity` names the temperature in an error. */
export function ratioOfTemperature(quantity: string, t: number, p: number): number {
  const pw = saturatedVapor(t, p);
  if (pw > mostVapor(p)) {
    throw new CalcError('beyondEquations', quantity, t, limits.dewPoint[0], dewPointAt(mostVapor(p), p));
  }
  return ratioAt(pw, p);
}

/** The most water that air with the saturated vapour pressure `pws` can hold, or that the equations cover, kg/kg dry air. */
export function mostRatio(pws: number, p: number): number {
  return pws < mostVapor(p) ? ratioAt(pws, p) : limits.humidityRatio[1];
}
