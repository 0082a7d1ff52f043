import { heatDryAir, heatVapor } from './constants.ts';

/** Temperature rise, K, of a dry-air flow (kg/s) with humidity ratio W that takes up `heat` (W). */
export function temperatureRise(heat: number, dryAirFlow: number, humidityRatio: number): number {
  return heat / (dryAirFlow * (heatDryAir + heatVapor * humidityRatio));
}
