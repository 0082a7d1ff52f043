/** Curves over dry bulb: where they cross, and as a polyline that a pen cannot tell from them. */
import type { Point } from '../shapes.ts';

/** How far a chord may leave its curve, px. */
const tolerance = 0.15;

/** Where a function that rises through zero between two arguments does so: bisection, to 1e-12 of the interval. */
export function rootOf(rises: (t: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 40; i++) {
    const middle = (a + b) / 2;
    if (rises(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** Points of a curve from one argument to the other, halved until every chord lies within the tolerance. */
export function sample(at: (t: number) => Point, from: number, to: number): Point[] {
  const start = at(from);
  const points = [start];
  divide(at, from, start, to, at(to), 0, points);
  return points;
}

function divide(
  at: (t: number) => Point,
  from: number,
  start: Point,
  to: number,
  end: Point,
  depth: number,
  points: Point[],
) {
  const middle = (from + to) / 2;
  const half = at(middle);
  const dx = end[0] - start[0];
  const dy = end[1] - start[1];
  const off = Math.abs((half[0] - start[0]) * dy - (half[1] - start[1]) * dx) / (Math.hypot(dx, dy) || 1);
  if (depth > 0 && (off < tolerance || depth > 10)) {
    points.push(end);
    return;
  }
  divide(at, from, start, middle, half, depth + 1, points);
  divide(at, middle, half, to, end, depth + 1, points);
}
