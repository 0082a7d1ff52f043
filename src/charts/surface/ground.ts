/** What does not move on a surface while its point is moved: bands, contours and their labels, the table’s rows, the scales. */
import { surfaceWords } from '../../words/en/expectedChart.ts';
import { type Box, boxOf } from '../box.ts';
import { pathOf, tenth, type Word, word } from '../shapes.ts';
import { contourLabels, paperBehind, rectangle } from './contourLabels.ts';
import type { Bands } from './contours.ts';
import { type SurfaceFrame, xOf, yOf } from './frame.ts';
import type { SurfaceDrawing, SurfaceStroke } from './pens.ts';
import { inkOf, type Levels, type SurfaceScale } from './scale.ts';

/** The bands, drawn over one another from the least to the most. What reaches beyond the table goes under the rim. */
export function bandStrokes({ inner }: SurfaceFrame, { above }: Bands, levels: Levels): readonly SurfaceStroke[] {
  const all = rectangle(inner.left, inner.top, inner.right - inner.left, inner.bottom - inner.top);
  return [all, ...above].map((d, band) => ({ pen: `band-${inkOf(band, levels)}` as const, d }));
}

/** Everything over the bands. */
export function ground(frame: SurfaceFrame, bands: Bands, scale: SurfaceScale): SurfaceDrawing {
  const outside = outsideWord(frame);
  const labels = contourLabels(frame, bands.lines, [boxOf(outside, frame.letter)]);
  return {
    strokes: [
      { pen: 'line-contour', d: bands.lines.flatMap(({ pieces }) => pieces.map((piece) => pathOf(piece))).join('') },
      ...holeStrokes(bands),
      { pen: 'blank', d: rim(frame) },
      { pen: 'region-outside', d: rim(frame) },
      { pen: 'blank', d: paperBehind([...labels, outside], frame.letter) },
      { pen: 'line-dimension', d: crosses(frame) },
      { pen: 'outline', d: box(frame.inner) + box(frame.plot) },
      { pen: 'line-scale', d: tickMarks(frame) },
    ],
    words: [...labels, outside, ...titles(frame, scale)],
  };
}

const box = ({ left, top, right, bottom }: SurfaceFrame['plot']) => rectangle(left, top, right - left, bottom - top);

/** The rim between the table and the edge of the plot: the inner box is drawn the other way round and so stays free. */
function rim({ plot, inner }: SurfaceFrame): string {
  return box(plot) + rectangle(inner.right, inner.top, inner.left - inner.right, inner.bottom - inner.top);
}

function holeStrokes({ holes }: Bands): SurfaceStroke[] {
  if (holes.length === 0) return [];
  const d = holes.map((hole) => pathOf(hole, true)).join('');
  return [
    { pen: 'blank', d },
    { pen: 'region-outside', d },
  ];
}

/** A small cross where a printed row meets a printed column. */
function crosses(frame: SurfaceFrame): string {
  const { outdoor, wetBulb } = frame.rows;
  return wetBulb
    .flatMap((wet) =>
      outdoor.map((dry) => {
        const [x, y] = [tenth(xOf(frame, dry)), tenth(yOf(frame, wet))];
        return `M${tenth(x - 3)} ${y}h6M${x} ${tenth(y - 3)}v6`;
      }),
    )
    .join('');
}

function tickMarks(frame: SurfaceFrame): string {
  const { plot, ticks } = frame;
  const feet = ticks.outdoor.map(({ at }) => `M${tenth(xOf(frame, at))} ${tenth(plot.bottom)}v6`);
  const sides = ticks.wetBulb.map(({ at }) => `M${tenth(plot.left)} ${tenth(yOf(frame, at))}h-6`);
  return feet.join('') + sides.join('');
}

/** The numbers of the scales; those that touch a number of the place that is read are left off. */
export function tickWords(frame: SurfaceFrame): readonly Word[] {
  return [
    ...frame.ticks.outdoor.map(({ at, text }) => outdoorWord(frame, at, text)),
    ...frame.ticks.wetBulb.map(({ at, text }) => wetBulbWord(frame, at, text)),
  ];
}

export const outdoorWord = (frame: SurfaceFrame, at: number, text: string, more: Partial<Word> = {}): Word =>
  word(text, xOf(frame, at), frame.plot.bottom + 18, { anchor: 'middle', ...more });

export const wetBulbWord = (frame: SurfaceFrame, at: number, text: string, more: Partial<Word> = {}): Word =>
  word(text, frame.plot.left - 10, yOf(frame, at), { anchor: 'end', ...more });

function titles({ plot, system, width, height }: SurfaceFrame, { unit }: SurfaceScale): Word[] {
  const quiet = { weight: 'quiet' } as const;
  return [
    word(surfaceWords.wetBulb[system], 0, 12, quiet),
    // On a very narrow page the unit alone.
    word(width < 340 ? unit : surfaceWords.contours(unit), width, 12, { ...quiet, anchor: 'end' }),
    word(surfaceWords.outdoors[system], (plot.left + plot.right) / 2, height - 9, { ...quiet, anchor: 'middle' }),
  ];
}

function outsideWord({ plot, inner, letter }: SurfaceFrame): Word {
  return word(
    surfaceWords.outside,
    plot.left + 12,
    (inner.bottom + plot.bottom) / 2 + (inner.bottom + letter > plot.bottom ? 0 : 1),
  );
}

/** The room that the still words take: nothing that moves is written there. */
export const groundBoxes = (drawing: SurfaceDrawing, letter: number): readonly Box[] =>
  drawing.words.map((one) => boxOf(one, letter));
