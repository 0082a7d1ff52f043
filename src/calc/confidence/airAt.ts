import { mostVapor, ratioAt, saturatedVapor } from '../humidityRatio.ts';
import { limits } from '../limits.ts';
import type { HumidityMeasure } from '../sideBySide.ts';
import { humidityRatioFromWetBulb } from '../wetBulb.ts';

/**
 * Humidity ratio of a probe's air, kg/kg dry air; not a number where there is no such air: more than saturated, less than dry.
 * Without an object or an error, for callers that ask a hundred thousand times.
 */
export function ratioFrom(measure: HumidityMeasure, dryBulb: number, humidity: number, pressure: number): number {
  if (!inside(dryBulb, limits.dryBulb) || !inside(pressure, limits.pressure)) return Number.NaN;
  if (measure === 'relativeHumidity') {
    if (!inside(humidity, limits.relativeHumidity)) return Number.NaN;
    const vapor = humidity * saturatedVapor(dryBulb, pressure);
    return vapor < mostVapor(pressure) ? ratioAt(vapor, pressure) : Number.NaN;
  }
  if (!inside(humidity, limits.wetBulb) || humidity > dryBulb) return Number.NaN;
  return ratioOfBulb(dryBulb, humidity, pressure);
}

function ratioOfBulb(dryBulb: number, wetBulb: number, pressure: number): number {
  try {
    return humidityRatioFromWetBulb(dryBulb, wetBulb, pressure);
  } catch {
    return Number.NaN;
  }
}

function inside(value: number, range: readonly [number, number]): boolean {
  return value >= range[0] && value <= range[1];
}
