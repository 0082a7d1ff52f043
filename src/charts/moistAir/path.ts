/** Going along a polyline. */
import type { Point } from '../shapes.ts';

export function lengthOf(points: readonly Point[]): number {
  let length = 0;
  for (let i = 1; i < points.length; i++) length += distance(points[i - 1]!, points[i]!);
  return length;
}

export const distance = ([x1, y1]: Point, [x2, y2]: Point): number => Math.hypot(x2 - x1, y2 - y1);

/** The place `at` px along a line (from its end when negative), and the angle of the line there, degrees, read from the left. */
export function along(points: readonly Point[], at: number): { x: number; y: number; angle: number } {
  const length = lengthOf(points);
  let left = Math.min(length, Math.max(0, at < 0 ? length + at : at));
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [points[i - 1]!, points[i]!];
    const piece = distance(from, to);
    if (left <= piece || i === points.length - 1) {
      const share = piece === 0 ? 0 : left / piece;
      const angle = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
      return { x: from[0] + share * (to[0] - from[0]), y: from[1] + share * (to[1] - from[1]), angle: upright(angle) };
    }
    left -= piece;
  }
  const [x, y] = points[0] ?? [0, 0];
  return { x, y, angle: 0 };
}

/** The point `distance` px away in a direction. */
export function onward([x, y]: Point, angle: number, distance: number): Point {
  const turn = (angle * Math.PI) / 180;
  return [x + distance * Math.cos(turn), y + distance * Math.sin(turn)];
}

/** So that a text is never upside down. */
const upright = (angle: number): number => (angle > 90 ? angle - 180 : angle <= -90 ? angle + 180 : angle);
