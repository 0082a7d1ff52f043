import { axisSigns } from './ratedTrace.ts';
import { axisOrder } from './tableCheck.ts';
import { amount } from './trace.ts';
import type { Amount, Axis, RatingTable, Remark } from './types.ts';

/** A coil whose sensible capacity is this share of the total takes out no water worth the name. Our choice. */
const dryShare = 0.99;

/**
 * What is odd about a table, with the row and the column of each figure: `dryCell` (a dry coil: there the total moves with the
 * dry bulb, and the wet bulb says little), `totalFallsWithWetBulb` and `totalRisesWithOutdoor` (most often a figure typed in
 * the wrong place), `hole`. Amounts: the axes of the point, then the total and the sensible capacity, or the two totals.
 */
export function tableRemarks(table: RatingTable): readonly Remark[] {
  const remarks: Remark[] = [];
  table.total.forEach((total, at) => {
    const point = pointOf(table, at);
    if (total === null) {
      remarks.push({ code: 'hole', weight: 'note', about: 'rating', amounts: point });
      return;
    }
    const sensible = table.sensible?.[at] ?? 0;
    if (sensible >= dryShare * total) {
      const amounts = [...point, amount('Q', 'power', total), amount('Qₛ', 'power', sensible)];
      remarks.push({ code: 'dryCell', weight: 'note', about: 'rating', amounts });
    }
    const damper = neighbour(table, at, 'enteringWetBulb');
    if (damper && damper.total < total) remarks.push(step('totalFallsWithWetBulb', point, total, damper));
    const warmer = neighbour(table, at, 'outdoorDryBulb');
    if (warmer && warmer.total > total) remarks.push(step('totalRisesWithOutdoor', point, total, warmer));
  });
  return remarks;
}

interface Neighbour {
  readonly at: Amount;
  readonly total: number;
}

function step(code: string, point: readonly Amount[], total: number, next: Neighbour): Remark {
  const amounts = [...point, next.at, amount('Q', 'power', total), amount('Q′', 'power', next.total)];
  return { code, weight: 'doubt', about: 'rating', amounts };
}

/** The place of a figure on every axis that the table states. */
function pointOf(table: RatingTable, at: number): Amount[] {
  return axisOrder
    .filter((axis) => table.axes[axis].length > 0)
    .map((axis) => {
      const { symbol, kind } = axisSigns[axis];
      return amount(symbol, kind, table.axes[axis][rowOf(table, at, axis)] as number);
    });
}

/** The next higher row of an axis, all else the same. */
function neighbour(table: RatingTable, at: number, axis: Axis): Neighbour | null {
  const value = table.axes[axis][rowOf(table, at, axis) + 1];
  const total = value === undefined ? null : (table.total[at + stride(table, axis)] ?? null);
  if (value === undefined || total === null) return null;
  const { symbol, kind } = axisSigns[axis];
  return { at: amount(`${symbol}′`, kind, value), total };
}

function rowOf(table: RatingTable, at: number, axis: Axis): number {
  return Math.floor(at / stride(table, axis)) % Math.max(1, table.axes[axis].length);
}

/** How far apart two neighbours on an axis stand in the list of figures. */
function stride(table: RatingTable, axis: Axis): number {
  return axisOrder
    .slice(axisOrder.indexOf(axis) + 1)
    .reduce((size, later) => size * Math.max(1, table.axes[later].length), 1);
}
