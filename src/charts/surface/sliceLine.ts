/** The line of a slice: the figure along the table, how far it may be out, and its printed rows. */
import type { Box } from '../box.ts';
import { type Point, pathOf, tenth } from '../shapes.ts';
import type { SurfaceStroke } from './pens.ts';
import type { SliceFrame } from './sliceFrame.ts';

/** A figure of the line, SI. */
interface Sample {
  readonly at: number;
  readonly value: number;
}

/** The figure along the table, sampled between its rows too, since not every figure is straight there. */
export function lineOf(
  { x, y }: SliceFrame,
  rows: readonly number[],
  field: (at: number) => number,
): { d: string; points: readonly Sample[]; boxes: Box[] } {
  const parts = Math.max(1, Math.round(24 / rows.length));
  const places = rows.flatMap((row, i) => {
    const next = rows[i + 1];
    return next === undefined ? [row] : Array.from({ length: parts }, (_, j) => row + (j / parts) * (next - row));
  });
  const pieces: Point[][] = [[]];
  const points: Sample[] = [];
  for (const at of places) {
    const value = field(at);
    if (Number.isNaN(value)) pieces.push([]);
    else {
      pieces.at(-1)!.push([x(at), y(value)]);
      points.push({ at, value });
    }
  }
  return {
    points,
    d: pieces.map((piece) => (piece.length > 1 ? pathOf(piece) : '')).join(''),
    boxes: pieces.flat().map(([px, py]) => ({ x: px, y: py, width: 10, height: 10, angle: 0 })),
  };
}

/** How far published curves may be out along the line; nothing for a maker’s table. */
export function bandOf(
  { x, y }: SliceFrame,
  points: readonly Sample[],
  doubt: (at: number) => number,
): readonly SurfaceStroke[] {
  const edge = (side: 1 | -1) => points.map(({ at, value }): Point => [x(at), y(value * (1 + side * doubt(at)))]);
  if (points.length < 2 || points.every(({ at }) => doubt(at) === 0)) return [];
  const [high, low] = [edge(1), edge(-1)];
  return [
    { pen: 'region-should', d: `${pathOf([...high, ...low.toReversed()])}Z` },
    { pen: 'line-scale', d: pathOf(high) + pathOf(low) },
  ];
}

/** A cross on every printed row. */
export function crosses({ x, y }: SliceFrame, rows: readonly number[], field: (at: number) => number): string {
  return rows
    .map((row) => [x(row), y(field(row))] as const)
    .filter(([, py]) => !Number.isNaN(py))
    .map(([px, py]) => `M${tenth(px - 4)} ${tenth(py)}h8M${tenth(px)} ${tenth(py - 4)}v8`)
    .join('');
}
