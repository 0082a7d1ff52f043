/** One line through the place that is read: outdoor temperature or entering wet bulb across, the figure up. */
import type { RatingTable } from '../../calc/types.ts';
import { formatNumber } from '../../job/format.ts';
import type { System } from '../../job/types.ts';
import { displayUnit, fromSi } from '../../job/units.ts';
import { sliceWords, surfaceWords } from '../../words/en/expectedChart.ts';
import { type Box, boxOf, inside, touch } from '../box.ts';
import { block, placing } from '../placing.ts';
import { linear } from '../scale.ts';
import { type Paper, type Point, pathOf, tenth, type Word, word } from '../shapes.ts';
import { paperBehind, rectangle } from './contourLabels.ts';
import { axisOf, type Tick, ticksOf } from './frame.ts';
import type { SurfaceDrawing, SurfaceStroke } from './pens.ts';
import { type Air, estimateAt, fieldOf, type Place } from './reading.ts';
import { amountText, type Levels, type SurfaceScale } from './scale.ts';

export type Along = 'outdoorDryBulb' | 'enteringWetBulb';

/** A measured figure, SI, with its range where that is known. */
export interface Measured {
  readonly value: number;
  readonly range: readonly [low: number, high: number] | null;
}

export interface SliceOptions {
  readonly table: RatingTable;
  readonly along: Along;
  readonly air: Air;
  readonly place: Place;
  readonly scale: SurfaceScale;
  readonly levels: Levels;
  readonly system: System;
  readonly width: number;
  /** Drawn where the place is the job’s own. */
  readonly measured: Measured | null;
}

interface SliceFrame extends Paper {
  readonly range: readonly [number, number];
  readonly ticks: readonly Tick[];
  /** Where the table begins and ends, px. */
  readonly from: number;
  readonly to: number;
  readonly x: (at: number) => number;
  readonly y: (si: number) => number;
}

const rim = [24, 24] as const;
const height = 250;

function frameOf({ table, along, place, levels, measured, system, width }: SliceOptions): SliceFrame {
  const rows = table.axes[along];
  const plot = { left: 40, top: 30, right: width - 1, bottom: height - 50 };
  const axis = axisOf(rows, [place[along]], plot.right - plot.left, rim);
  const extremes = measured ? [measured.value, ...(measured.range ?? [])] : [];
  const [low, high] = levels.range;
  const values = [Math.min(low, ...extremes), Math.max(high, ...extremes)] as const;
  return {
    width,
    height,
    letter: 14,
    plot,
    range: axis.range,
    ticks: ticksOf(rows, axis.range, (plot.right - plot.left) / 52, system),
    from: plot.left + axis.from,
    to: plot.left + axis.to,
    x: linear(axis.range, [plot.left, plot.right]),
    y: linear(values, [plot.bottom, plot.top]),
  };
}

export function sliceDrawing(options: SliceOptions): SurfaceDrawing & Paper {
  const frame = frameOf(options);
  const { plot, letter } = frame;
  const { table, along, air, place, scale, levels } = options;
  const read = fieldOf(table, scale.quantity, air);
  const field = (at: number) => read({ ...place, [along]: at });
  const doubt = (at: number) => (scale.quantity === 'total' ? estimateAt(table, { ...place, [along]: at }, air) : 0);
  const rows = table.axes[along];
  const at = place[along];
  const here = field(at);
  const [x, y] = [frame.x(at), frame.y(here)];
  const known = !Number.isNaN(here) && at >= frame.range[0] && at <= frame.range[1];
  const own = known ? [ownWord(frame, options.system, at)] : [];
  const ticks = frame.ticks.map((tick) => word(tick.text, frame.x(tick.at), plot.bottom + 18, { anchor: 'middle' }));
  const shown = ticks.filter(
    (one) =>
      inside(boxOf(one, letter), frame.width, frame.height) &&
      !own.some((other) => touch(boxOf(one, letter), boxOf(other, letter), 4)),
  );
  const line = lineOf(frame, rows, field);
  const marks = options.measured && known ? measuredMarks(frame, x, options.measured) : noMarks;
  const labels = known ? labelsOf(frame, options, [x, y], here, [...line.boxes, ...marks.boxes]) : [];
  return {
    ...frame,
    strokes: [
      ...gridOf(frame, levels),
      ...outsideOf(frame),
      ...bandOf(frame, line.points, doubt),
      { pen: 'line-should', d: line.d },
      { pen: 'line-dimension', d: crosses(frame, rows, field) },
      { pen: 'outline', d: rectangle(plot.left, plot.top, plot.right - plot.left, plot.bottom - plot.top) },
      ...(known
        ? [{ pen: 'line-scale' as const, d: `M${tenth(plot.left)} ${tenth(y)}H${tenth(x)}V${plot.bottom}` }]
        : []),
      ...marks.strokes,
      { pen: 'blank', d: paperBehind(labels, letter, 3) },
      ...(known
        ? [
            { pen: 'ring' as const, d: disc([x, y], 8) },
            { pen: 'dot' as const, d: disc([x, y], 5) },
          ]
        : []),
    ],
    words: [...valueWords(frame, levels), ...shown, ...own, ...titles(frame, options), ...labels],
  };
}

