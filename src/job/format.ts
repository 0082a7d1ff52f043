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

/** Powers of ten of the finest step that a capacity is given in: hundreds of Btu/h, hundredths of a kilowatt. */
const finest = { btuh: 2, kw: -2 } as const;

/** A capacity, W, to three figures in its unit: 29,400 or 8.61. More would promise what no field reading holds. */
export function formatCapacity(watts: number, unit: keyof typeof finest): string {
  const value = fromSi(watts, unit);
  const size = Math.floor(Math.log10(Math.max(Math.abs(value), 1e-9)));
  const power = Math.max(size - 2, finest[unit]);
  return formatNumber(Math.round(value / 10 ** power) * 10 ** power, Math.max(0, -power));
}
