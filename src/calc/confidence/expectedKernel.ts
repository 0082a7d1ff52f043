import { flowFactor, onCurve } from '../airflowStep.ts';
import { blowerInside } from '../blowerHeat.ts';
import { standardPressureAtSeaLevel } from '../constants.ts';
import type { RatingHere } from '../expectedHere.ts';
import { axisOrder } from '../tableCheck.ts';
import type { RatingTable } from '../types.ts';
import { cellAround } from './cell.ts';

/** What the expectation hangs on: °C, dry-air flow in kg/s, Pa, W. */
export type ExpectedKernel = (
  outdoorDryBulb: number,
  enteringWetBulb: number,
  enteringDryBulb: number,
  dryAirFlow: number,
  pressure: number,
  blowerPower: number,
) => number;

/**
 * `expectedTotal` around one reading, W, for callers that ask a hundred thousand times: the same steps in the same order, on
 * the cell of the table alone, without an object. Not a number where nothing is left to expect.
 */
export function expectedKernel({ table, conditions, installation }: RatingHere): ExpectedKernel {
  const cell = cellAround(table, conditions);
  const read = reader(cell);
  const match = table.multipliers.indoorMatch ?? 1;
  const line = table.multipliers.lineLength ?? installation.lineSet?.factor ?? 1;
  const inside = blowerInside(table);
  const flows = table.axes.dryAirFlow;
  const flowKnown = conditions.dryAirFlow !== undefined;
  const stepped = flowKnown && (table.multipliers.airflow.length > 0 || flows.length === 1);
  const lowest = flows[0] ?? 0;
  const highest = flows.at(-1) ?? 0;
  return (outdoors, wetBulb, dryBulb, dryAirFlow, pressure, blowerPower) => {
    const flow = (dryAirFlow * standardPressureAtSeaLevel) / pressure;
    const atTemperatures = read(outdoors, wetBulb, dryBulb, flow);
    const step = stepped ? flowFactor(table, flow).total : 1;
    const gross = atTemperatures * match * step + inside;
    let thinner = 1;
    if (flowKnown && flows.length > 1) {
      const edge = Math.min(Math.max(dryAirFlow, lowest), highest);
      const covered = flow >= lowest && flow <= highest;
      thinner = covered
        ? (read(outdoors, wetBulb, dryBulb, edge) / atTemperatures) * onCurve(dryAirFlow / edge)
        : onCurve(dryAirFlow / flow);
      if (pressure === standardPressureAtSeaLevel) thinner = 1;
    } else if (stepped) thinner = flowFactor(table, dryAirFlow).total / step;
    const net = gross * line * thinner - blowerPower;
    return atTemperatures > 0 && net > 0 ? net : Number.NaN;
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
