/** The bands of a surface as a scale, with what the table says, what should be made, and what was measured, on it. */
import { valueScaleWords as say } from '../../words/en/expectedChart.ts';
import { textWidth } from '../box.ts';
import { linear, oblique } from '../scale.ts';
import { type Paper, tenth, type Word, word } from '../shapes.ts';
import { rectangle } from './contourLabels.ts';
import type { SurfaceDrawing, SurfaceStroke } from './pens.ts';
import { amountText, endsText, inkOf, type Levels, type SurfaceScale } from './scale.ts';
import type { Measured } from './sliceFrame.ts';

export interface ValueScaleOptions {
  readonly scale: SurfaceScale;
  readonly levels: Levels;
  readonly width: number;
  /** What the table says at the place; `null` where it says nothing. */
  readonly table: number | null;
  /** The table is an estimate from published curves. */
  readonly estimated: boolean;
  /** What this system should make there, after every step. */
  readonly should: number | null;
  readonly measured: Measured | null;
}

const letter = 14;
const rowHeight = 22;
const strip = 16;

export function valueScale(options: ValueScaleOptions): SurfaceDrawing & Paper {
  const { scale, levels, width, table, should, measured } = options;
  const above = [table, should].filter((value) => value !== null).length;
  const top = 4 + above * rowHeight + 6;
  const foot = top + strip;
  const extremes = [table, should, measured?.value, ...(measured?.range ?? [])].filter(
    (value) => typeof value === 'number',
  );
  const domain = [Math.min(levels.range[0], ...extremes), Math.max(levels.range[1], ...extremes)] as const;
  const x = linear(domain, [8, width - 8]);
  const strokes: SurfaceStroke[] = [...bands(levels, domain, x, top)];
  const words: Word[] = [...numbers(levels, x, foot)];
  let row = 0;
  /** `other`: the mark that the words keep away from. */
  const mark = (value: number, pen: 'line-should' | 'line-scale', text: string, other: number | null) => {
    const y = 4 + row * rowHeight + letter / 2;
    row++;
    strokes.push({ pen, d: `M${tenth(x(value))} ${tenth(y - letter / 2)}V${top}` });
    words.push(beside(x(value), y, text, width, other === null || value >= other));
  };
  if (should !== null) mark(should, 'line-should', say.should(amountText(scale, should)), table);
  if (table !== null) {
    const said = options.estimated ? say.curves : say.table;
    mark(table, 'line-scale', said(amountText(scale, table)), should);
    strokes.push({ pen: 'dot', d: disc(x(table), top) });
  }
  const measuredRows = measured ? (measured.range ? 2 : 1) : 0;
  const height = foot + 26 + (measured ? 26 : 0) + measuredRows * rowHeight;
  if (measured) {
    const y = foot + 30;
    const below = (text: string, line: number) =>
      beside(x(measured.value), y + 34 + line * rowHeight, text, width, true);
    strokes.push(...measuredStrokes(x, measured, y));
    words.push(below(say.measured(amountText(scale, measured.value)), 0));
    if (measured.range) words.push({ ...below(say.between(...endsText(scale, measured.range)), 1), weight: 'plain' });
  }
  return { width, height, letter, plot: { left: 8, right: width - 8, top, bottom: foot }, strokes, words };
}

function bands(
  levels: Levels,
  [low, high]: readonly [number, number],
  x: (si: number) => number,
  top: number,
): SurfaceStroke[] {
  const edges = [low, ...levels.values, high];
  const parts = edges.slice(1).map((to, band): SurfaceStroke => {
    const from = edges[band] as number;
    return { pen: `band-${inkOf(band, levels)}`, d: rectangle(x(from), top, x(to) - x(from), strip) };
  });
  const ticks = levels.values.map((value) => `M${tenth(x(value))} ${top}v${strip + 5}`).join('');
  return [
    ...parts,
    { pen: 'line-scale', d: ticks },
    { pen: 'outline', d: rectangle(x(low), top, x(high) - x(low), strip) },
  ];
}

function numbers({ values, texts }: Levels, x: (si: number) => number, foot: number): Word[] {
  const step = values.length < 2 ? 99 : x(values[1] as number) - x(values[0] as number);
  const wide = Math.max(...texts.map((text) => textWidth(text, letter)));
  const every = Math.max(1, Math.ceil((wide + 8) / step));
  return values.flatMap((value, i) =>
    i % every === 0 ? [word(texts[i] as string, x(value), foot + 15, { anchor: 'middle' })] : [],
  );
}

/** Words beside an upright mark, on the side that is wished for or has the room; on a very narrow page over the mark. */
function beside(x: number, y: number, text: string, width: number, rightFirst: boolean): Word {
  const wide = textWidth(text, letter);
  const [right, left] = [x + 7, x - 7 - wide];
  const [first, second] = rightFirst ? [right, left] : [left, right];
  const fits = [first, second].find((start) => start >= 0 && start + wide <= width);
  const start = fits ?? Math.min(Math.max(0, first), Math.max(0, width - wide));
  return word(text, start, y, { clear: true, weight: 'strong' });
}

function measuredStrokes(x: (si: number) => number, { value, range }: Measured, y: number): SurfaceStroke[] {
  const mark: SurfaceStroke = { pen: 'line-measured', d: `M${tenth(x(value))} ${y - 4}v${22}` };
  if (!range) return [mark];
  const [low, high] = [x(range[0]), x(range[1])];
  const area = rectangle(low, y, high - low, 14);
  return [
    { pen: 'region', d: area },
    { pen: 'outline', d: area },
    mark,
    { pen: 'line-dimension', d: `M${tenth(low)} ${y + 20}H${tenth(high)}` },
    { pen: 'line-end', d: oblique(low, y + 20) + oblique(high, y + 20) },
  ];
}

const disc = (x: number, y: number) => `M${tenth(x - 4.5)} ${y}a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0 -9 0Z`;
