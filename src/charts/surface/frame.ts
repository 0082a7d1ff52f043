/** The paper of a surface: outdoor temperature across, entering wet bulb up, the table inside and what is not in it around. */
import type { RatingTable } from '../../calc/types.ts';
import { formatNumber } from '../../job/format.ts';
import type { System } from '../../job/types.ts';
import { displayUnit, fromSi, toSi } from '../../job/units.ts';
import { decimalsOf, roundStep, roundValues } from '../grid.ts';
import type { Paper } from '../shapes.ts';
import type { Place } from './reading.ts';

export interface Tick {
  /** °C. */
  readonly at: number;
  readonly text: string;
}

export interface SurfaceFrame extends Paper {
  readonly system: System;
  readonly narrow: boolean;
  /** °C, from edge to edge of the plot. */
  readonly outdoor: readonly [number, number];
  readonly wetBulb: readonly [number, number];
  /** The printed rows, °C, ascending. */
  readonly rows: { readonly outdoor: readonly number[]; readonly wetBulb: readonly number[] };
  /** The edges of the table on the paper. */
  readonly inner: Paper['plot'];
  readonly ticks: { readonly outdoor: readonly Tick[]; readonly wetBulb: readonly Tick[] };
}

/** Room around the table for the labels of the contours and for what is not in it, px: left, right, top, bottom. */
const rims = { narrow: [30, 36, 30, 34], wide: [40, 48, 34, 40] } as const;

/** A table can be drawn as a surface when it has two rows and two columns at least. */
export const hasSurface = ({ axes }: RatingTable): boolean =>
  axes.outdoorDryBulb.length > 1 && axes.enteringWetBulb.length > 1;

export interface FrameOptions {
  readonly table: RatingTable;
  readonly system: System;
  readonly width: number;
  /** Places that should be on the paper though they lie outside the table. */
  readonly around?: readonly Place[];
}

/** The frame of a table that has a surface. */
export function surfaceFrame({ table, system, width, around = [] }: FrameOptions): SurfaceFrame {
  const narrow = width < 500;
  const height = Math.round(width * (narrow ? 1.06 : 0.74));
  const plot = { left: narrow ? 44 : 60, top: 44, right: width - 1, bottom: height - (narrow ? 50 : 54) };
  const [left, right, top, bottom] = rims[narrow ? 'narrow' : 'wide'];
  const rows = { outdoor: table.axes.outdoorDryBulb, wetBulb: table.axes.enteringWetBulb };
  const across = axisOf(
    rows.outdoor,
    around.map((place) => place.outdoorDryBulb),
    plot.right - plot.left,
    [left, right],
  );
  const up = axisOf(
    rows.wetBulb,
    around.map((place) => place.enteringWetBulb),
    plot.bottom - plot.top,
    [bottom, top],
  );
  const inner = {
    left: plot.left + across.from,
    right: plot.left + across.to,
    top: plot.bottom - up.to,
    bottom: plot.bottom - up.from,
  };
  const ticks = {
    outdoor: ticksOf(rows.outdoor, across.range, (plot.right - plot.left) / (narrow ? 52 : 64), system),
    wetBulb: ticksOf(rows.wetBulb, up.range, (plot.bottom - plot.top) / 40, system),
  };
  return {
    system,
    narrow,
    width,
    height,
    letter: 14,
    plot,
    inner,
    rows,
    ticks,
    outdoor: across.range,
    wetBulb: up.range,
  };
}

/** The range of an axis, °C, and where the table begins and ends on it, px. What lies further off than the table is long is left out. */
export function axisOf(
  rows: readonly number[],
  around: readonly number[],
  size: number,
  [before, after]: readonly number[],
) {
  const [first, last] = [rows[0] as number, rows.at(-1) as number];
  const near = around.filter((at) => at > first - (last - first) && at < last + (last - first));
  const low = Math.min(first, ...near);
  const high = Math.max(last, ...near);
  const perPx = (high - low) / (size - before! - after!);
  const range = [low - before! * perPx, high + after! * perPx] as const;
  const px = (at: number) => (at - range[0]) / perPx;
  return { range, from: px(first), to: px(last) };
}

/** The printed rows where they are round in this system and there is room for them, else round values. */
export function ticksOf(
  rows: readonly number[],
  range: readonly [number, number],
  most: number,
  system: System,
): readonly Tick[] {
  const unit = displayUnit.temperature[system];
  const shown = rows.map((row) => fromSi(row, unit));
  const isRound = shown.every((row) => Math.abs(row - Math.round(row)) < 0.05);
  if (isRound && rows.length <= most) return rows.map((at, i) => ({ at, text: formatNumber(shown[i] as number, 0) }));
  const [low, high] = [fromSi(range[0], unit), fromSi(range[1], unit)];
  const step = roundStep((high - low) / most);
  return roundValues(low, high, step).map((value) => ({
    at: toSi(value, unit),
    text: formatNumber(value, decimalsOf(step)),
  }));
}

export function xOf({ plot, outdoor: [low, high] }: SurfaceFrame, outdoorDryBulb: number): number {
  return plot.left + ((outdoorDryBulb - low) / (high - low)) * (plot.right - plot.left);
}

export function yOf({ plot, wetBulb: [low, high] }: SurfaceFrame, enteringWetBulb: number): number {
  return plot.bottom - ((enteringWetBulb - low) / (high - low)) * (plot.bottom - plot.top);
}

/** The place under a spot of the paper; off the plot the nearest one on it. */
export function placeAt({ plot, outdoor, wetBulb }: SurfaceFrame, x: number, y: number): Place {
  const share = (at: number, from: number, to: number) => Math.min(1, Math.max(0, (at - from) / (to - from)));
  return {
    outdoorDryBulb: outdoor[0] + share(x, plot.left, plot.right) * (outdoor[1] - outdoor[0]),
    enteringWetBulb: wetBulb[0] + share(y, plot.bottom, plot.top) * (wetBulb[1] - wetBulb[0]),
  };
}

/** Whether a place is on the paper. */
export function isOn({ outdoor, wetBulb }: SurfaceFrame, { outdoorDryBulb, enteringWetBulb }: Place): boolean {
  return (
    outdoorDryBulb >= outdoor[0] &&
    outdoorDryBulb <= outdoor[1] &&
    enteringWetBulb >= wetBulb[0] &&
    enteringWetBulb <= wetBulb[1]
  );
}
