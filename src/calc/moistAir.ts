import { standardPressureAtSeaLevel } from './constants.ts';
import { dewPointAt } from './dewPoint.ts';
import { enthalpyAt, ratioOfEnthalpy } from './enthalpy.ts';
import { CalcError, within } from './errors.ts';
import {
  mostRatio,
  ratioOfRelativeHumidity,
  ratioOfTemperature,
  rounding,
  saturatedVapor,
  vaporPressureAt,
} from './humidityRatio.ts';
import { limits } from './limits.ts';
import { traceMoistAir } from './moistAirWorking.ts';
import { volumeAt } from './specificVolume.ts';
import type { MoistAir, Trace } from './types.ts';
import { checkedRatioOfWetBulb, wetBulbAt } from './wetBulb.ts';

/** A dry bulb, a pressure (sea level when left out) and exactly one measure of humidity. */
export interface MoistAirInput {
  readonly dryBulb: number;
  readonly pressure?: number | undefined;
  readonly relativeHumidity?: number | undefined;
  readonly wetBulb?: number | undefined;
  readonly dewPoint?: number | undefined;
  readonly humidityRatio?: number | undefined;
  readonly enthalpy?: number | undefined;
}

/**
 * The state of moist air from dry bulb (°C), pressure (Pa) and one of: relative humidity (fraction), wet bulb (°C), dew
 * point (°C), humidity ratio (kg/kg dry air) or enthalpy (J/kg dry air). Throws a `CalcError` for an argument out of range
 * and for air that cannot be. ASHRAE Fundamentals ch. 1 with an enhancement factor fitted to the real-gas tables (RP-1485).
 * A wet bulb or dew point that was given is returned as given.
 */
export function moistAir(input: MoistAirInput, trace?: Trace): MoistAir {
  const t = input.dryBulb;
  const p = input.pressure ?? standardPressureAtSeaLevel;
  within('dryBulb', t, limits.dryBulb);
  within('pressure', p, limits.pressure);
  oneHumidity(input);
  const pws = saturatedVapor(t, p);
  const W = ratioOf(input, t, p, pws);
  const pw = vaporPressureAt(W, p);
  if (pw > pws * (1 + rounding)) throw tooWet(input, t, p, pws);
  const volume = volumeAt(t, W, p);
  const air: MoistAir = {
    dryBulb: t,
    wetBulb: input.wetBulb ?? wetBulbAt(t, W, p),
    dewPoint: input.dewPoint ?? Math.min(t, dewPointAt(pw, p)),
    relativeHumidity: input.relativeHumidity ?? Math.min(1, pw / pws),
    humidityRatio: W,
    enthalpy: enthalpyAt(t, W),
    specificVolume: volume,
    density: (1 + W) / volume,
    pressure: p,
    vaporPressure: pw,
  };
  if (trace) traceMoistAir(input, air, trace);
  return air;
}

function oneHumidity(input: MoistAirInput): void {
  const given =
    Number(input.relativeHumidity !== undefined) +
    Number(input.wetBulb !== undefined) +
    Number(input.dewPoint !== undefined) +
    Number(input.humidityRatio !== undefined) +
    Number(input.enthalpy !== undefined);
  if (given !== 1) throw new CalcError('oneHumidityNeeded', 'humidity', given, 1, 1);
}

function ratioOf(input: MoistAirInput, t: number, p: number, pws: number): number {
  if (input.relativeHumidity !== undefined) {
    within('relativeHumidity', input.relativeHumidity, limits.relativeHumidity);
    return ratioOfRelativeHumidity(input.relativeHumidity, pws, p);
  }
  if (input.wetBulb !== undefined) {
    within('wetBulb', input.wetBulb, limits.wetBulb);
    return checkedRatioOfWetBulb(t, input.wetBulb, p);
  }
  if (input.dewPoint !== undefined) {
    within('dewPoint', input.dewPoint, limits.dewPoint);
    if (input.dewPoint > t)
      throw new CalcError('dewPointAboveDryBulb', 'dewPoint', input.dewPoint, limits.dewPoint[0], t);
    return ratioOfTemperature('dewPoint', input.dewPoint, p);
  }
  if (input.humidityRatio !== undefined) {
    within('humidityRatio', input.humidityRatio, limits.humidityRatio);
    return input.humidityRatio;
  }
  const h = input.enthalpy as number;
  within('enthalpy', h, limits.enthalpy);
  const W = ratioOfEnthalpy(t, h);
  if (W < -rounding)
    throw new CalcError('enthalpyTooLow', 'enthalpy', h, enthalpyAt(t, 0), enthalpyAt(t, mostRatio(pws, p)));
  return Math.max(0, W);
}

function tooWet(input: MoistAirInput, t: number, p: number, pws: number): CalcError {
  const most = mostRatio(pws, p);
  return input.humidityRatio !== undefined
    ? new CalcError('aboveSaturation', 'humidityRatio', input.humidityRatio, 0, most)
    : new CalcError('aboveSaturation', 'enthalpy', input.enthalpy as number, enthalpyAt(t, 0), enthalpyAt(t, most));
}
