/** How the figures of exercises are written in the units of the page. */
import type { Fact } from '~/job/classroom/spoiltTypes.ts';
import type { Figure, Grid } from '~/job/classroom/types.ts';
import { format } from '~/job/format.ts';
import { displayUnit } from '~/job/units.ts';
import { system } from '../jobStore.ts';
import { capacityText, inUnitOf, joined, ofKind } from '../show.ts';

/** A height and the sides of a duct are whole numbers here; a standard uncertainty needs a place after the point. */
export function figureText({ name, kind, value }: Figure): string {
  if (kind === 'length' || kind === 'diameter') return joined(inUnitOf(value, displayUnit[kind][system.value], 0));
  return joined(name === 'uncertainty' ? inUnitOf(value, 'percent', 1) : ofKind(kind, value));
}

/** The head of a row or column: a temperature of a table, the number of a point. */
export const headText = ({ name }: Grid, value: number) =>
  name === 'rating'
    ? joined(inUnitOf(value, displayUnit.temperature[system.value], system.value === 'ip' ? 0 : 1))
    : String(value);

export const gridText = ({ name }: Grid, value: number) =>
  joined(ofKind(name === 'rating' ? 'power' : 'velocity', value));

/** A barometer is read in its own unit, the power of a machine in kilowatts, a capacity as everywhere. */
export function factText({ name, kind, value }: Pick<Fact, 'kind' | 'value'> & { readonly name: string }): string {
  if (kind === 'length') return joined(inUnitOf(value, displayUnit.length[system.value], 0));
  if (kind === 'pressure')
    return joined(system.value === 'ip' ? inUnitOf(value, 'inHg', 2) : inUnitOf(value, 'hpa', 0));
  if (name === 'power' || name === 'powerInTable') return `${format(value, 'kw', 2)}\u00a0kW`;
  if (kind === 'power') return capacityText(value);
  if (kind === 'temperature') return joined(inUnitOf(value, displayUnit.temperature[system.value], 1));
  return joined(ofKind(kind, value));
}
