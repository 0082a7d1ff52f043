/** The three families whose humidity ratio falls with the dry bulb, each by its equation. */
import {
  gasConstantDryAir,
  heatDryAir,
  heatIce,
  heatVapor,
  heatWater,
  iceKelvin,
  sublimationEnthalpy,
  vaporEnthalpy,
  volumeRatio,
} from '../../calc/constants.ts';
import { dryBulbOfEnthalpy, ratioOfEnthalpy } from '../../calc/enthalpy.ts';
import { humidityRatioFromWetBulb } from '../../calc/wetBulb.ts';
import { saturated } from './frame.ts';

/** A line whose humidity ratio falls with the dry bulb, by its equation and by the same solved for the dry bulb. */
export interface Falling {
  readonly ratioAt: (dryBulb: number) => number;
  readonly dryBulbAt: (humidityRatio: number) => number;
  /** Where it meets saturation, °C, if that is known without a search. */
  readonly saturatedAt?: number;
}

/** Eq. 33 and 35 at a fixed wet bulb; solved for the dry bulb they are straight in it. */
export function wetBulbLine(tw: number, p: number): Falling {
  const [latent, heat] = tw < 0 ? [sublimationEnthalpy, heatIce] : [vaporEnthalpy, heatWater];
  const atBulb = (latent - (heat - heatVapor) * tw) * saturated({ pressure: p }, tw) + heatDryAir * tw;
  return {
    saturatedAt: tw,
    ratioAt: (t) => humidityRatioFromWetBulb(Math.max(t, tw), tw, p),
    dryBulbAt: (W) => (atBulb - W * (latent - heat * tw)) / (heatDryAir + W * heatVapor),
  };
}

/** Eq. 30 at a fixed enthalpy. */
export const enthalpyLine = (h: number): Falling => ({
  ratioAt: (t) => ratioOfEnthalpy(t, h),
  dryBulbAt: (W) => dryBulbOfEnthalpy(h, W),
});

/** Eq. 26 at a fixed specific volume. */
export function volumeLine(v: number, p: number): Falling {
  const kelvins = (v * p) / gasConstantDryAir;
  return {
    ratioAt: (t) => (kelvins / (t + iceKelvin) - 1) / volumeRatio,
    dryBulbAt: (W) => kelvins / (1 + volumeRatio * W) - iceKelvin,
  };
}
