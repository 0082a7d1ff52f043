/** The marks of the line language, drawn around a place: the pen that goes with each is its kind. */
import type { Point, Stroke } from '../shapes.ts';
import { tenth } from '../shapes.ts';

/** What stands at a point of the chart. */
export type MarkKind = 'return' | 'supply' | 'coil' | 'state';

export function markStroke(kind: MarkKind, [x, y]: Point, size = 1): Stroke {
  const at = (dx: number, dy: number) => `M${tenth(x + dx * size)} ${tenth(y + dy * size)}`;
  const n = (length: number) => tenth(length * size);
  if (kind === 'return') return { pen: 'mark-return', d: `${at(-6, 0)}${circle(n(6))}` };
  if (kind === 'supply') return { pen: 'mark-supply', d: `${at(-5, -5)}h${n(10)}v${n(10)}h${n(-10)}Z` };
  if (kind === 'coil') return { pen: 'mark-coil', d: `${at(0, -6)}v${n(12)}${at(-6, 0)}h${n(12)}` };
  return { pen: 'dot', d: `${at(-4, 0)}${circle(n(4))}` };
}

const circle = (r: number) => `a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;

/** An arrow head on a line, its middle at this share of the length; none where the line is shorter than the head is long. */
export function arrowStroke(from: Point, to: Point, share = 0.6, size = 1): Stroke[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  if (length < 30 * size) return [];
  const [ux, uy] = [dx / length, dy / length];
  const [x, y] = [from[0] + share * dx, from[1] + share * dy];
  const corner = (along: number, across: number) =>
    `${tenth(x + (along * ux - across * uy) * size)} ${tenth(y + (along * uy + across * ux) * size)}`;
  return [{ pen: 'arrow', d: `M${corner(8, 0)}L${corner(-7, -6)}L${corner(-7, 6)}Z` }];
}

/** A dimension line with oblique ends. */
export function dimension([x1, y1]: Point, [x2, y2]: Point, size = 1): Stroke[] {
  const end = (x: number, y: number) =>
    `M${tenth(x - 4.2 * size)} ${tenth(y + 4.2 * size)}L${tenth(x + 4.2 * size)} ${tenth(y - 4.2 * size)}`;
  return [
    { pen: 'line-dimension', d: `M${tenth(x1)} ${tenth(y1)}L${tenth(x2)} ${tenth(y2)}` },
    { pen: 'line-end', d: end(x1, y1) + end(x2, y2) },
  ];
}
