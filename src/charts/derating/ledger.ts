/**
 * From the nameplate to the expectation as a ledger: a line a step, a dimension line from the figure before to the figure
 * after, and a dot on one scale that all of them share.
 */
import { ticks } from 'd3-array';
import { ledgerChart as say } from '../../words/en/deratingChart.ts';
import { type Box, boxOf, textWidth, touch } from '../box.ts';
import { oblique } from '../scale.ts';
import { type Drawing, type Stroke, tenth, type Word, word } from '../shapes.ts';
import { type Layout, layoutOf, letter, type Row } from './layout.ts';

export type LedgerPen =
  | 'line-grid'
  | 'line-scale'
  | 'line-sum'
  | 'line-dimension'
  | 'line-end'
  | 'line-should'
  | 'line-measured'
  | 'dot'
  | 'aim'
  | 'region'
  | 'outline';
export type LedgerDrawing = Drawing<LedgerPen> & { readonly width: number; readonly height: number };

export interface LedgerRow {
  readonly name: string;
  /** The figure after the step, as text and in W. */
  readonly amount: string;
  readonly value: number;
  /** What the step changes, as text; `null` where it changes nothing, and `note` says why. */
  readonly change: string | null;
  readonly note: string | null;
  /** Something was tried in it, or it was left out. */
  readonly tried: boolean;
  /** The last line, under a rule. */
  readonly isSum?: boolean;
}

export interface LedgerProps {
  readonly rows: readonly LedgerRow[];
  readonly width: number;
  /** The unit of the figures, over them. */
  readonly unit: string;
  /** What was measured, W, with its text; drawn under the last line. */
  readonly measured: { readonly value: number; readonly text: string } | null;
  readonly range: readonly [low: number, high: number] | null;
  /** What the last line is called under its dashed mark; `null` where it is nothing that should be made. */
  readonly should: string | null;
}

type Pens = Stroke<LedgerPen>;

export function ledgerDrawing(props: LedgerProps): LedgerDrawing {
  const layout = layoutOf(props);
  const drawn = layout.rows.map((row, i) => rowDrawing(layout, row, layout.rows[i - 1] ?? null));
  const foot = footDrawing(layout, props);
  return {
    width: layout.width,
    height: layout.height,
    strokes: [...scaleStrokes(layout), ...drawn.flatMap(({ strokes }) => strokes), ...foot.strokes],
    words: [...headWords(layout, props.unit), ...drawn.flatMap(({ words }) => words), ...foot.words],
  };
}

/** Upright lines at round shares of the first figure, through all rows but not through their words. */
function scaleStrokes({ left, right, head, foot, rows, narrow, width, domain, ...layout }: Layout): Pens[] {
  const start = rows[0]?.of.value ?? 1;
  const at = (share: number) => tenth(layout.x(share * start));
  const lines = shares(domain, (right - left) / 40).map((share) =>
    narrow
      ? rows
          .map(({ bottom, dimensionY, dotY }) => `M${at(share)} ${Math.min(dimensionY, dotY) - 10}V${bottom}`)
          .join('')
      : `M${at(share)} ${head}V${foot}`,
  );
  const rules = rows.slice(0, -1).filter((_, i) => !rows[i + 1]?.of.isSum);
  const sums = rows.filter(({ of }) => of.isSum);
  return [
    { pen: 'line-grid', d: lines.join('') + rules.map(({ bottom }) => `M0 ${bottom}H${width}`).join('') },
    { pen: 'line-scale', d: `M0 ${head}H${width}M0 ${foot}H${width}` },
    { pen: 'line-sum', d: sums.map(({ top }) => `M0 ${top}H${width}`).join('') },
  ];
}

/** Round shares in a domain, hundredths free of dust. */
const shares = ([low, high]: readonly [number, number], most: number) =>
  ticks(low * 100, high * 100, Math.max(2, Math.min(8, most))).map((share) => share / 100);

function headWords({ left, right, narrow, domain, rows, x }: Layout, unit: string): Word[] {
  const start = rows[0]?.of.value ?? 1;
  const all = shares(domain, (right - left) / 40);
  const numbers = all.flatMap((share, i) => {
    const isLast = i === all.length - 1;
    const text = `${Math.round(share * 100)}${isLast ? '\u00a0%' : ''}`;
    const at = inside(x(share * start), text, [left - 5, right + 5]);
    // The number before the last gives way to its unit.
    const crowded = i === all.length - 2 && x((all.at(-1) ?? 1) * start) - x(share * start) < 56;
    return crowded ? [] : [word(text, at, 24, { anchor: 'middle' })];
  });
  const title = narrow ? [] : [word(say.unit(unit), 0, 24, { weight: 'quiet' })];
  const above = narrow ? [word(say.unit(unit), 0, 8, { weight: 'quiet' })] : [];
  return [...title, ...above, ...numbers];
}

