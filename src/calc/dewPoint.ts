import { iceKelvin, massRatio } from './constants.ts';
import { factor, factorSlope } from './enhancement.ts';
import { within } from './errors.ts';
import { limits } from './limits.ts';
import { logCurve, logCurveSlope, triplePoint } from './saturation.ts';

const floor = limits.dewPoint[0];
const vaporAtFloor = Math.exp(logCurve(floor));

/** Magnus formula turned round, °C, over liquid and over ice: within 0.05 K from −40 to 50 °C, for water in air. */
export function dewPointGuess(pw: number): number {
  const x = Math.log(pw / 613.7);
  return x > 0 ? (243.04 * x) / (17.625 - x) : (272.62 * x) / (22.46 - x);
}

/** d(ln p)/dt of the Magnus formula, 1/K. */
export function magnusSlope(t: number): number {
  const shifted = t > 0 ? 243.04 + t : 272.62 + t;
  return (t > 0 ? 4283.58 : 6123.045) / (shifted * shifted);
}

/**
 * Dew point, °C, of air with the partial pressure `pw` of water: ln(f·p_ws(t_d)) = ln p_w. Newton's step with its next
 * term (the slope falls nearly as 1/T²) leaves under 1e-4 of its square, so that one is mostly
 * enough, unless it goes over the bend at 0.01 °C.
 */
export function dewPointAt(pw: number, p: number): number {
  if (pw <= vaporAtFloor * factor(floor, p)) return floor;
  let t = dewPointGuess(pw);
  for (let i = 0; i < 12; i++) {
    const f = factor(t, p);
    const newton = (Math.log(pw / f) - logCurve(t)) / (logCurveSlope(t) + factorSlope(t, p) / f);
    const next = t + newton + (newton * newton * (t < triplePoint ? 1 : 1.13)) / (t + iceKelvin);
    const bent = t < triplePoint !== next < triplePoint;
    t = next;
    if (Math.abs(newton) < 0.05 && !bent) break;
  }
  return t;
}

/**
 * Dew point, °C, from humidity ratio (kg/kg dry air) and pressure (Pa); below 0.01 °C it is the frost point.
 * ASHRAE Fundamentals ch. 1, Eq. 36 with the enhancement factor. −100 °C stands for it when there is less water than that.
 */
export function dewPoint(humidityRatio: number, pressure: number): number {
  within('humidityRatio', humidityRatio, limits.humidityRatio);
  within('pressure', pressure, limits.pressure);
  return dewPointAt((pressure * humidityRatio) / (massRatio + humidityRatio), pressure);
}
