import {
  heatDryAir,
  heatIce,
  heatVapor,
  heatWater,
  massRatio,
  sublimationEnthalpy,
  vaporEnthalpy,
} from './constants.ts';
import { dewPointGuess, magnusSlope } from './dewPoint.ts';
import { factor, factorSlope } from './enhancement.ts';
import { CalcError, within } from './errors.ts';
import { ratioAt, rounding, saturatedVapor, vaporPressureAt } from './humidityRatio.ts';
import { limits } from './limits.ts';
import { logCurve, logCurveSlope, triplePoint } from './saturation.ts';

/** Eq. 33 (liquid on the bulb) and 35 (ice) are one equation with two pairs of figures. */
interface Bulb {
  readonly latent: number;
  readonly heat: number;
}
const liquid: Bulb = { latent: vaporEnthalpy, heat: heatWater };
const ice: Bulb = { latent: sublimationEnthalpy, heat: heatIce };

const vaporAtZero = Math.exp(logCurve(0));

/** Humidity ratio of air at t whose wet bulb, saturated with the vapour pressure `pws`, is at tw. */
function ratioOfBulb(bulb: Bulb, t: number, tw: number, pws: number, p: number): number {
  const { latent, heat } = bulb;
  return (
    ((latent - (heat - heatVapor) * tw) * ratioAt(pws, p) - heatDryAir * (t - tw)) /
    (latent + heatVapor * t - heat * tw)
  );
}

/**
 * Newton on Eq. 33 or 35, multiplied out so that it has no pole where water boils: rising all the way, and nearly always
 * convex. The bracket only catches what rounding and far corners do.
 */
function solve(bulb: Bulb, t: number, W: number, p: number, from: number, to: number, guess: number): number {
  const { latent, heat } = bulb;
  const less = heat - heatVapor;
  let low = from;
  let high = to;
  let tw = guess > low && guess < high ? guess : high;
  for (let i = 0; i < 60; i++) {
    const f = factor(tw, p);
    const pws = f * Math.exp(logCurve(tw));
    const rise = pws * (logCurveSlope(tw) + factorSlope(tw, p) / f);
    const needed = heatDryAir * (t - tw) + W * (latent + heatVapor * t - heat * tw);
    const gap = massRatio * pws * (latent - less * tw) - (p - pws) * needed;
    const slope =
      massRatio * (rise * (latent - less * tw) - pws * less) + rise * needed + (p - pws) * (heatDryAir + W * heat);
    if (gap > 0) high = tw;
    else low = tw;
    let next = tw - gap / slope;
    if (next > high) next = high;
    else if (!(next >= low)) next = (low + high) / 2;
    const step = next - tw;
    const bent = tw < triplePoint !== next < triplePoint;
    tw = next;
    // What is left after a step is under a twentieth of its square, unless the step went over the bend at 0.01 °C.
    if (step < 1e-3 && step > -1e-3 && !bent) break;
  }
  return tw;
}

/** Wet bulb without a check of its arguments. */
export function wetBulbAt(t: number, W: number, p: number): number {
  // The liquid branch begins at 0 °C with this humidity ratio; the ice branch ends there with a higher one.
  if (t >= 0 && W >= ratioOfBulb(liquid, t, 0, factor(0, p) * vaporAtZero, p)) {
    return solve(liquid, t, W, p, 0, t, wetBulbGuess(t, W, p));
  }
  return solve(ice, t, W, p, limits.dewPoint[0], Math.min(t, 0), wetBulbGuess(t, W, p));
}

/**
 * Where the psychrometric line meets the saturation curve, the curve taken as a parabola that leaves the dew point with
 * the slope and bend of the Magnus formula. Within 0.1 K in rooms, from 20 °C and 30 % on. 6.5e-4/K is the psychrometer coefficient of Eq. 33.
 */
export function wetBulbGuess(t: number, W: number, p: number): number {
  const pw = vaporPressureAt(W, p);
  const dew = dewPointGuess(pw);
  const depression = t - dew;
  const rate = magnusSlope(dew);
  const line = 6.5e-4 * p;
  const slope = line + pw * rate;
  const bend = pw * rate * rate * (0.45 + 0.004 * depression);
  return dew + (2 * line * depression) / (slope + Math.sqrt(slope * slope + 4 * bend * line * depression));
}

/**
 * Thermodynamic wet bulb, °C, from dry bulb (°C), humidity ratio (kg/kg dry air) and pressure (Pa): liquid from 0 °C on,
 * ice below. ASHRAE Fundamentals ch. 1, Eq. 33 and 35, to 1e-6 K. At 0 °C the two do not meet, and two wet bulbs fit one
 * humidity ratio: the liquid one is given.
 */
export function wetBulb(dryBulb: number, humidityRatio: number, pressure: number): number {
  within('dryBulb', dryBulb, limits.dryBulb);
  within('humidityRatio', humidityRatio, limits.humidityRatio);
  within('pressure', pressure, limits.pressure);
  const most = saturatedVapor(dryBulb, pressure);
  if (vaporPressureAt(humidityRatio, pressure) > most * (1 + rounding)) {
    throw new CalcError('aboveSaturation', 'humidityRatio', humidityRatio, 0, ratioAt(most, pressure));
  }
  return wetBulbAt(dryBulb, humidityRatio, pressure);
}

/**
 * Humidity ratio, kg/kg dry air, from dry bulb and wet bulb (°C) and pressure (Pa). ASHRAE Fundamentals ch. 1, Eq. 33
 * (wet bulb from 0 °C on) and 35 (below), with the enhancement factor in the saturated humidity ratio.
 */
export function humidityRatioFromWetBulb(dryBulb: number, wetBulb: number, pressure: number): number {
  within('dryBulb', dryBulb, limits.dryBulb);
  within('wetBulb', wetBulb, limits.wetBulb);
  within('pressure', pressure, limits.pressure);
  return checkedRatioOfWetBulb(dryBulb, wetBulb, pressure);
}

/** As above without any check: below zero where no air has such a wet bulb. */
export function ratioOfWetBulb(t: number, tw: number, p: number): number {
  return ratioOfBulb(tw < 0 ? ice : liquid, t, tw, saturatedVapor(tw, p), p);
}

/** As above, for arguments that are known to be in range. */
export function checkedRatioOfWetBulb(t: number, tw: number, p: number): number {
  if (tw > t) throw new CalcError('wetBulbAboveDryBulb', 'wetBulb', tw, wetBulbAt(t, 0, p), t);
  const pws = saturatedVapor(tw, p);
  const W = ratioOfBulb(tw < 0 ? ice : liquid, t, tw, pws, p);
  if (pws >= p || W > limits.humidityRatio[1]) {
    throw new CalcError('beyondEquations', 'wetBulb', tw, wetBulbAt(t, 0, p), wetBulbAt(t, limits.humidityRatio[1], p));
  }
  if (W < -rounding) throw new CalcError('wetBulbTooLow', 'wetBulb', tw, wetBulbAt(t, 0, p), t);
  return Math.max(0, W);
}
