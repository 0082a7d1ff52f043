/** Amounts as they stand on a chart, in the system of the chart: the same rounding as on the sheets. */
import type { Kind } from '../../calc/types.ts';
import { format, formatCapacity, formatNumber, withUnit } from '../../job/format.ts';
import type { System, UnitKey } from '../../job/types.ts';
import { displayUnit } from '../../job/units.ts';

const decimals: Readonly<Partial<Record<UnitKey, number>>> = {
  degF: 1,
  degC: 1,
  degFStep: 1,
  degCStep: 1,
  percent: 0,
  grainsPerLb: 1,
  gPerKg: 2,
  btuPerLb: 1,
  btuPerLbStep: 1,
  kjPerKg: 1,
  ft3PerLb: 2,
  m3PerKg: 3,
  inHg: 2,
  hpa: 0,
};

/** An SI value in the unit that its kind has in a system. */
export function amountText(kind: Kind, value: number, system: System): string {
  return inUnit(value, displayUnit[kind][system]);
}

export function inUnit(value: number, unit: UnitKey): string {
  return withUnit(format(value, unit, decimals[unit] ?? 2), unit);
}

/** A station pressure as instruments show it. */
export function pressureText(pressure: number, system: System): string {
  return system === 'ip' ? inUnit(pressure, 'inHg') : inUnit(pressure, 'hpa');
}

/** A capacity as the sheets show it. */
export function powerText(watts: number, system: System): string {
  const unit = displayUnit.power[system];
  return withUnit(formatCapacity(watts, unit), unit);
}

/** A fraction as a bare figure with two decimals, as bypass factors are written. */
export const fractionText = (fraction: number): string => formatNumber(fraction, 2);
