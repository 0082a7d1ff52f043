/** What the tests of the air chart share: the charts that are looked at, and a reading of the paper that is not the chart's. */

import { type CoilLoad, coilLoad, type MoistAir, moistAir } from '../../src/calc/index.ts';
import { fromFahrenheit } from '../../src/calc/units.ts';
import type { AirPoint, ChartFrame } from '../../src/charts/moistAir/frame.ts';
import type { ChartProcess } from '../../src/charts/moistAir/process.ts';

export const widths = [320, 390, 820, 1440] as const;
export const systems = ['ip', 'si'] as const;
export const pressures = [60e3, 84e3, 101325, 105e3] as const;

/** Every width, system and pressure. */
export const charts = widths.flatMap((width) =>
  systems.flatMap((system) => pressures.map((pressure) => ({ width, system, pressure }))),
);

/** The air under a place, from the plain data of a frame. */
export function read({ plot, dryBulb: t, humidityRatio: W }: ChartFrame, x: number, y: number): AirPoint {
  return {
    dryBulb: t[0] + ((x - plot.left) * (t[1] - t[0])) / (plot.right - plot.left),
    humidityRatio: W[0] + ((plot.bottom - y) * (W[1] - W[0])) / (plot.bottom - plot.top),
  };
}

/** The numbers of a path that has only M and L. */
export function pointsOfPath(d: string): [number, number][] {
  return [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

const air = (fahrenheit: number, relativeHumidity: number, pressure: number): MoistAir =>
  moistAir({ dryBulb: fromFahrenheit(fahrenheit), relativeHumidity, pressure });

export type Told = ChartProcess & { readonly load: CoilLoad };

/** An invented cooling job: return 75 °F and 50 %, supply 56 °F and 88 % unless said otherwise. */
export function cooling(
  pressure: number,
  blower: ChartProcess['blower'] = null,
  [entering, leaving]: readonly (readonly [number, number])[] = [
    [75, 0.5],
    [56, 0.88],
  ],
): Told {
  const states = { entering: air(...entering!, pressure), leaving: air(...leaving!, pressure) };
  const load = coilLoad({ ...states, dryAirFlow: 0.66, ...(blower && { blower }) });
  const sure = { dryBulb: 0.5 / Math.sqrt(3), humidity: 0.03 / Math.sqrt(3), measure: 'relativeHumidity' } as const;
  return { ...states, load, blower, uncertainty: { entering: sure, leaving: sure } };
}

/** Numbers from 0 to 1 that look like chance and are the same every time (Park and Miller). */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
