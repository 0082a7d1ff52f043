/** The oblique scale outside saturation on which enthalpies are read: a line beside the curve, a tick for each number. */

import { type Point, pathOf, type Stroke } from '../shapes.ts';
import type { ChartLine } from './families.ts';
import type { ChartFrame } from './frame.ts';
import { scaleDistance } from './labelPlaces.ts';

export function enthalpyScale(frame: ChartFrame, lines: readonly ChartLine[]): Stroke[] {
  const ticks = lines.flatMap(({ labels }) => labels.flatMap(({ tick }) => (tick ? [tick] : [])));
  const saturation = lines.find(({ family }) => family === 'saturation');
  if (ticks.length === 0) return [];
  const beside = saturation ? pathOf(parallel(saturation.points, scaleDistance(frame)).filter(within(frame))) : '';
  return [{ pen: 'line-scale', d: beside + ticks.map((points) => pathOf(points)).join('') }];
}

const within =
  ({ width, height }: ChartFrame) =>
  ([x, y]: Point) =>
    x > 2 && y > 18 && x < width && y < height;

/** A line beside a line, on its left as one goes along it. */
function parallel(points: readonly Point[], distance: number): Point[] {
  return points.map(([x, y], i) => {
    const [x1, y1] = points[Math.max(0, i - 1)]!;
    const [x2, y2] = points[Math.min(points.length - 1, i + 1)]!;
    const length = Math.hypot(x2 - x1, y2 - y1) || 1;
    return [x + ((y2 - y1) / length) * distance, y - ((x2 - x1) / length) * distance];
  });
}
