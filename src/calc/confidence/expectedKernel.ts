import { flowFactor } from '../airflowStep.ts';
import { blowerInside } from '../blowerHeat.ts';
import type { RatingHere } from '../expectedHere.ts';
import { axisOrder } from '../tableCheck.ts';
import type { RatingTable } from '../types.ts';
import { cellAround } from './cell.ts';

/** What the expectation hangs on: °C, dry-air flow in kg/s, W. The pressure acts through the flow. */
export type ExpectedKernel = (
  outdoorDryBulb: number,
  enteringWetBulb: number,
  enteringDryBulb: number,
  dryAirFlow: number,
  blowerPower: number,
) => number;

/**
 * `expectedTotal` around one reading on a wet coil, W, for callers that ask a hundred thousand times: on the cell of the table
 * alone, without an object. The steps to the airflow as if at sea level and from there to the mass that it really holds are one
 * here, because the first cancels. Not a number where nothing is left to expect.
 */
export function expectedKernel({ table, conditions, installation }: RatingHere): ExpectedKernel {
  const read = reader(cellAround(table, conditions));
  const match = table.multipliers.indoorMatch ?? 1;
  const line = table.multipliers.lineLength ?? installation.lineSet?.factor ?? 1;
  const inside = blowerInside(table);
  // The published curve acts on the gross capacity, a maker's figures are as printed.
  const onGross = table.axes.dryAirFlow.length === 1 && table.multipliers.airflow.length === 0;
  return (outdoors, wetBulb, dryBulb, dryAirFlow, blowerPower) => {
    const matched = read(outdoors, wetBulb, dryBulb, dryAirFlow) * match;
    const step = flowFactor(table, dryAirFlow).total;
    const gross = onGross ? (matched + inside) * step : matched * step + inside;
    const net = gross * line - blowerPower;
    return matched > 0 && net > 0 ? net : Number.NaN;
  };
}

/** A cell read between its corners and beyond them, one axis after the other, the last one first. */
function reader({ axes, total }: RatingTable): (o: number, w: number, d: number, f: number) => number {
  const corners = Float64Array.from(total, (corner) => corner ?? Number.NaN);
  const work = new Float64Array(corners.length);
  const starts = new Float64Array(4);
  const widths = new Float64Array(4);
  axisOrder.forEach((axis, i) => {
    const [low, high] = axes[axis];
    if (low === undefined || high === undefined) return;
    starts[i] = low;
    widths[i] = high - low;
  });
  return (outdoors, wetBulb, dryBulb, flow) => {
    let size = corners.length;
    for (let i = 0; i < size; i++) work[i] = corners[i] as number;
    for (let axis = 3; axis >= 0; axis--) {
      const width = widths[axis] as number;
      if (width === 0) continue;
      const at = axis === 0 ? outdoors : axis === 1 ? wetBulb : axis === 2 ? dryBulb : flow;
      const share = (at - (starts[axis] as number)) / width;
      size /= 2;
      for (let i = 0; i < size; i++) {
        const low = work[2 * i] as number;
        work[i] = low + share * ((work[2 * i + 1] as number) - low);
      }
    }
    return work[0] as number;
  };
}
