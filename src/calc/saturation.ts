import { iceKelvin } from './constants.ts';
import { within } from './errors.ts';
import { equationRanges } from './limits.ts';

/** Where the two curves meet, °C. Switching at 0 °C instead would leave a step that no inverse can cross. */
export const triplePoint = 0.01;

/** ln of the saturation pressure in Pa at °C, without a check of its argument. */
export function logCurve(t: number): number {
  const T = t + iceKelvin;
  return t < triplePoint
    ? -5.6745359e3 / T +
        6.3925247 +
        T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) +
        4.1635019 * Math.log(T)
    : -5.8002206e3 / T +
        1.3914993 +
        T * (-4.8640239e-2 + T * (4.1764768e-5 - T * 1.4452093e-8)) +
        6.5459673 * Math.log(T);
}

/** Slope of `logCurve`, 1/K. */
export function logCurveSlope(t: number): number {
  const T = t + iceKelvin;
  return t < triplePoint
    ? (5.6745359e3 / T + 4.1635019) / T - 9.677843e-3 + T * (1.24431402e-6 + T * (6.2243475e-9 - T * 3.7936096e-12))
    : (5.8002206e3 / T + 6.5459673) / T - 4.8640239e-2 + T * (8.3529536e-5 - T * 4.3356279e-8);
}

/**
 * Saturation pressure of water, Pa, at a temperature in °C: over ice below 0.01 °C, over liquid from there on.
 * Hyland and Wexler, in ASHRAE Fundamentals ch. 1, Eq. 5 and 6 (−100 to 200 °C).
 */
export function saturationPressure(temperature: number): number {
  within('temperature', temperature, equationRanges.saturationPressure);
  return Math.exp(logCurve(temperature));
}
