/** What lies off the plot is cut away. */
import type { Paper, Point } from './shapes.ts';

type Plotted = Pick<Paper, 'plot'>;

interface Edge {
  readonly inside: (point: Point) => boolean;
  readonly meet: (a: Point, b: Point) => Point;
}

function edgesOf({ plot: { left, right, top, bottom } }: Plotted): Edge[] {
  const upright = (x: number) => (a: Point, b: Point) =>
    [x, a[1] + ((x - a[0]) / (b[0] - a[0])) * (b[1] - a[1])] as const;
  const level = (y: number) => (a: Point, b: Point) =>
    [a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]), y] as const;
  return [
    { inside: ([x]) => x >= left, meet: upright(left) },
    { inside: ([x]) => x <= right, meet: upright(right) },
    { inside: ([, y]) => y >= top, meet: level(top) },
    { inside: ([, y]) => y <= bottom, meet: level(bottom) },
  ];
}

export function onPlot({ plot }: Plotted, [x, y]: Point): boolean {
  return x >= plot.left && x <= plot.right && y >= plot.top && y <= plot.bottom;
}

/** The part of a polygon that lies on the plot (Sutherland and Hodgman). */
export function clipPolygon(frame: Plotted, points: readonly Point[]): readonly Point[] {
  return edgesOf(frame).reduce<readonly Point[]>((ring, { inside, meet }) => {
    return ring.flatMap((point, i) => {
      const before = ring[(i + ring.length - 1) % ring.length]!;
      const crossing = inside(point) === inside(before) ? [] : [meet(before, point)];
      return inside(point) ? [...crossing, point] : crossing;
    });
  }, points);
}

/** The part of a straight line that lies on the plot; `null` when none does. */
export function clipLine(frame: Plotted, from: Point, to: Point): readonly [Point, Point] | null {
  let [a, b] = [from, to];
  for (const { inside, meet } of edgesOf(frame)) {
    if (!inside(a) && !inside(b)) return null;
    if (!inside(a)) a = meet(a, b);
    else if (!inside(b)) b = meet(a, b);
  }
  return [a, b];
}
