import { dryBulbOfEnthalpy } from './enthalpy.ts';
import { CalcError, within } from './errors.ts';
import { mostRatio, rounding, saturatedVapor } from './humidityRatio.ts';
import { limits } from './limits.ts';
import { traceMix } from './mixTrace.ts';
import { moistAir } from './moistAir.ts';
import type { MoistAir, Trace } from './types.ts';

/** Air on the move: its state and the dry air in it, kg/s. */
export interface AirStream {
  readonly air: MoistAir;
  readonly dryAirFlow: number;
}

/** One of the two may stand still. */
const orNothing = [0, limits.dryAirFlow[1]] as const;

/**
 * Two streams mixed without heat from outside, at the pressure that both have: humidity ratio and enthalpy are shared out
 * by dry air. ASHRAE Fundamentals ch. 1, adiabatic mixing of two moist airstreams. Throws when the pressures differ, when
 * nothing flows, and when the mixture would be fog.
 */
export function mix(a: AirStream, b: AirStream, t?: Trace): AirStream {
  within('dryAirFlow', a.dryAirFlow, orNothing);
  within('dryAirFlow', b.dryAirFlow, orNothing);
  const pressure = a.air.pressure;
  if (pressure !== b.air.pressure)
    throw new CalcError('pressuresDiffer', 'pressure', b.air.pressure, pressure, pressure);
  const dryAirFlow = a.dryAirFlow + b.dryAirFlow;
  within('dryAirFlow', dryAirFlow, [limits.dryAirFlow[0], 2 * limits.dryAirFlow[1]]);

  const share = b.dryAirFlow / dryAirFlow;
  const humidityRatio = a.air.humidityRatio + share * (b.air.humidityRatio - a.air.humidityRatio);
  const enthalpy = a.air.enthalpy + share * (b.air.enthalpy - a.air.enthalpy);
  const dryBulb = dryBulbOfEnthalpy(enthalpy, humidityRatio);
  const most = mostRatio(saturatedVapor(dryBulb, pressure), pressure);
  if (humidityRatio > most * (1 + rounding)) throw new CalcError('fogged', 'humidityRatio', humidityRatio, 0, most);
  const air = moistAir({ dryBulb, pressure, humidityRatio });
  if (t) traceMix(a, b, { air, dryAirFlow }, t);
  return { air, dryAirFlow };
}
