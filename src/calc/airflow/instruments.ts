import { standardAirDensity } from '../constants.ts';
import type { Airflow } from '../dryAirFlow.ts';
import { within } from '../errors.ts';
import { amount } from '../trace.ts';
import type { MoistAir, Trace } from '../types.ts';
import { type Cause, ofLimit } from './found.ts';
import { airflowLimits } from './limits.ts';

/** The air where something was measured: m³/kg dry air, and kg/m³ of the moist air. */
export type AirThere = Pick<MoistAir, 'specificVolume' | 'density'>;

/** A pressure gauge. Methods that name the same one share its error. */
export interface Gauge {
  readonly name: string;
  /** Half-width of its error, a fraction of the reading. */
  readonly limit: number;
}

/** One gauge for everything, ±1 % of the reading. */
export const manometer: Gauge = { name: 'manometer', limit: 0.01 };
/** What it can be wrong by whatever it reads, Pa: half-width. */
const gaugeZero = 0.2;

export function checkAir({ specificVolume, density }: AirThere): void {
  within('air.specificVolume', specificVolume, airflowLimits.specificVolume);
  within('air.density', density, airflowLimits.density);
}

/** The error of a gauge; `moves` is the relative change of the airflow with that of the pressure. */
export function gaugeCause(gauge: Gauge, moves: number): Cause {
  within('gauge.limit', gauge.limit, airflowLimits.gaugeLimit);
  const u = ofLimit(gauge.limit);
  return { name: `gauge.${gauge.name}`, u, moves, basis: 'californiaGauge', shape: 'rectangular' };
}

/** The error of a gauge's zero where it read `pressure`, Pa. */
export function zeroCause(name: string, pressure: number, moves: number): Cause {
  const u = ofLimit(gaugeZero) / Math.abs(pressure);
  return { name, u, moves, basis: 'californiaGauge', shape: 'rectangular' };
}

/**
 * What an instrument shows: air as it moves, standard air, or (`uncorrected`) air as it moves if it were as dense as standard
 * air, which is what a plate or a fan read through a pressure shows when nobody told it the density.
 */
export type ShownAs = 'actual' | 'standard' | 'uncorrected';

/** The airflow behind a figure shown, m³/s: V̇ = V̇₀·√(ρ₀/ρ) where the instrument took the air for standard air. */
export function flowShown(volumeFlow: number, shownAs: ShownAs, air: AirThere, t?: Trace): Airflow {
  checkAir(air);
  if (shownAs === 'standard') return { volumeFlow, at: 'standard' };
  const at = { specificVolume: air.specificVolume };
  if (shownAs === 'actual') return { volumeFlow, at };
  const actual = volumeFlow * Math.sqrt(standardAirDensity / air.density);
  t?.({
    id: 'airflow.density',
    equation: 'V̇ = V̇₀·√(ρ₀/ρ)',
    puts: [
      amount('V̇₀', 'volumeFlow', volumeFlow),
      amount('ρ₀', 'density', standardAirDensity),
      amount('ρ', 'density', air.density),
    ],
    gives: amount('V̇', 'volumeFlow', actual),
    source: 'velocityPressure',
  });
  return { volumeFlow: actual, at };
}
