/** The cell of a table that a place is read from, with its figures at its corners. */
import type { RatingTable } from '../../calc/types.ts';
import { surfaceWords } from '../../words/en/expectedChart.ts';
import { type Box, textWidth, touch } from '../box.ts';
import { tenth, type Word, word } from '../shapes.ts';
import { rectangle } from './contourLabels.ts';
import { type SurfaceFrame, xOf, yOf } from './frame.ts';
import type { SurfaceStroke } from './pens.ts';
import { type Air, fieldOf, type Read, readTable } from './reading.ts';
import { figureText, type SurfaceScale } from './scale.ts';

const figureBox = { wide: { width: 46, height: 24 }, narrow: { width: 38, height: 22 } } as const;

interface Cell {
  readonly strokes: readonly SurfaceStroke[];
  readonly words: readonly Word[];
  readonly boxes: readonly Box[];
}

/** The printed rows and columns around the place; figures stand at its corners where there is room for them. */
export function cellOf(
  frame: SurfaceFrame,
  scale: SurfaceScale,
  { table, air, place }: Read,
  taken: readonly Box[],
): Cell {
  const cell = readTable(table, place, air)?.cell;
  if (!cell) return { strokes: [], words: [], boxes: [] };
  const ends = (axis: 'outdoorDryBulb' | 'enteringWetBulb') =>
    [...new Set(cell[axis])].map((row) => table.axes[axis][row] as number);
  const [columns, rows] = [ends('outdoorDryBulb'), ends('enteringWetBulb')];
  const [xs, ys] = [columns.map((at) => xOf(frame, at)), rows.map((at) => yOf(frame, at))];
  const [left, right, low, high] = [xs[0]!, xs.at(-1)!, ys[0]!, ys.at(-1)!];
  const outline: SurfaceStroke = {
    pen: 'line-cell',
    d: `M${tenth(left)} ${tenth(low)}H${tenth(right)}V${tenth(high)}H${tenth(left)}Z`,
  };
  const least = figureBox[frame.narrow ? 'narrow' : 'wide'];
  const roomy =
    (columns.length < 2 || right - left > least.width + 12) && (rows.length < 2 || low - high > least.height + 10);
  if (!roomy) return { strokes: [outline], words: [], boxes: [] };
  const field = fieldOf(table, scale.quantity, air);
  const figures = rows.flatMap((enteringWetBulb, j) =>
    columns.flatMap((outdoorDryBulb, i) => {
      const si = field({ outdoorDryBulb, enteringWetBulb });
      if (Number.isNaN(si)) return [];
      const one = word(figureText(scale, si), xs[i]!, ys[j]!, { anchor: 'middle', weight: 'strong' });
      const width = Math.max(least.width, textWidth(one.text, frame.letter) + 8);
      return [{ one, box: { x: one.x, y: one.y, width, height: least.height, angle: 0 } }];
    }),
  );
  // At the edge of the table a contour may be written where a corner is: its label stays.
  const free = figures.filter(({ box }) => !taken.some((other) => touch(box, other, 1)));
  const boxes = free.map(({ box }) => box);
  const words = free.map(({ one }) => one);
  const frames = boxes
    .map(({ x, y, width, height }) => rectangle(x - width / 2, y - height / 2, width, height))
    .join('');
  // Figures that the table prints stand in a frame, as typed; those that are worked out from it do not.
  const pen = isPrinted(table, scale, air) ? 'outline blank' : 'blank';
  return { strokes: [outline, { pen, d: frames }], words, boxes };
}

/** Whether the figures at the rows are those of the table, and not read between its airflows or moved to another dry bulb. */
export function isPrinted(
  { axes }: RatingTable,
  { quantity }: SurfaceScale,
  { dryAirFlow, enteringDryBulb }: Air,
): boolean {
  const on = (rows: readonly number[], at: number | undefined) =>
    rows.length === 0 || at === undefined || rows.some((row) => Math.abs(row / at - 1) < 1e-6);
  const ofDryBulb = quantity === 'sensible' || quantity === 'ratio' || axes.enteringDryBulb.length > 1;
  return on(axes.dryAirFlow, dryAirFlow) && (!ofDryBulb || on(axes.enteringDryBulb, enteringDryBulb));
}

/** How many figures a reading lies between. */
export function cellText(cell: Readonly<Record<string, readonly [number, number] | undefined>>): string {
  const figures = Object.values(cell).reduce((count, rows) => (rows && rows[0] !== rows[1] ? 2 * count : count), 1);
  return surfaceWords.cell[figures as keyof typeof surfaceWords.cell] ?? surfaceWords.cellMany;
}
