import { heatDryAir, heatVapor, massRatio, vaporEnthalpy } from './constants.ts';
import { factor, factorSlope } from './enhancement.ts';
import { enthalpyAt } from './enthalpy.ts';
import { ratioAt, saturatedVapor } from './humidityRatio.ts';
import { limits } from './limits.ts';
import { logCurveSlope } from './saturation.ts';

/** Humidity ratio of saturated air at t (°C) and p (Pa), without a check of its arguments. */
export function saturatedRatio(t: number, p: number): number {
  return ratioAt(saturatedVapor(t, p), p);
}

/** Its slope, 1/K, with the vapour pressure at t in Pa: Eq. 20 differentiated. */
export function slopeOfVapor(pw: number, t: number, p: number): number {
  const slope = pw * (logCurveSlope(t) + factorSlope(t, p) / factor(t, p));
  return (massRatio * p * slope) / (p - pw) ** 2;
}

/**
 * Temperature, °C, at which saturated air has the enthalpy h (J/kg dry air), looked for below `from`; `null` below the range
 * of the equations. Saturation enthalpy rises and is convex, so Newton's method from above never overshoots.
 */
export function saturationTemperature(h: number, p: number, from: number): number | null {
  let t = from;
  for (let i = 0; i < 60; i++) {
    const pw = saturatedVapor(t, p);
    const W = ratioAt(pw, p);
    const slope = heatDryAir + heatVapor * W + (vaporEnthalpy + heatVapor * t) * slopeOfVapor(pw, t, p);
    const step = (enthalpyAt(t, W) - h) / slope;
    t -= step;
    if (!(t > limits.dewPoint[0])) return null;
    if (Math.abs(step) < 1e-9) break;
  }
  return t;
}
