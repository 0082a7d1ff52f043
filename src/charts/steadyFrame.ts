/** The geometry of a steadiness plot: its scales and its lines. */
import { ticks } from 'd3-array';
import { linear, px } from './scale.ts';

/** Minutes before the last reading (negative), and the capacity relative to its mean over the last window, less one. */
export interface SteadyPoint {
  readonly minutes: number;
  readonly value: number;
}

export const steadyTop = 30;
export const steadyAxis = 190;

/** Three times what the last window needs: of the way there only the end matters, and what lies beyond runs along the edge. */
const reachOf = (points: readonly SteadyPoint[]) =>
  Math.min(0.6, Math.max(0.04, ...points.map(({ value }) => 3 * Math.abs(value))));

/** `window`: the minute at which the last window begins. `shown` are the points in it. */
export function steadyFrame({
  points,
  window,
  width,
}: {
  readonly points: readonly SteadyPoint[];
  readonly window: number;
  readonly width: number;
}) {
  const from = Math.min(-1, points[0]?.minutes ?? -1);
  const shown = points.filter(({ minutes }) => minutes >= window);
  const reach = reachOf(shown);
  const x = linear([from, 0], [54, width - 14]);
  const scale = linear([-reach, reach], [steadyAxis, steadyTop]);
  const y = (value: number) => scale(Math.max(-reach, Math.min(reach, value)));
  return {
    from,
    shown,
    x,
    y,
    path: (some: readonly SteadyPoint[]) =>
      some.length === 0 ? '' : `M${some.map(({ minutes, value }) => `${px(x(minutes))} ${px(y(value))}`).join('L')}`,
    /** The value of the point nearest to a moment. */
    valueAt: (moment: number) =>
      points.reduce(
        (best, one) => (Math.abs(one.minutes - moment) < Math.abs(best.minutes - moment) ? one : best),
        points[0] ?? { minutes: 0, value: 0 },
      ).value,
    times: ticks(from, 0, width > 500 ? 8 : 5),
    levels: ticks(-reach, reach, 4),
  };
}
