import { blowerDefaults } from './blowerDefaults.ts';
import { standardVolumeFlow } from './dryAirFlow.ts';
import { within } from './errors.ts';
import { limits } from './limits.ts';
import { amount } from './trace.ts';
import type { BlowerKind, RatingTable, Trace } from './types.ts';
import { cubicFootPerMinute } from './units.ts';

/** The flow of standard air that the defaults are stated for, m³/s. */
const statedFlow = 1000 * cubicFootPerMinute;
/** The blower to assume where nothing at all is known of it: W, and the flow of standard air that goes with it, m³/s. */
export const defaultBlower = { power: blowerDefaults.ratedCoilOnly.power, volumeFlow: statedFlow } as const;

/**
 * Heat that a blower adds to the air, W: all of its electrical power (W) ends in the air stream, the motor stands in it.
 * Throws a `CalcError` for a power outside `limits`.
 */
export function blowerHeat({ power }: { readonly power: number }, t?: Trace): number {
  within('blowerPower', power, limits.blowerPower);
  t?.({
    id: 'blowerHeat',
    equation: 'qᵦ = Pᵦ',
    puts: [amount('Pᵦ', 'power', power)],
    gives: amount('qᵦ', 'power', power),
    source: 'definition',
  });
  return power;
}

/**
 * Blower power to assume where it is not known, W, from the dry-air flow (kg/s) and the kind of blower. Without a kind: 365 W
 * per 1000 scfm (773 W per m³/s of standard air), the default of coil-only ratings (EnergyPlus Engineering Reference, which
 * credits AHRI 210/240 and 340/360). Blowers in the field draw from half to one and a half times as much, so a measured power
 * is worth having.
 */
export function defaultBlowerPower(dryAirFlow: number, kind: BlowerKind = 'ratedCoilOnly', t?: Trace): number {
  within('dryAirFlow', dryAirFlow, limits.dryAirFlow);
  const stated = blowerDefaults[kind] ?? blowerDefaults.ratedCoilOnly;
  const volumeFlow = standardVolumeFlow(dryAirFlow);
  const power = (stated.power * volumeFlow) / statedFlow;
  t?.({
    id: 'blowerHeat.default',
    equation: 'Pᵦ = P₀·V̇/V̇₀',
    puts: [
      amount('P₀', 'power', stated.power),
      amount('V̇', 'volumeFlow', volumeFlow),
      amount('V̇₀', 'volumeFlow', statedFlow),
    ],
    gives: amount('Pᵦ', 'power', power),
    source: stated.source,
  });
  return power;
}

/** Blower heat that a table has already taken off, W: all of it in a net table, none in a gross one. */
export function blowerInside(table: RatingTable): number {
  return table.basis === 'net' ? table.blowerPower : 0;
}
