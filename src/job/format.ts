/** Numbers as text: decimals fixed, thousands set off by a comma, a true minus, a no-break space before the unit. */
import { fromSi, type UnitKey, units } from './units.ts';

const minus = '\u2212';
const noBreakSpace = '\u00a0';

/** An SI value as a number in `unit`; never '−0'. */
export function format(si: number, unit: UnitKey, decimals: number): string {
  return formatNumber(fromSi(si, unit), decimals);
}

/** A number that is already in its unit. */
export function formatNumber(number: number, decimals: number): string {
  const [whole = '', part] = Math.abs(number).toFixed(decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const digits = part === undefined ? grouped : `${grouped}.${part}`;
  return number < 0 && /[1-9]/.test(digits) ? minus + digits : digits;
}

export function unitLabel(unit: UnitKey): string {
  return units[unit].suffixes[0] ?? '';
}

/** A formatted number with its unit. */
export function withUnit(formatted: string, unit: UnitKey): string {
  const label = unitLabel(unit);
  return label === '' ? formatted : `${formatted}${noBreakSpace}${label}`;
}