/** Moved so that all of it stands between two edges. */
function inside(x: number, text: string, [low, high]: readonly [number, number]): number {
  const half = textWidth(text, letter) / 2;
  return Math.min(high - half, Math.max(low + half, x));
}

function rowDrawing(layout: Layout, row: Row, before: Row | null): { strokes: Pens[]; words: Word[] } {
  const { of, name, nameY, dimensionY, dotY } = row;
  const x = layout.x(of.value);
  const strokes: Pens[] = [{ pen: of.tried ? 'aim' : 'dot', d: disc(x, dotY, of.isSum ? 6 : 4.5) }];
  const words: Word[] = [
    ...name.map((text, i) => word(text, 0, nameY + 18 * i, of.isSum ? { weight: 'strong' } : {})),
    word(of.amount, layout.figures, nameY, { anchor: 'end', weight: 'strong' }),
  ];
  if (!before) return { strokes, words };
  const from = layout.x(before.of.value);
  // The leader from the dot above; on a narrow page it leaves out the words of the row.
  const gap = layout.narrow ? `V${before.bottom}M${tenth(from)} ${(of.change === null ? dotY : dimensionY) - 14}` : '';
  const leader = `M${tenth(from)} ${before.dotY + 7.5}${gap}`;
  if (of.change === null) {
    strokes.push({ pen: 'line-scale', d: `${leader}V${dotY - 8}` });
    if (of.note) words.push(beside(layout, [x, x], of.note, dotY, true));
    return { strokes, words };
  }
  strokes.push(
    { pen: 'line-scale', d: `${leader}V${dimensionY + 6}M${tenth(x)} ${dimensionY - 6}V${dotY - 8}` },
    { pen: 'line-dimension', d: `M${tenth(from)} ${dimensionY}H${tenth(x)}` },
    { pen: 'line-end', d: oblique(from, dimensionY) + oblique(x, dimensionY) },
  );
  words.push(beside(layout, [Math.min(from, x), Math.max(from, x)], of.change, dimensionY, false));
  return { strokes, words };
}

/** Words to the right of a mark, or to its left where there is no room. */
function beside(
  { left, right }: Layout,
  [low, high]: readonly [number, number],
  text: string,
  y: number,
  quiet: boolean,
): Word {
  const wide = textWidth(text, letter);
  const more = { clear: true, weight: quiet ? ('quiet' as const) : ('plain' as const) };
  if (high + 12 + wide <= right + 6) return word(text, high + 12, y, more);
  if (low - 12 - wide >= left - 6) return word(text, low - 12, y, { ...more, anchor: 'end' });
  return word(text, right + 6, y, { ...more, anchor: 'end' });
}

/** Under the last line: what should be made, dashed, and what was measured, thick, with its range. */
function footDrawing(layout: Layout, { measured, range, should }: LedgerProps): { strokes: Pens[]; words: Word[] } {
  const last = layout.rows.at(-1);
  if (!last || should === null) return { strokes: [], words: [] };
  const { foot } = layout;
  const x = layout.x(last.of.value);
  const strokes: Pens[] = [{ pen: 'line-should', d: `M${tenth(x)} ${last.dotY + 9}V${foot + 20}` }];
  const taken: Box[] = [];
  const put = (at: number, text: string, first: 'start' | 'end'): Word[] => {
    const both = first === 'start' ? (['start', 'end'] as const) : (['end', 'start'] as const);
    const lines = [34, 34 + 21];
    const spots = [
      ...lines.flatMap((y) =>
        both.map((anchor) => word(text, at + (anchor === 'start' ? -8 : 8), foot + y, { anchor })),
      ),
      ...lines.map((y) => word(text, inside(at, text, [1, layout.width - 1]), foot + y, { anchor: 'middle' })),
    ];
    const found = spots.find((one) => fits(layout, one) && !taken.some((box) => touch(box, boxOf(one, letter), 6)));
    if (!found) return [];
    taken.push(boxOf(found, letter));
    return [found];
  };
  const isLeft = measured !== null && measured.value < last.of.value;
  const words = put(x, should, isLeft || !measured ? 'start' : 'end');
  if (!measured) return { strokes, words };
  const at = layout.x(measured.value);
  if (range) {
    const [low, high] = [layout.x(range[0]), layout.x(range[1])];
    const area = `M${tenth(low)} ${foot + 4}H${tenth(high)}V${foot + 16}H${tenth(low)}Z`;
    strokes.push({ pen: 'region', d: area }, { pen: 'outline', d: area });
  }
  strokes.push({ pen: 'line-measured', d: `M${tenth(at)} ${foot}V${foot + 20}` });
  return { strokes, words: [...words, ...put(at, measured.text, isLeft ? 'end' : 'start')] };
}

function fits({ width }: Layout, one: Word): boolean {
  const { x, width: wide } = boxOf(one, letter);
  return x - wide / 2 >= 0 && x + wide / 2 <= width;
}

const disc = (x: number, y: number, r: number) =>
  `M${tenth(x - r)} ${tenth(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
