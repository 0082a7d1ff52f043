/** One line through the place that is read: outdoor temperature or entering wet bulb across, the figure up. */
import { formatNumber } from '../../job/format.ts';
import type { System } from '../../job/types.ts';
import { displayUnit, fromSi } from '../../job/units.ts';
import { surfaceWords } from '../../words/en/expectedChart.ts';
import { type Box, boxOf, inside, touch } from '../box.ts';
import { type Paper, type Point, tenth, type Word, word } from '../shapes.ts';
import { paperBehind, rectangle } from './contourLabels.ts';
import type { SurfaceDrawing, SurfaceStroke } from './pens.ts';
import { estimateAt, fieldOf } from './reading.ts';
import type { Levels } from './scale.ts';
import { frameOf, type Measured, type SliceFrame, type SliceOptions, sliceHeight } from './sliceFrame.ts';
import { labelsOf } from './sliceLabels.ts';
import { bandOf, crosses, lineOf } from './sliceLine.ts';

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
    word(across[system], (plot.left + plot.right) / 2, sliceHeight - 9, { weight: 'quiet', anchor: 'middle' }),
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
