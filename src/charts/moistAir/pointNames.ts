/**
 * The names of points, each beside its own: right above, left above, right below, left below, the first that is free. Where
 * points are few and a line passes between them, a name may also stand a little farther off.
 */

import type { Box } from '../box.ts';
import { block, placing, unit } from '../placing.ts';
import type { Anchor, Point, Word } from '../shapes.ts';
import { axisBoxes } from './axes.ts';
import type { ChartFrame } from './frame.ts';

export interface NamedPlace {
  readonly place: Point;
  readonly name?: string | undefined;
}

export function pointNames(
  frame: ChartFrame,
  points: readonly NamedPlace[],
  taken: readonly Box[] = [],
  few = false,
): Word[] {
  const size = unit(frame);
  const marks = points.map(({ place: [x, y] }) => ({ x, y, width: 12 * size, height: 12 * size, angle: 0 }));
  const place = placing(frame, [...axisBoxes(frame), ...marks, ...taken]);
  return points.flatMap(({ place: [x, y], name }) => {
    if (!name) return [];
    const at = (dx: number, dy: number, anchor: Anchor) =>
      block(frame, [x + dx * size, y + dy * size], [name], anchor, true);
    const beside = [at(9, -14, 'start'), at(-9, -14, 'end'), at(9, 14, 'start'), at(-9, 14, 'end')];
    const over = [at(9, -24, 'start'), at(0, -22, 'middle'), at(9, -34, 'start')];
    const farther = [...over, at(9, 24, 'start'), at(0, 22, 'middle'), at(9, 34, 'start')];
    return place(few ? [...beside, ...farther] : beside);
  });
}
