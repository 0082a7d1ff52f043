import { standardAirDensity } from './constants.ts';
import { within } from './errors.ts';
import { limits } from './limits.ts';
import { amount } from './trace.ts';
import type { Trace } from './types.ts';

/** A volume flow and the air that it was measured in: place and kind of an airflow are one thing, the density there. */
export interface Airflow {
  /** m³/s. */
  readonly volumeFlow: number;
  /** `standard`: counted as standard air. Otherwise as it moves, with the specific volume there, m³/kg dry air. */
  readonly at: 'standard' | { readonly specificVolume: number };
}

/**
 * Dry-air mass flow, kg/s. Standard air is 1.2014 kg/m³ (0.075 lb/ft³ of dry air: 10 CFR 430 subpart B appendix M1,
 * definitions); air as it moves is the volume flow over the volume of one kilogram of dry air (ASHRAE Fundamentals ch. 1).
 * Throws a `CalcError` for a volume flow or a specific volume that is no positive number in `limits`.
 */
export function dryAirFlow({ volumeFlow, at }: Airflow, t?: Trace): number {
  within('volumeFlow', volumeFlow, limits.volumeFlow);
  if (at === 'standard') {
    const flow = volumeFlow * standardAirDensity;
    t?.({
      id: 'dryAirFlow.standard',
      equation: 'ṁ = V̇·ρ₀',
      puts: [amount('V̇', 'volumeFlow', volumeFlow), amount('ρ₀', 'density', standardAirDensity)],
      gives: amount('ṁ', 'massFlow', flow),
      source: 'standardAir',
    });
    return flow;
  }
  within('specificVolume', at.specificVolume, limits.specificVolume);
  const flow = volumeFlow / at.specificVolume;
  t?.({
    id: 'dryAirFlow.actual',
    equation: 'ṁ = V̇/v',
    puts: [amount('V̇', 'volumeFlow', volumeFlow), amount('v', 'specificVolume', at.specificVolume)],
    gives: amount('ṁ', 'massFlow', flow),
    source: 'definition',
  });
  return flow;
}

/** The volume that a dry-air flow (kg/s) fills as standard air, m³/s. */
export function standardVolumeFlow(flow: number): number {
  return flow / standardAirDensity;
}
