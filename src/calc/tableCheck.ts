import { CalcError, within } from './errors.ts';
import { limits } from './limits.ts';
import type { Axis, Multipliers, RatingTable } from './types.ts';

/** The axes in the order in which the figures of a table stand: the last varies fastest. */
export const axisOrder = ['outdoorDryBulb', 'enteringWetBulb', 'enteringDryBulb', 'dryAirFlow'] as const;

/** What each axis may hold. */
export const axisRange: Readonly<Record<Axis, readonly [number, number]>> = {
  outdoorDryBulb: limits.dryBulb,
  enteringWetBulb: limits.wetBulb,
  enteringDryBulb: limits.dryBulb,
  dryAirFlow: limits.dryAirFlow,
};

/** How far a printed sensible capacity may stand above the total, by rounding: 1 % of it. */
const sensibleSlack = 0.01;

type Figure = number | null | undefined;

/** The figures of one point, W: the total above zero, the others not below it. */
export function checkFigures(total: Figure, sensible: Figure, power: Figure): void {
  const most = limits.capacity[1];
  if (given(total)) checkCapacity('total', total);
  if (given(sensible)) within('sensible', sensible, [0, most]);
  if (given(power)) within('power', power, [0, most]);
}

/** Whether a printed sensible capacity is more than any coil can do: one of the two figures is wrong, and nobody knows which. */
export function isAboveTotal(sensible: Figure, total: Figure): boolean {
  return given(sensible) && given(total) && sensible > total * (1 + sensibleSlack);
}

const usable = new WeakMap<RatingTable, readonly (number | null)[]>();

/** The sensible capacities of a table that may be read, W: one above its total counts as not printed. */
export function usableSensible(table: RatingTable): readonly (number | null)[] | null {
  if (!table.sensible) return null;
  const known = usable.get(table);
  if (known) return known;
  const found = table.sensible.map((sensible, at) => (isAboveTotal(sensible, table.total[at]) ? null : sensible));
  usable.set(table, found);
  return found;
}

/** A capacity that something is divided by or compared with, W: `notPositive` says more than a range. */
export function checkCapacity(quantity: string, value: number): void {
  if (value <= 0) throw new CalcError('notPositive', quantity, value, ...limits.capacity);
  within(quantity, value, limits.capacity);
}

function given(value: Figure): value is number {
  return value !== null && value !== undefined;
}

/** Tables that have been looked through once; a table is never changed after it is made. */
const checked = new WeakSet<RatingTable>();

/** Throws a `CalcError` for a table that no lookup can trust: axes that do not rise, or figures that do not fill the grid. */
export function checkTable(table: RatingTable): void {
  if (checked.has(table)) return;
  within('blowerPower', table.blowerPower, limits.blowerPower);
  within('sensibleBand', table.sensibleBand, [0, 1]);
  for (const axis of axisOrder) checkAxis(axis, table.axes[axis]);
  const size = gridSize(table.axes);
  for (const column of ['total', 'sensible', 'power', 'band'] as const) {
    const values = table[column];
    if (values && values.length !== size) throw new CalcError('wrongLength', column, values.length, size, size);
  }
  for (let i = 0; i < size; i++) checkFigures(table.total[i], table.sensible?.[i], table.power?.[i]);
  for (const band of table.band ?? []) if (given(band)) within('band', band, [0, 1]);
  checkMultipliers(table.multipliers);
  checked.add(table);
}

function checkMultipliers({ airflow, indoorMatch, lineLength }: Multipliers): void {
  if (indoorMatch !== null) within('multipliers.indoorMatch', indoorMatch, limits.multiplier);
  if (lineLength !== null) within('multipliers.lineLength', lineLength, limits.multiplier);
  checkAxis(
    'dryAirFlow',
    airflow.map(({ dryAirFlow }) => dryAirFlow),
  );
  for (const { total, sensible } of airflow) {
    within('multipliers.airflow', total, limits.multiplier);
    if (sensible !== null) within('multipliers.airflow', sensible, limits.multiplier);
  }
}

function checkAxis(axis: Axis, values: readonly number[]): void {
  values.forEach((value, i) => {
    within(axis, value, axisRange[axis]);
    const before = values[i - 1];
    if (before !== undefined && value <= before) {
      throw new CalcError('notAscending', axis, value, before, axisRange[axis][1]);
    }
  });
}

/** How many points the grid has. */
export function gridSize(axes: RatingTable['axes']): number {
  return axisOrder.reduce((size, axis) => size * Math.max(1, axes[axis].length), 1);
}
