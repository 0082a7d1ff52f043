import { massRatio } from './constants.ts';
import { factor, factorSlope } from './enhancement.ts';
import { within } from './errors.ts';
import { limits } from './limits.ts';
import { logCurve, logCurveSlope } from './saturation.ts';

const floor = limits.dewPoint[0];
const vaporAtFloor = Math.exp(logCurve(floor));

/** Magnus formula turned round, °C: within a few hundredths of a kelvin where it matters. Over liquid and over ice. */
export function dewPointGuess(pw: number): number {
  const x = Math.log(pw / 613.7);
  return x > 0 ? (243.04 * x) / (17.625 - x) : (272.62 * x) / (22.46 - x);
}

/** Dew point, °C, of air with the partial pressure `pw` of water: f·p_ws(t_d) = p_w by Newton on the logarithms. */
export function dewPointAt(pw: number, p: number): number {
  if (pw <= vaporAtFloor * factor(floor, p)) return floor;
  let t = dewPointGuess(pw);
  for (let i = 0; i < 12; i++) {
    const f = factor(t, p);
    const step = (Math.log(pw / f) - logCurve(t)) / (logCurveSlope(t) + factorSlope(t, p) / f);
    t += step;
    if (step < 1e-4 && step > -1e-4) break;
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
