/** The room that a text takes, turned as it stands, and whether two of them touch. */
import type { Point, Word } from './shapes.ts';

export interface Box {
  /** Its middle, px. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Degrees, clockwise. */
  readonly angle: number;
}

/** Mean width of a character of the typeface, em; the height of a line is one em. */
const characterWidth = 0.56;

export const textWidth = (text: string, letter: number): number => text.length * characterWidth * letter;

export function boxOf(word: Pick<Word, 'text' | 'x' | 'y' | 'anchor' | 'angle'>, letter: number): Box {
  const width = textWidth(word.text, letter);
  const shift = word.anchor === 'start' ? width / 2 : word.anchor === 'end' ? -width / 2 : 0;
  const turn = (word.angle * Math.PI) / 180;
  return {
    x: word.x + shift * Math.cos(turn),
    y: word.y + shift * Math.sin(turn),
    width,
    height: letter,
    angle: word.angle,
  };
}

/** The room of a straight line with a margin on both sides. */
export function boxBetween([x1, y1]: Point, [x2, y2]: Point, margin: number): Box {
  return {
    x: (x1 + x2) / 2,
    y: (y1 + y2) / 2,
    width: Math.hypot(x2 - x1, y2 - y1),
    height: 2 * margin,
    angle: (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI,
  };
}

export function boxAround(points: readonly Point[]): Box {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { x: (left + right) / 2, y: (top + bottom) / 2, width: right - left, height: bottom - top, angle: 0 };
}

function cornersOf({ x, y, width, height, angle }: Box): [x: number, y: number][] {
  const turn = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const signs = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  return signs.map(([i, j]) => {
    const [a, b] = [(i * width) / 2, (j * height) / 2];
    return [x + a * cos - b * sin, y + a * sin + b * cos];
  });
}

/** Two turned boxes touch unless a line along one of their sides parts them by more than `gap` (separating axes). */
export function touch(a: Box, b: Box, gap = 0): boolean {
  const reach = (Math.hypot(a.width, a.height) + Math.hypot(b.width, b.height)) / 2 + gap;
  if (Math.abs(a.x - b.x) > reach || Math.abs(a.y - b.y) > reach) return false;
  const [first, second] = [cornersOf(a), cornersOf(b)];
  return [a.angle, a.angle + 90, b.angle, b.angle + 90].every((angle) => {
    const turn = (angle * Math.PI) / 180;
    const along = ([x, y]: [number, number]) => x * Math.cos(turn) + y * Math.sin(turn);
    const [p, q] = [first.map(along), second.map(along)];
    return Math.max(...p) + gap > Math.min(...q) && Math.max(...q) + gap > Math.min(...p);
  });
}

/** Whether a box lies wholly inside a drawing of this size. */
export function inside(box: Box, width: number, height: number): boolean {
  return cornersOf(box).every(([x, y]) => x >= 0 && y >= 0 && x <= width && y <= height);
}
