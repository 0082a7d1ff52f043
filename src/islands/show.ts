/** SI amounts as a person reads them in the system of the page: the same rounding wherever a kind of figure stands. */
import type { Amount, Kind } from '~/calc/types.ts';
import { format, formatCapacity, formatNumber, unitLabel } from '~/job/format.ts';
import type { UnitKey } from '~/job/types.ts';
import { differenceUnit, displayUnit, fromSi } from '~/job/units.ts';
import { system } from './jobStore.ts';

/** A number and its unit apart, for ledgers. */
export interface Shown {
  readonly number: string;
  readonly unit: string;
}

export const joined = ({ number, unit }: Shown) => (unit === '' ? number : `${number}\u00a0${unit}`);

/** A capacity as it stands everywhere. */
export function capacity(watts: number): Shown {
  const unit = displayUnit.power[system.value];
  return { number: formatCapacity(watts, unit), unit: unitLabel(unit) };
}

export const capacityText = (watts: number) => joined(capacity(watts));

/** The ends of a range of a capacity, the unit behind the high one; nothing is less than none. */
export const capacityEnds = ({ low, high }: { readonly low: number; readonly high: number }) =>
  [capacity(Math.max(0, low)).number, capacityText(high)] as const;

/** A share in whole percent. */
export const percent = (fraction: number) => `${formatNumber(fraction * 100, 0)}\u00a0%`;

const decimalsOf: Readonly<Partial<Record<UnitKey, number>>> = {
  degF: 1,
  degC: 1,
  degFStep: 1,
  degCStep: 1,
  percent: 0,
  cfm: 0,
  ls: 0,
  lbPerHour: 1,
  kgPerHour: 1,
  btuh: 0,
  kw: 2,
  psi: 2,
  kpa: 1,
  paDuct: 0,
  fpm: 0,
  count: 0,
};

/** Any amount in a given unit with the decimals usual for it. */
export function inUnitOf(si: number, unit: UnitKey, decimals = decimalsOf[unit] ?? 2): Shown {
  return { number: format(si, unit, decimals), unit: unitLabel(unit) };
}

export function ofKind(kind: Kind, si: number): Shown {
  return inUnitOf(si, displayUnit[kind][system.value]);
}

export const temperature = (si: number) => joined(ofKind('temperature', si));
export const temperatureStep = (si: number) =>
  joined(inUnitOf(si, differenceUnit(displayUnit.temperature[system.value])));

/** A difference of two humidities, in the measure in which they are read. */
export const humidityStep = (si: number, measure: 'relativeHumidity' | 'wetBulb') =>
  measure === 'wetBulb' ? temperatureStep(si) : joined(inUnitOf(si, 'percent', 1));

/** Airflow for each ton, or for each kilowatt. */
export const ofCapacity = (si: number) => inUnitOf(si, system.value === 'ip' ? 'cfmPerTon' : 'lsPerKw', 0);
export const perCapacity = (si: number) => joined(ofCapacity(si));

/** An amount of a remark: rounded for a sentence. */
export function remarkAmount({ kind, value }: Amount): Shown {
  if (kind === 'power' && Math.abs(value) >= 2000) return capacity(value);
  if (kind === 'power') return inUnitOf(value, 'watt', 0);
  if (kind === 'fraction' && Math.abs(value) < 0.1) return inUnitOf(value, 'percent', 1);
  if (kind === 'ratio') return inUnitOf(value, 'one', 2);
  if (kind === 'pressure')
    return inUnitOf(value, system.value === 'ip' ? 'inHg' : 'hpa', system.value === 'ip' ? 2 : 0);
  return ofKind(kind, value);
}

/** The size of a system as it is called: "3 ton", "10.6 kW". */
export function sizeText(watts: number): string {
  const unit = system.value === 'ip' ? 'ton' : 'kw';
  return joined(inUnitOf(watts, unit, Number.isInteger(Math.round(fromSi(watts, unit) * 100) / 100) ? 0 : 1));
}

/** A time as a clock shows it; '' for no time. */
export function clock(iso: string): string {
  const date = new Date(iso);
  return Number.isNaN(date.getTime())
    ? ''
    : date.toLocaleTimeString('en', { hour: '2-digit', minute: '2-digit', hour12: false });
}
