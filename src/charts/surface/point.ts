/** What moves on a surface: the place that is read, the cell that it is read from with its figures, and what it comes to. */
import { formatNumber } from '../../job/format.ts';
import { displayUnit, fromSi } from '../../job/units.ts';
import { surfaceWords } from '../../words/en/expectedChart.ts';
import { type Box, boxOf, textWidth, touch } from '../box.ts';
import { type Point, tenth, type Word, word } from '../shapes.ts';
import { cellOf, cellText } from './cell.ts';
import { rectangle } from './contourLabels.ts';
import { isOn, type SurfaceFrame, xOf, yOf } from './frame.ts';
import { outdoorWord, tickWords, wetBulbWord } from './ground.ts';
import type { SurfaceDrawing, SurfaceStroke } from './pens.ts';
import { type Place, type Read, readTable } from './reading.ts';
import { amountText, type SurfaceScale } from './scale.ts';

/** Paper around the words of the label, px. */
const pad = 8;

/** The drawing over the ground; `taken` is where the ground has words. */
export function pointDrawing(
  frame: SurfaceFrame,
  scale: SurfaceScale,
  read: Read,
  taken: readonly Box[],
): SurfaceDrawing {
  const { place } = read;
  const axisWords = placeWords(frame, place);
  const ticks = tickWords(frame).filter((one) => !axisWords.some((own) => near(frame, one, own)));
  if (!isOn(frame, place)) return { strokes: [], words: tickWords(frame) };
  const [x, y] = [xOf(frame, place.outdoorDryBulb), yOf(frame, place.enteringWetBulb)];
  const cell = cellOf(frame, scale, read, taken);
  const label = labelOf(frame, scale, read, [x, y], [...taken, ...cell.boxes]);
  return {
    strokes: [
      { pen: 'line-scale', d: `M${tenth(frame.plot.left)} ${tenth(y)}H${tenth(x)}V${tenth(frame.plot.bottom)}` },
      ...cell.strokes,
      ...label.strokes,
      ...pointStrokes(frame, read, [x, y]),
    ],
    words: [...ticks, ...axisWords, ...cell.words, ...label.words],
  };
}

/** The job’s own place is a dot; one that is tried out is a ring, and the dot stays where it was. */
function pointStrokes(frame: SurfaceFrame, { job }: Read, at: Point): readonly SurfaceStroke[] {
  if (!job)
    return [
      { pen: 'ring', d: disc(at, 9) },
      { pen: 'dot', d: disc(at, 6) },
    ];
  const own: Point = [xOf(frame, job.outdoorDryBulb), yOf(frame, job.enteringWetBulb)];
  return [
    ...(isOn(frame, job) ? [{ pen: 'ring', d: disc(own, 7) } as const, { pen: 'dot', d: disc(own, 4) } as const] : []),
    { pen: 'aim', d: disc(at, 7) },
  ];
}

/** The place in figures, at the two scales. */
function placeWords(frame: SurfaceFrame, { outdoorDryBulb, enteringWetBulb }: Place): readonly Word[] {
  const unit = displayUnit.temperature[frame.system];
  const text = (si: number) => formatNumber(fromSi(si, unit), 1).replace(/\.0$/, '');
  const strong = { weight: 'strong' } as const;
  return [
    outdoorWord(frame, outdoorDryBulb, text(outdoorDryBulb), strong),
    wetBulbWord(frame, enteringWetBulb, text(enteringWetBulb), strong),
  ];
}

const near = ({ letter }: SurfaceFrame, one: Word, other: Word) => touch(boxOf(one, letter), boxOf(other, letter), 4);

/** What the place comes to, beside it, with a leader. */
function labelOf(
  frame: SurfaceFrame,
  scale: SurfaceScale,
  { table, air, place, job }: Read,
  [x, y]: Point,
  taken: readonly Box[],
): { strokes: readonly SurfaceStroke[]; words: readonly Word[] } {
  const reading = readTable(table, place, air);
  const si = reading?.[scale.quantity] ?? null;
  if (!reading || si === null) return { strokes: [], words: [] };
  const amount = amountText(scale, si);
  const said = reading.outside.length > 0 ? surfaceWords.outside : cellText(reading.cell);
  const here = job ? surfaceWords.tried(amount) : surfaceWords.jobHere(amount);
  const texts = frame.narrow ? [amount] : [here, said];
  const size = {
    width: Math.max(...texts.map((text) => textWidth(text, frame.letter))),
    height: 17 * texts.length - 3,
  };
  const kept = [...taken, { x, y, width: 22, height: 22, angle: 0 }, ...hairs(frame, [x, y])];
  const area = places([x, y], size).find(
    (box) => isInside(box, frame.inner) && !kept.some((one) => touch(box, one, 3)),
  );
  if (!area) return { strokes: [], words: [] };
  const [left, top] = [area.x - area.width / 2, area.y - area.height / 2];
  const foot = Math.min(area.x + area.width / 2 - 6, Math.max(left + 6, x));
  return {
    strokes: [
      { pen: 'line-scale', d: `M${tenth(x)} ${tenth(y)}L${tenth(foot)} ${tenth(area.y)}` },
      { pen: 'blank', d: rectangle(left, top, area.width, area.height) },
    ],
    words: texts.map((text, i) =>
      word(text, left + pad, top + pad + 7 + 17 * i, { weight: i === 0 ? 'strong' : 'plain' }),
    ),
  };
}

/** Where the label may stand, the nearest first: to both sides, below and above. */
function places([x, y]: Point, size: { width: number; height: number }): Box[] {
  const [width, height] = [size.width + 2 * pad, size.height + 2 * pad];
  return [14, 32, 60, 90, 120, 150].flatMap((off) =>
    [1, -1].flatMap((up) =>
      [14, 60, -width / 2 - 4].flatMap((aside) =>
        [1, -1].map((side) => ({
          x: x + side * (aside + width / 2),
          y: y - up * (off + height / 2),
          width,
          height,
          angle: 0,
        })),
      ),
    ),
  );
}

const isInside = ({ x, y, width, height }: Box, { left, right, top, bottom }: SurfaceFrame['plot']) =>
  x - width / 2 > left + 3 && x + width / 2 < right - 3 && y - height / 2 > top + 3 && y + height / 2 < bottom - 3;

/** The two thin lines to the scales: no words are written on them. */
const hairs = ({ plot }: SurfaceFrame, [x, y]: Point): readonly Box[] => [
  { x: (plot.left + x) / 2, y, width: x - plot.left, height: 2, angle: 0 },
  { x, y: (plot.bottom + y) / 2, width: 2, height: plot.bottom - y, angle: 0 },
];

const disc = ([x, y]: Point, r: number) =>
  `M${tenth(x - r)} ${tenth(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
