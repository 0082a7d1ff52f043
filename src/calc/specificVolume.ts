import { gasConstantDryAir, iceKelvin, volumeRatio } from './constants.ts';
import { within } from './errors.ts';
import { limits } from './limits.ts';

/**
 * Specific volume, m³/kg dry air, from dry bulb (°C), humidity ratio (kg/kg dry air) and pressure (Pa).
 * ASHRAE Fundamentals ch. 1, Eq. 26; up to 0.06 % above the real gas.
 */
export function specificVolume(dryBulb: number, humidityRatio: number, pressure: number): number {
  within('dryBulb', dryBulb, limits.dryBulb);
  within('humidityRatio', humidityRatio, limits.humidityRatio);
  within('pressure', pressure, limits.pressure);
  return volumeAt(dryBulb, humidityRatio, pressure);
}

/** Eq. 26 without a check of its arguments. */
export function volumeAt(t: number, W: number, p: number): number {
  return (gasConstantDryAir * (t + iceKelvin) * (1 + volumeRatio * W)) / p;
}
