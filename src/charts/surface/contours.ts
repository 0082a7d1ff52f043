/**
 * The bands of a surface and the lines between them. The field is sampled on the printed rows and some way between them, and
 * a little beyond the table, since a contour is a closed ring that runs along the edge of what was sampled; then it is cut.
 */
import { contours } from 'd3-contour';
import { clipLine } from '../clip.ts';
import { type Point, tenth } from '../shapes.ts';
import { type SurfaceFrame, xOf, yOf } from './frame.ts';
import type { Place } from './reading.ts';
import type { Levels } from './scale.ts';

/** A field sampled on lines that need not be evenly spaced. */
export interface Samples {
  /** Px, ascending. */
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** Row-major from the top left; `NaN` in a hole of the table. */
  readonly values: readonly number[];
}

export interface ContourLine {
  /** SI. */
  readonly value: number;
  readonly text: string;
  /** Its parts inside the table. */
  readonly pieces: readonly (readonly Point[])[];
}

export interface Bands {
  /** Path data of what lies above each level; it reaches a little beyond the table. */
  readonly above: readonly string[];
  readonly lines: readonly ContourLine[];
  /** Where the table has no figure, each as its corners. */
  readonly holes: readonly (readonly Point[])[];
}

/** How many parts each cell is sampled in: fewer while a hand moves. */
export type Detail = 'quick' | 'fine';
const samplesAcross: Readonly<Record<Detail, number>> = { quick: 8, fine: 32 };

export function sampled(frame: SurfaceFrame, field: (place: Place) => number, detail: Detail): Samples {
  const across = between(frame.rows.outdoor, samplesAcross[detail]);
  const up = between(frame.rows.wetBulb, samplesAcross[detail]).reverse();
  const values = up.flatMap((enteringWetBulb) =>
    across.map((outdoorDryBulb) => field({ outdoorDryBulb, enteringWetBulb })),
  );
  return { xs: across.map((at) => xOf(frame, at)), ys: up.map((at) => yOf(frame, at)), values };
}

/** The rows, lines between them, and one line beyond each end. */
function between(rows: readonly number[], most: number): number[] {
  const parts = Math.max(1, Math.round(most / (rows.length - 1)));
  const inner = rows.flatMap((row, i) => {
    const next = rows[i + 1];
    return next === undefined ? [row] : Array.from({ length: parts }, (_, j) => row + (j / parts) * (next - row));
  });
  const [first, second] = [inner[0] as number, inner[1] as number];
  const [last, before] = [inner.at(-1) as number, inner.at(-2) as number];
  return [first - (second - first), ...inner, last + (last - before)];
}

export function bandsOf(frame: SurfaceFrame, samples: Samples, levels: Levels): Bands {
  const { xs, ys, values } = samples;
  const size = (levels.range[1] - levels.range[0]) * 1e-7;
  // A level that is exactly the figure of a level field would kink at every sample: it is taken a hair higher.
  const generator = contours().size([xs.length, ys.length]);
  const rings = levels.values.map((value) =>
    generator
      .contour(values as number[], value + size)
      .coordinates.map((polygon) => polygon.map((ring) => ring.map((point) => placed(xs, ys, point)))),
  );
  return {
    above: rings.map((polygons) => polygons.flatMap((polygon) => polygon.map(ringPath)).join('')),
    lines: rings.map((polygons, i) => ({
      value: levels.values[i] as number,
      text: levels.texts[i] as string,
      pieces: polygons.flatMap((polygon) => polygon.flatMap((ring) => cut(frame, ring))),
    })),
    holes: holesOf(samples),
  };
}

/** A point of the generator, whose samples stand in the middle of unit squares, on the paper. */
function placed(xs: readonly number[], ys: readonly number[], point: readonly number[]): Point {
  return [onAxis(xs, (point[0] as number) - 0.5), onAxis(ys, (point[1] as number) - 0.5)];
}

function onAxis(axis: readonly number[], at: number): number {
  const held = Math.min(axis.length - 1, Math.max(0, at));
  const i = Math.min(axis.length - 2, Math.floor(held));
  const low = axis[i] as number;
  return low + (held - i) * ((axis[i + 1] as number) - low);
}

const ringPath = (ring: readonly Point[]) => `${openPath(straightened(ring))}Z`;
const openPath = (points: readonly Point[]) => `M${points.map(([x, y]) => `${tenth(x)} ${tenth(y)}`).join('L')}`;

/** The parts of a ring that run inside the table. */
function cut({ inner }: SurfaceFrame, ring: readonly Point[]): (readonly Point[])[] {
  const pieces: Point[][] = [];
  for (let i = 1; i < ring.length; i++) {
    const part = clipLine({ plot: inner }, ring[i - 1]!, ring[i]!);
    if (!part || same(part[0], part[1])) continue;
    const last = pieces.at(-1);
    if (last && same(last.at(-1)!, part[0])) last.push(part[1]);
    else pieces.push([part[0], part[1]]);
  }
  const [first, last] = [pieces[0], pieces.at(-1)];
  // The ring began in the middle of a part.
  if (first && last && first !== last && same(last.at(-1)!, first[0]!)) {
    pieces[0] = [...last, ...first.slice(1)];
    pieces.pop();
  }
  return pieces.map(straightened);
}

const same = ([a, b]: Point, [c, d]: Point) => Math.abs(a - c) < 1e-6 && Math.abs(b - d) < 1e-6;

/** Without the points that lie on the straight line between their neighbours, to a twentieth of a pixel. */
function straightened(points: readonly Point[]): readonly Point[] {
  const kept: Point[] = [];
  for (let i = 0; i < points.length; i++) {
    const [from, at, to] = [kept.at(-1), points[i]!, points[i + 1]];
    if (from && to && offLine(from, at, to) < 0.05) continue;
    kept.push(at);
  }
  return kept;
}

function offLine([x1, y1]: Point, [x, y]: Point, [x2, y2]: Point): number {
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length < 1e-9) return Math.hypot(x - x1, y - y1);
  return Math.abs((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)) / length;
}

/** Squares of samples of which one is missing. */
function holesOf({ xs, ys, values }: Samples): (readonly Point[])[] {
  const holes: Point[][] = [];
  const missing = (i: number, j: number) => Number.isNaN(values[j * xs.length + i]);
  for (let j = 1; j < ys.length; j++) {
    for (let i = 1; i < xs.length; i++) {
      if (!missing(i, j) && !missing(i - 1, j) && !missing(i, j - 1) && !missing(i - 1, j - 1)) continue;
      const [left, right, top, bottom] = [xs[i - 1]!, xs[i]!, ys[j - 1]!, ys[j]!];
      holes.push([
        [left, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ]);
    }
  }
  return holes;
}
