import { ratioAt, rounding, saturatedVapor } from '../humidityRatio.ts';
import { limits } from '../limits.ts';
import type { HumidityMeasure } from '../sideBySide.ts';
import { ratioOfWetBulb } from '../wetBulb.ts';

/**
 * Humidity ratio of a probe's air, kg/kg dry air; not a number where there is no such air: more than saturated, less than dry.
 * Without an object or an error, for callers that ask a hundred thousand times.
 */
export function ratioFrom(measure: HumidityMeasure, dryBulb: number, humidity: number, pressure: number): number {
  if (!inside(dryBulb, limits.dryBulb) || !inside(pressure, limits.pressure)) return Number.NaN;
  if (measure === 'relativeHumidity') {
    const ratio = ratioAt(humidity * saturatedVapor(dryBulb, pressure), pressure);
    return inside(humidity, limits.relativeHumidity) && inside(ratio, limits.humidityRatio) ? ratio : Number.NaN;
  }
  // Lower than the wet bulb of dry air it comes out below nothing.
  const ratio = ratioOfWetBulb(dryBulb, humidity, pressure);
  return humidity <= dryBulb && inside(ratio, [-rounding, limits.humidityRatio[1]]) ? Math.max(0, ratio) : Number.NaN;
}

/** Whether a value is a number from the one end of a range to the other. */
export function inside(value: number, range: readonly [number, number]): boolean {
  return value >= range[0] && value <= range[1];
}
