import { axisSigns } from './ratedTrace.ts';
import { isAboveTotal } from './tableCheck.ts';
import { pointOf, rowOf, stride } from './tablePlaces.ts';
import { amount } from './trace.ts';
import type { Amount, Axis, RatingTable, Remark } from './types.ts';

/** A coil whose sensible capacity is this share of the total takes out no water worth the name. Our choice. */
const dryShare = 0.99;
/** Two totals this close are level: rounding, a dry coil, or a machine whose speed is controlled. Our choice. */
const level = 0.005;

/**
 * What is odd about single figures of a table and their next neighbours: `dryCell` (a dry coil: there the total moves with the
 * dry bulb, and the wet bulb says little), `sensibleAboveTotal`, `totalFallsWithWetBulb` and `totalRisesWithOutdoor` (most often
 * a figure typed in the wrong place), `hole`. Amounts: the axes of the point, then the total and the sensible capacity, or the
 * next row and the two totals.
 */
export function figureRemarks(table: RatingTable): readonly Remark[] {
  const remarks: Remark[] = [];
  table.total.forEach((total, at) => {
    const point = pointOf(table, at);
    if (total === null) {
      remarks.push({ code: 'hole', weight: 'note', about: 'rating', amounts: point });
      return;
    }
    const sensible = table.sensible?.[at] ?? 0;
    const both = [...point, amount('Q', 'power', total), amount('Qₛ', 'power', sensible)];
    if (isAboveTotal(sensible, total)) {
      remarks.push({ code: 'sensibleAboveTotal', weight: 'doubt', about: 'rating', amounts: both });
    } else if (sensible >= dryShare * total) {
      remarks.push({ code: 'dryCell', weight: 'note', about: 'rating', amounts: both });
    }
    const damper = neighbour(table, at, 'enteringWetBulb');
    if (damper && damper.total < total * (1 - level)) remarks.push(step('totalFallsWithWetBulb', point, total, damper));
    const warmer = neighbour(table, at, 'outdoorDryBulb');
    if (warmer && warmer.total > total * (1 + level)) remarks.push(step('totalRisesWithOutdoor', point, total, warmer));
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

/** The next higher row of an axis, all else the same. */
function neighbour(table: RatingTable, at: number, axis: Axis): Neighbour | null {
  const value = table.axes[axis][rowOf(table, at, axis) + 1];
  const total = table.total[at + stride(table, axis)];
  if (value === undefined || typeof total !== 'number') return null;
  const { symbol, kind } = axisSigns[axis];
  return { at: amount(`${symbol}′`, kind, value), total };
}
