/** Amounts as they stand on a chart, in the system of the chart: the same rounding as on the sheets. */
import type { Kind } from '../../calc/types.ts';
import { format, formatNumber, unitLabel, withUnit } from '../../job/format.ts';
import type { System, UnitKey } from '../../job/types.ts';
import { displayUnit, fromSi } from '../../job/units.ts';

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

/** The number alone, for tables that have the unit in their head. */
export function amountNumber(kind: Kind, value: number, system: System): string {
  const unit = displayUnit[kind][system];
  return format(value, unit, decimals[unit] ?? 2);
}

export const unitText = (kind: Kind, system: System): string => unitLabel(displayUnit[kind][system]);

/** A station pressure as instruments show it. */
export function pressureText(pressure: number, system: System): string {
  return system === 'ip' ? inUnit(pressure, 'inHg') : inUnit(pressure, 'hpa');
}

/** A capacity to three figures, in hundreds of Btu/h or hundredths of a kilowatt at the finest. */
export function powerText(watts: number, system: System): string {
  const unit = displayUnit.power[system];
  const value = fromSi(watts, unit);
  const size = Math.floor(Math.log10(Math.max(Math.abs(value), 1e-9)));
  const step = 10 ** Math.max(size - 2, system === 'ip' ? 2 : -2);
  const places = Math.max(0, Math.min(2, -Math.round(Math.log10(step))));
  return withUnit(formatNumber(Math.round(value / step) * step, places), unit);
}

/** A fraction as a bare figure with two decimals, as bypass factors are written. */
export const fractionText = (fraction: number): string => formatNumber(fraction, 2);
