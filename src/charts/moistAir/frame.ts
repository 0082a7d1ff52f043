/** The scales of one moist-air chart: plain data, and the functions that go from air to paper and back. */
import { saturationHumidityRatio } from '../../calc/humidityRatio.ts';
import type { System } from '../../job/types.ts';
import type { Paper } from '../shapes.ts';
import { processDomain, wholeDomain } from './domain.ts';

/** A point of the chart: °C and kg/kg dry air. Every `MoistAir` is one. */
export interface AirPoint {
  readonly dryBulb: number;
  readonly humidityRatio: number;
}

/** How many labels there is room for: under 500 px, under 1000 px, from there on. */
export type LabelSet = 'narrow' | 'middle' | 'wide';
export type View = 'whole' | 'process';

/** Its type is 14 px unless the chart is shown large. */
export interface ChartFrame extends Paper {
  readonly system: System;
  /** Pa. */
  readonly pressure: number;
  readonly view: View;
  readonly labels: LabelSet;
  /** °C, round in the unit of the system. */
  readonly dryBulb: readonly [number, number];
  /** kg/kg dry air, round likewise. */
  readonly humidityRatio: readonly [number, number];
}

export interface FrameOptions {
  readonly system: System;
  readonly pressure: number;
  readonly width: number;
  readonly height?: number | undefined;
  readonly view?: View | undefined;
  /** Air that has to be on the chart; a close-up is drawn around it. The coil counts: give its dew point as well. */
  readonly around?: readonly AirPoint[] | undefined;
  readonly letter?: number | undefined;
}

/** Height over width, where no height is given. */
const aspect = { narrow: 1, middle: 0.66, wide: 0.6 } as const;

const labelSet = (width: number): LabelSet => (width < 500 ? 'narrow' : width < 1000 ? 'middle' : 'wide');

/**
 * The frame of a chart: round bounds for its system, pressure and view. 'whole' is the range of rooms and weather, widened
 * where `around` needs it; 'process' a close-up of `around`, or the whole where nothing is given.
 */
export function chartFrame(options: FrameOptions): ChartFrame {
  const { system, pressure, width, around = [], letter = 14 } = options;
  const labels = labelSet((width * 14) / letter);
  const height = options.height ?? Math.round(width * aspect[labels]);
  const view = options.view === 'process' && around.length > 0 ? 'process' : 'whole';
  const domain = (view === 'process' ? processDomain : wholeDomain)(system, pressure, around);
  const size = letter / 14;
  const plot = {
    left: (labels === 'narrow' ? 12 : 28) * size,
    top: 30 * size,
    right: width - 44 * size,
    bottom: height - (labels === 'narrow' ? 32 : 54) * size,
  };
  return { system, pressure, width, height, view, labels, letter, ...domain, plot };
}

export function xOf({ plot, dryBulb: [low, high] }: ChartFrame, dryBulb: number): number {
  return plot.left + ((dryBulb - low) / (high - low)) * (plot.right - plot.left);
}

export function yOf({ plot, humidityRatio: [low, high] }: ChartFrame, humidityRatio: number): number {
  return plot.bottom - ((humidityRatio - low) / (high - low)) * (plot.bottom - plot.top);
}

/** Humidity ratio of saturated air at the chart's pressure. */
export function saturated(frame: Pick<ChartFrame, 'pressure'>, dryBulb: number): number {
  return saturationHumidityRatio(dryBulb, frame.pressure);
}

/** Whether air lies on the plot and can exist. */
export function contains(frame: ChartFrame, { dryBulb, humidityRatio }: AirPoint): boolean {
  const [cold, hot] = frame.dryBulb;
  const [dry, damp] = frame.humidityRatio;
  return (
    dryBulb >= cold &&
    dryBulb <= hot &&
    humidityRatio >= dry &&
    humidityRatio <= Math.min(damp, saturated(frame, dryBulb))
  );
}

/** The air under a place of the drawing; `null` outside the plot and above saturation, where there is none. */
export function airUnder(frame: ChartFrame, x: number, y: number): AirPoint | null {
  const point = unbounded(frame, x, y);
  return contains(frame, point) ? point : null;
}

/**
 * The air nearest to a place of the drawing: a point that is dragged off the plot stops at its edge, and one that is dragged
 * beyond saturation slides along it.
 */
export function airAt(frame: ChartFrame, x: number, y: number): AirPoint {
  const { left, top, right, bottom } = frame.plot;
  const held = unbounded(frame, clamp(x, left, right), clamp(y, top, bottom));
  if (held.humidityRatio <= saturated(frame, held.dryBulb)) return held;
  return nearestSaturated(frame, xOf(frame, held.dryBulb), yOf(frame, held.humidityRatio));
}

function unbounded({ plot, dryBulb, humidityRatio }: ChartFrame, x: number, y: number): AirPoint {
  const across = (x - plot.left) / (plot.right - plot.left);
  const up = (plot.bottom - y) / (plot.bottom - plot.top);
  return {
    dryBulb: dryBulb[0] + across * (dryBulb[1] - dryBulb[0]),
    humidityRatio: humidityRatio[0] + up * (humidityRatio[1] - humidityRatio[0]),
  };
}

/** The place on the saturation curve that is nearest on paper: a look along the curve, then closer and closer around the best. */
function nearestSaturated(frame: ChartFrame, x: number, y: number): AirPoint {
  const [damp, dry] = [frame.humidityRatio[1], frame.humidityRatio[0]];
  const airAlong = (dryBulb: number) => ({ dryBulb, humidityRatio: clamp(saturated(frame, dryBulb), dry, damp) });
  const distance = (dryBulb: number) => {
    const air = airAlong(dryBulb);
    return (xOf(frame, air.dryBulb) - x) ** 2 + (yOf(frame, air.humidityRatio) - y) ** 2;
  };
  let best = frame.dryBulb[0];
  let step = (frame.dryBulb[1] - frame.dryBulb[0]) / 32;
  for (let t = best + step; t <= frame.dryBulb[1]; t += step) if (distance(t) < distance(best)) best = t;
  for (; step > 1e-6; step /= 2) {
    for (const t of [best - step, best + step]) {
      if (t >= frame.dryBulb[0] && t <= frame.dryBulb[1] && distance(t) < distance(best)) best = t;
    }
  }
  return airAlong(best);
}

const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
