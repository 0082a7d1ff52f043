/** What each contour stands for, written where it leaves the table: to the right, above, else on one of the other sides. */
import { type Box, boxOf, textWidth, touch } from '../box.ts';
import { type Point, type Word, word } from '../shapes.ts';
import type { ContourLine } from './contours.ts';
import type { SurfaceFrame } from './frame.ts';

type Side = 'right' | 'top' | 'bottom' | 'left';
const sides: readonly Side[] = ['right', 'top', 'bottom', 'left'];

/** The labels that find room. Every contour has one, if it reaches an edge at all. */
export function contourLabels(frame: SurfaceFrame, lines: readonly ContourLine[], taken: readonly Box[]): Word[] {
  const boxes = [...taken];
  return lines.flatMap(({ text, pieces }) => {
    const ends = [...pieces].sort((a, b) => lengthOf(b) - lengthOf(a)).flatMap((piece) => [piece[0]!, piece.at(-1)!]);
    const places = sides.flatMap((side) =>
      ends.filter(isOnSide(frame, side)).map((end) => beside(frame, side, end, text)),
    );
    const found = places.find((one) => !boxes.some((box) => touch(box, boxOf(one, frame.letter), 6)));
    if (!found) return [];
    boxes.push(boxOf(found, frame.letter));
    return [found];
  });
}

const lengthOf = (points: readonly Point[]) =>
  points.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - points[i]![0], y - points[i]![1]), 0);

const isOnSide =
  ({ inner }: SurfaceFrame, side: Side) =>
  ([x, y]: Point) =>
    Math.abs((side === 'left' || side === 'right' ? x : y) - inner[side]) < 0.2;

function beside({ inner, plot, letter }: SurfaceFrame, side: Side, [x, y]: Point, text: string): Word {
  const half = textWidth(text, letter) / 2;
  const across = Math.min(plot.right - half - 5, Math.max(plot.left + half + 5, x));
  const up = Math.min(plot.bottom - 12, Math.max(plot.top + 12, y));
  const strong = { weight: 'strong', anchor: 'middle' } as const;
  const gap = 9;
  if (side === 'right') return word(text, inner.right + gap, up, { weight: 'strong' });
  if (side === 'left') return word(text, inner.left - gap, up, { weight: 'strong', anchor: 'end' });
  return word(text, across, side === 'top' ? inner.top - gap - letter / 2 : inner.bottom + gap + letter / 2, strong);
}

/** Paper behind words that stand on a hatch or on bands, path data. */
export function paperBehind(words: readonly Word[], letter: number, pad = 4): string {
  return words
    .map((one) => boxOf(one, letter))
    .map(({ x, y, width, height }) =>
      rectangle(x - width / 2 - pad, y - height / 2 - pad + 1, width + 2 * pad, height + 2 * pad - 2),
    )
    .join('');
}

export const rectangle = (x: number, y: number, width: number, height: number): string =>
  `M${tenths(x)} ${tenths(y)}h${tenths(width)}v${tenths(height)}h${tenths(-width)}Z`;

const tenths = (value: number) => Math.round(value * 10) / 10;
