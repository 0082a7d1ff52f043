import { ratioAt, saturatedVapor } from './humidityRatio.ts';
import { limits } from './limits.ts';
import { saturatedRatio, slopeOfVapor } from './saturatedAir.ts';

/** What a coil does to the air: °C, kg/kg dry air, Pa. Blower heat is not part of it. */
export interface CoilProcess {
  readonly enteringDryBulb: number;
  readonly enteringHumidityRatio: number;
  readonly leavingDryBulb: number;
  readonly leavingHumidityRatio: number;
  readonly pressure: number;
}

export interface Apparatus {
  /** Apparatus dew point, °C: the one temperature at which a surface would act like this coil. */
  readonly dewPoint: number;
  /** The share of the air that leaves as if it had missed that surface: the dry-bulb proportion along the line. */
  readonly bypassFactor: number;
}

/** By how much rounding may lift saturated air above saturation. */
const rounding = 1e-9;
/** K. What is left after a step of Newton's is a few hundredths of its square. */
const tolerance = 1e-5;

/**
 * Where the straight line of a coil's process in (t, W) meets saturation, and the bypass factor. `null` where it does not:
 * air that is not cooled, air that leaves no drier than it entered (a dry coil), air beyond saturation on leaving, or a line
 * so steep that it passes above the saturation curve, which says that the readings do not fit together.
 *
 * Saturation is convex in t, so Newton's method from the leaving state falls on the nearest meeting point without
 * overshooting; once the curve is no steeper than the line there is none. Definition: EnergyPlus Engineering Reference,
 * single-speed DX coil, with the bypass factor by dry bulb.
 */
export function apparatus(process: CoilProcess): Apparatus | null {
  const { enteringDryBulb: t1, leavingDryBulb: t2, leavingHumidityRatio: W2, pressure: p } = process;
  const slope = (process.enteringHumidityRatio - W2) / (t1 - t2);
  if (!(t1 > t2 && slope > 0 && t2 > limits.dewPoint[0])) return null;
  if (saturatedRatio(t2, p) * (1 + rounding) < W2) return null;
  let t = t2;
  for (let i = 0; i < 60; i++) {
    const pw = saturatedVapor(t, p);
    const steeper = slopeOfVapor(pw, t, p) - slope;
    const gap = ratioAt(pw, p) - (W2 - slope * (t2 - t));
    if (Math.abs(gap) < 1e-15) break;
    if (steeper <= 0) return null;
    const step = gap / steeper;
    t -= step;
    if (t < limits.dewPoint[0]) return null;
    if (Math.abs(step) < tolerance) break;
  }
  const dewPoint = Math.min(t, t2);
  return { dewPoint, bypassFactor: (t2 - dewPoint) / (t1 - dewPoint) };
}
