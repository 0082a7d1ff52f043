/** The region in which the state of the air lies with 95 % probability, from the uncertainty of the two readings. */
import { humidityRatio } from '../../calc/humidityRatio.ts';
import type { MoistAir } from '../../calc/types.ts';
import { humidityRatioFromWetBulb } from '../../calc/wetBulb.ts';
import { rootOf } from './curve.ts';
import { type AirPoint, saturated } from './frame.ts';

/** Standard uncertainties (one sigma) of a probe: K, and a fraction for relative humidity or K for the wet bulb. */
export interface ReadingUncertainty {
  readonly dryBulb: number;
  readonly humidity: number;
  readonly measure: 'relativeHumidity' | 'wetBulb';
}

/** Two normal quantities lie within 2.45 sigma of their mean 95 times in 100 (chi-square with two degrees of freedom: √5.991). */
export const coverage = 2.45;

/** Step of the finite differences: K, or a fraction of relative humidity. */
const step = 1e-4;
const corners = 48;

/** The slopes of the humidity ratio with each of the two readings. */
function slopes(air: MoistAir, measure: ReadingUncertainty['measure']): { byDryBulb: number; byHumidity: number } {
  const { dryBulb: t, wetBulb, relativeHumidity, humidityRatio: W, pressure: p } = air;
  if (measure === 'wetBulb') {
    // The wet bulb is moved together with the dry bulb, because it may not rise above it.
    const byDryBulb = (humidityRatioFromWetBulb(t + step, wetBulb, p) - W) / step;
    const byBoth = (humidityRatioFromWetBulb(t + step, wetBulb + step, p) - W) / step;
    return { byDryBulb, byHumidity: byBoth - byDryBulb };
  }
  const byDryBulb = (humidityRatio(t + step, relativeHumidity, p) - W) / step;
  const drier = relativeHumidity > 0.5 ? -step : step;
  return { byDryBulb, byHumidity: (humidityRatio(t, relativeHumidity + drier, p) - W) / drier };
}

/**
 * The corners of the 95 % region of a point, in °C and kg/kg: an ellipse, slanted because the humidity ratio hangs on both
 * readings, to first order (JCGM 102, 6.5, with k = 2.45 for two quantities), cut at saturation and at perfectly dry air.
 */
export function region(air: MoistAir, uncertainty: ReadingUncertainty): AirPoint[] {
  const { byDryBulb, byHumidity } = slopes(air, uncertainty.measure);
  const across = coverage * uncertainty.dryBulb;
  const up = coverage * byHumidity * uncertainty.humidity;
  const at = (turn: number): AirPoint => ({
    dryBulb: air.dryBulb + across * Math.cos(turn),
    humidityRatio: air.humidityRatio + byDryBulb * across * Math.cos(turn) + up * Math.sin(turn),
  });
  return cut(at, air).map(({ dryBulb, humidityRatio: W }) => ({ dryBulb, humidityRatio: Math.max(0, W) }));
}

/** Walks round the ellipse; where it leaves the air that can be, it follows saturation to where it comes back. */
function cut(at: (turn: number) => AirPoint, { pressure }: MoistAir): AirPoint[] {
  const excess = ({ dryBulb, humidityRatio: W }: AirPoint) => W - saturated({ pressure }, dryBulb);
  const turns = Array.from({ length: corners }, (_, i) => (2 * Math.PI * i) / corners);
  const outline: AirPoint[] = [];
  let left: AirPoint | null = null;
  const first = turns.findIndex((turn) => excess(at(turn)) <= 0);
  if (first < 0) return [];
  for (let i = 0; i < corners; i++) {
    const turn = turns[(first + i) % corners]!;
    const next = turn + (2 * Math.PI) / corners;
    if (excess(at(turn)) <= 0) outline.push(at(turn));
    const [out, back] = [excess(at(turn)) <= 0 && excess(at(next)) > 0, excess(at(turn)) > 0 && excess(at(next)) <= 0];
    if (out) {
      left = at(rootOf((angle) => excess(at(angle)), turn, next));
      outline.push(left);
    }
    if (back && left) {
      const met: AirPoint = at(rootOf((angle) => -excess(at(angle)), turn, next));
      outline.push(...alongSaturation(left, met, pressure), met);
    }
  }
  return outline;
}

function alongSaturation(from: AirPoint, to: AirPoint, pressure: number): AirPoint[] {
  return Array.from({ length: 11 }, (_, i) => {
    const dryBulb = from.dryBulb + ((i + 1) / 12) * (to.dryBulb - from.dryBulb);
    return { dryBulb, humidityRatio: saturated({ pressure }, dryBulb) };
  });
}
