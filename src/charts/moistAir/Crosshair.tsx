import { tenth } from '../shapes.ts';
import { type AirPoint, type ChartFrame, contains, xOf, yOf } from './frame.ts';

/** Thin lines from a point to the two scales. The words are `propertiesOf` the air, beside the chart. */
export function Crosshair({ frame, air }: { frame: ChartFrame; air: AirPoint | null }) {
  if (air === null || !contains(frame, air)) return null;
  const [x, y] = [tenth(xOf(frame, air.dryBulb)), tenth(yOf(frame, air.humidityRatio))];
  return <path class="line-scale" d={`M${x} ${tenth(frame.plot.bottom)}V${y}H${tenth(frame.plot.right)}`} />;
}
