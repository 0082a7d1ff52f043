/** Round bounds of a chart, in the unit of its system. */
import { standardPressureAtSeaLevel } from '../../calc/constants.ts';
import { saturationHumidityRatio } from '../../calc/humidityRatio.ts';
import type { System } from '../../job/types.ts';
import { displayUnit, fromSi, toSi } from '../../job/units.ts';
import { roundStep } from '../grid.ts';

type Bounds = readonly [number, number];
interface Point {
  readonly dryBulb: number;
  readonly humidityRatio: number;
}
export interface Domain {
  readonly dryBulb: Bounds;
  readonly humidityRatio: Bounds;
}

/** In the units of the chart. The top is near the humidity ratio of air saturated at `top`, whatever the pressure. */
const whole = {
  ip: { dryBulb: [40, 100], step: 10, top: 84, coldest: 0, hottest: 150 },
  si: { dryBulb: [5, 40], step: 5, top: 29, coldest: -20, hottest: 65 },
} as const;

/** Humidity ratio for each kelvin at sea level that gives a close-up the slope of saturation in mild air, kg/(kg·K). */
const steepness = 3.5e-4;

export function wholeDomain(system: System, pressure: number, around: readonly Point[]): Domain {
  const { dryBulb, step, top, coldest, hottest } = whole[system];
  const temperature = displayUnit.temperature[system];
  const ratio = displayUnit.humidityRatio[system];
  const usual = fromSi(saturationHumidityRatio(toSi(top, temperature), pressure), ratio);
  const ratioStep = roundStep(usual / 10);
  const temperatures = around.map((air) => fromSi(air.dryBulb, temperature));
  const ratios = around.map((air) => fromSi(air.humidityRatio, ratio));
  const low = Math.max(coldest, Math.min(dryBulb[0], outward(Math.min(...temperatures), step, Math.floor)));
  const high = Math.min(hottest, Math.max(dryBulb[1], outward(Math.max(...temperatures), step, Math.ceil)));
  const most = Math.max(Math.round(usual / ratioStep) * ratioStep, outward(Math.max(...ratios), ratioStep, Math.ceil));
  return {
    dryBulb: [toSi(low, temperature), toSi(high, temperature)],
    humidityRatio: [0, toSi(most, ratio)],
  };
}

export function processDomain(system: System, pressure: number, around: readonly Point[]): Domain {
  const temperature = displayUnit.temperature[system];
  const ratio = displayUnit.humidityRatio[system];
  const t = extent(around.map((air) => fromSi(air.dryBulb, temperature)));
  const W = extent(around.map((air) => fromSi(air.humidityRatio, ratio)));

  const { coldest, hottest } = whole[system];
  const least = system === 'ip' ? 18 : 10;
  const width = Math.max(least, t[1] - t[0]);
  const slack = (width - (t[1] - t[0])) / 2;
  const across = outwardBoth([t[0] - slack - 0.3 * width, t[1] + slack + 0.45 * width], [coldest, hottest]);

  const kelvins = toSi(across[1], temperature) - toSi(across[0], temperature);
  const natural = fromSi((kelvins * steepness * standardPressureAtSeaLevel) / pressure, ratio);
  const height = Math.max(natural, 1.8 * (W[1] - W[0]));
  const middle = (W[0] + W[1]) / 2;
  const foot = Math.max(0, middle - 0.45 * height);
  const up = outwardBoth([foot, foot + height], [0, Number.POSITIVE_INFINITY]);
  return {
    dryBulb: [toSi(across[0], temperature), toSi(across[1], temperature)],
    humidityRatio: [toSi(up[0], ratio), toSi(up[1], ratio)],
  };
}

const extent = (values: readonly number[]): Bounds => [Math.min(...values), Math.max(...values)];

/** A bound moved out to the next step; no values give an infinite bound, which is left alone. */
function outward(value: number, step: number, round: (x: number) => number): number {
  return Number.isFinite(value) ? round(value / step) * step : value;
}

function outwardBoth([low, high]: Bounds, [least, most]: Bounds): Bounds {
  const step = roundStep((high - low) / 10);
  return [Math.max(least, Math.floor(low / step) * step), Math.min(most, Math.ceil(high / step) * step)];
}
