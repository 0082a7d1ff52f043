/** Capacities to a figure more than results, so that a column of steps adds up. */
import { toSi } from '~/job/units.ts';
import { system } from './jobStore.ts';
import { inUnitOf, joined, type Shown } from './show.ts';

/** To ten Btu/h, or to a hundredth of a kilowatt. */
export function fine(watts: number): Shown {
  const step = system.value === 'ip' ? toSi(10, 'btuh') : 1;
  return inUnitOf(Math.round(watts / step) * step, system.value === 'ip' ? 'btuh' : 'kw');
}

export const fineText = (watts: number): string => joined(fine(watts));

const sign = (watts: number): string => (watts < 0 ? '−' : '+');

/** A change with its sign and unit. */
export const changeText = (watts: number): string => sign(watts) + fineText(Math.abs(watts));
/** The number alone, where the unit stands elsewhere. */
export const changeNumber = (watts: number): string => sign(watts) + fine(Math.abs(watts)).number;