const disc = ([x, y]: Point, r: number) =>
  `M${tenth(x - r)} ${tenth(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;

function ownWord(frame: SliceFrame, system: System, at: number): Word {
  const text = formatNumber(fromSi(at, displayUnit.temperature[system]), 1).replace(/\.0$/, '');
  return word(text, frame.x(at), frame.plot.bottom + 18, { anchor: 'middle', weight: 'strong' });
}

/** A figure of the line, SI. */
interface Sample {
  readonly at: number;
  readonly value: number;
}

/** The figure along the table, sampled between its rows too, since not every figure is straight there. */
function lineOf(
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
function bandOf(
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

function crosses({ x, y }: SliceFrame, rows: readonly number[], field: (at: number) => number): string {
  return rows
    .map((row) => [x(row), y(field(row))] as const)
    .filter(([, py]) => !Number.isNaN(py))
    .map(([px, py]) => `M${tenth(px - 4)} ${tenth(py)}h8M${tenth(px)} ${tenth(py - 4)}v8`)
    .join('');
}

function gridOf({ plot, y }: SliceFrame, { values }: Levels): SurfaceStroke[] {
  const d = values.map((value) => `M${tenth(plot.left)} ${tenth(y(value))}H${tenth(plot.right)}`).join('');
  return [{ pen: 'line-grid-fine', d }];
}

function outsideOf({ plot, from, to }: SliceFrame): SurfaceStroke[] {
  const tall = plot.bottom - plot.top;
  const d = rectangle(plot.left, plot.top, from - plot.left, tall) + rectangle(to, plot.top, plot.right - to, tall);
  return [
    { pen: 'region-outside', d },
    { pen: 'line-dimension', d: `M${tenth(from)} ${plot.top}v${tall}M${tenth(to)} ${plot.top}v${tall}` },
  ];
}

/** Every level has its line; its number where there is room for it. */
function valueWords({ plot, y, letter }: SliceFrame, { values, texts }: Levels): Word[] {
  const step = values.length < 2 ? 99 : Math.abs(y(values[0] as number) - y(values[1] as number));
  const every = Math.max(1, Math.ceil((letter + 4) / step));
  return values.flatMap((value, i) =>
    i % every === 0 ? [word(texts[i] as string, plot.left - 7, y(value), { anchor: 'end' })] : [],
  );
}

function titles({ plot, width }: SliceFrame, { along, scale, system }: SliceOptions): Word[] {
  const across = along === 'outdoorDryBulb' ? surfaceWords.outdoors : surfaceWords.wetBulb;
  return [
    word(scale.unit, 0, 12, { weight: 'quiet' }),
    word(surfaceWords.outside, width, 12, { weight: 'quiet', anchor: 'end' }),
    word(across[system], (plot.left + plot.right) / 2, height - 9, { weight: 'quiet', anchor: 'middle' }),
  ];
}

interface Marks {
  readonly strokes: readonly SurfaceStroke[];
  readonly boxes: readonly Box[];
}
const noMarks: Marks = { strokes: [], boxes: [] };
const half = 16;

/** The measured figure as a thick line across the place, its range hatched behind it. */
function measuredMarks({ y }: SliceFrame, x: number, { value, range }: Measured): Marks {
  const at = y(value);
  const mark: SurfaceStroke = { pen: 'line-measured', d: `M${tenth(x - half)} ${tenth(at)}h${2 * half}` };
  if (!range) return { strokes: [mark], boxes: [{ x, y: at, width: 2 * half, height: 6, angle: 0 }] };
  const [low, high] = [y(range[0]), y(range[1])];
  const area = rectangle(x - 8, high, 16, low - high);
  return {
    strokes: [{ pen: 'blank', d: area }, { pen: 'region', d: area }, { pen: 'outline', d: area }, mark],
    boxes: [{ x, y: (low + high) / 2, width: 2 * half, height: low - high, angle: 0 }],
  };
}

function labelsOf(
  frame: SliceFrame,
  { scale, measured }: SliceOptions,
  [x, y]: Point,
  here: number,
  taken: readonly Box[],
): readonly Word[] {
  // Words stay off what is not in the table, where there is room for them.
  const within = { ...frame, plot: { ...frame.plot, left: frame.from, right: frame.to } };
  const place = placing(within, [...taken, { x, y, width: 16, height: 16, angle: 0 }]);
  const around = (px: number, py: number, text: string, strong: boolean) =>
    [22, 40, 60].flatMap((off) =>
      (
        [
          [14, -off, 'start'],
          [14, off, 'start'],
          [-14, -off, 'end'],
          [-14, off, 'end'],
        ] as const
      ).map(([dx, dy, anchor]) =>
        block(
          within,
          [px + dx, Math.min(frame.plot.bottom - 10, Math.max(frame.plot.top + 10, py + dy))],
          [text],
          anchor,
          strong,
        ),
      ),
    );
  const table = place(around(x, y, amountText(scale, here), true));
  if (!measured) return plain(table);
  return plain([
    ...table,
    ...place(around(x + 6, frame.y(measured.value), sliceWords.measured(amountText(scale, measured.value)), false)),
  ]);
}

/** Their paper is drawn before the marks, so that it hides none of them. */
const plain = (words: readonly Word[]) => words.map((one) => ({ ...one, clear: false }));
