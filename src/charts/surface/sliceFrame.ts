import type { RatingTable } from '../../calc/types.ts';
import type { System } from '../../job/types.ts';
import { linear } from '../scale.ts';
import type { Paper } from '../shapes.ts';
import { axisOf, type Tick, ticksOf } from './frame.ts';
import type { Air, Place } from './reading.ts';
import type { Levels, SurfaceScale } from './scale.ts';

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

export interface SliceFrame extends Paper {
  readonly range: readonly [number, number];
  readonly ticks: readonly Tick[];
  /** Where the table begins and ends, px. */
  readonly from: number;
  readonly to: number;
  readonly x: (at: number) => number;
  readonly y: (si: number) => number;
}

const rim = [24, 24] as const;
/** px. */
export const sliceHeight = 250;

/** The frame of a line through the place that is read. */
export function frameOf({ table, along, place, levels, measured, system, width }: SliceOptions): SliceFrame {
  const rows = table.axes[along];
  const plot = { left: 40, top: 30, right: width - 1, bottom: sliceHeight - 50 };
  const axis = axisOf(rows, [place[along]], plot.right - plot.left, rim);
  const extremes = measured ? [measured.value, ...(measured.range ?? [])] : [];
  const [low, high] = levels.range;
  const values = [Math.min(low, ...extremes), Math.max(high, ...extremes)] as const;
  return {
    width,
    height: sliceHeight,
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
