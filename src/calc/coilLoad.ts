import { apparatus, type CoilProcess } from './apparatus.ts';
import { traceApparatus, traceLoad } from './coilTrace.ts';
import { heatDryAir, heatVapor, heatWater } from './constants.ts';
import { CalcError, within } from './errors.ts';
import { limits } from './limits.ts';
import { temperatureRise } from './temperatureRise.ts';
import type { BlowerPlace, CoilLoad, MoistAir, Trace } from './types.ts';

export interface CoilReadings {
  readonly entering: MoistAir;
  readonly leaving: MoistAir;
  /** kg/s. */
  readonly dryAirFlow: number;
  /** Heat of the blower, W, and where it stands. Left out: no blower between the probes is known of. */
  readonly blower?: { readonly heat: number; readonly place: BlowerPlace };
}

/**
 * What a coil does to an air stream, W and kg/s, by the indoor air-enthalpy method (ASHRAE 37, 7.3.3):
 * total ṁ(h₁ − h₂) per kg of dry air, the condensate's enthalpy not taken off, because ratings do not take it off;
 * sensible ṁ(c_pa + c_pv·W₂)(t₁ − t₂) with the leaving humidity ratio; latent is the rest, so the two always add up.
 * A latent below zero is returned as it comes: whether the probes can see it is for `assess` to say.
 *
 * `condensateEnthalpy` is liquid water at the leaving wet bulb (ASHRAE Fundamentals ch. 1, Eq. 33 and 43).
 * `sensibleHeatRatio` is 0 where there is no cooling to share out. The basis is gross only when the blower is said to stand
 * outside the probes. Throws a `CalcError` for two pressures, or for an argument outside `limits`.
 */
export function coilLoad(readings: CoilReadings, t?: Trace): CoilLoad {
  const { entering, leaving, dryAirFlow, blower } = readings;
  within('dryAirFlow', dryAirFlow, limits.dryAirFlow);
  within('entering.enthalpy', entering.enthalpy, limits.enthalpy);
  within('leaving.enthalpy', leaving.enthalpy, limits.enthalpy);
  if (blower) within('blower.heat', blower.heat, limits.blowerPower);
  const process = coilProcess(readings);
  const total = dryAirFlow * (entering.enthalpy - leaving.enthalpy);
  const sensible = dryAirFlow * (heatDryAir + heatVapor * leaving.humidityRatio) * (entering.dryBulb - leaving.dryBulb);
  const share = sensible / total;
  const condensate = Math.max(0, dryAirFlow * (entering.humidityRatio - leaving.humidityRatio));
  const load: CoilLoad = {
    basis: blower?.place === 'outside probes' ? 'gross' : 'net',
    total,
    sensible,
    latent: total - sensible,
    sensibleHeatRatio: Number.isFinite(share) ? share : 0,
    dryAirFlow,
    condensate,
    condensateEnthalpy: condensate * heatWater * leaving.wetBulb,
    apparatus: apparatus(process),
  };
  if (t) {
    traceLoad(readings, load, t);
    traceApparatus(readings, process, load.apparatus, t);
  }
  return load;
}

/**
 * The coil's own process: the blower's heat taken out of the air that leaves (blower after the coil) or put into the air
 * that enters (before it). Both states must have one pressure, else a `CalcError`.
 */
export function coilProcess({ entering, leaving, dryAirFlow, blower }: CoilReadings): CoilProcess {
  if (Math.abs(entering.pressure - leaving.pressure) > 1e-6 * entering.pressure) {
    throw new CalcError('pressuresDiffer', 'leaving.pressure', leaving.pressure, entering.pressure, entering.pressure);
  }
  const heatAt = (place: BlowerPlace) => (blower?.place === place ? blower.heat : 0);
  return {
    enteringDryBulb: entering.dryBulb + temperatureRise(heatAt('before coil'), dryAirFlow, entering.humidityRatio),
    enteringHumidityRatio: entering.humidityRatio,
    leavingDryBulb: leaving.dryBulb - temperatureRise(heatAt('after coil'), dryAirFlow, leaving.humidityRatio),
    leavingHumidityRatio: leaving.humidityRatio,
    pressure: entering.pressure,
  };
}
