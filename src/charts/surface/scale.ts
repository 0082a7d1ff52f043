/** The figures of a surface as a person reads them: unit, digits, and the room that a round step has to have. */
import { formatCapacity, formatNumber, withUnit } from '../../job/format.ts';
import type { System } from '../../job/types.ts';
import { displayUnit, units } from '../../job/units.ts';
import { surfaceScales } from '../../words/en/expectedChart.ts';
import { decimalsOf, roundStep, roundValues } from '../grid.ts';
import type { SurfaceQuantity } from './reading.ts';

export interface SurfaceScale {
  readonly quantity: SurfaceQuantity;
  readonly system: System;
  /** SI over one unit of the contours. */
  readonly factor: number;
  /** Decimals of a printed figure, in the unit of the contours. */
  readonly decimals: number;
  /** The unit of the contours: "1,000 Btu/h". */
  readonly unit: string;
}

type Row = readonly [factor: number, decimals: number];

const perThousandBtu = 1000 * units.btuh.factor;
const factors: Readonly<Record<SurfaceQuantity, Readonly<Record<System, Row>>>> = {
  total: { ip: [perThousandBtu, 1], si: [1000, 2] },
  sensible: { ip: [perThousandBtu, 1], si: [1000, 2] },
  ratio: { ip: [0.01, 0], si: [0.01, 0] },
  power: { ip: [1000, 2], si: [1000, 2] },
  efficiency: { ip: [units.btuh.factor, 1], si: [1, 2] },
};

export function scaleOf(quantity: SurfaceQuantity, system: System): SurfaceScale {
  const [factor, decimals] = factors[quantity][system];
  return { quantity, system, factor, decimals, unit: surfaceScales[quantity][system] };
}

/** A figure as it stands on the surface: 31.6 for 31,600 Btu/h. */
export const figureText = ({ factor, decimals }: SurfaceScale, si: number): string =>
  formatNumber(si / factor, decimals);

/** The same in full with its unit: 31,600 Btu/h, 74 %, 12.3 Btu/h per W. */
export function amountText({ quantity, system, factor, decimals, unit }: SurfaceScale, si: number): string {
  if (quantity !== 'total' && quantity !== 'sensible') return `${formatNumber(si / factor, decimals)}\u00a0${unit}`;
  const own = displayUnit.power[system];
  return withUnit(formatCapacity(si, own), own);
}

/** The ends of a range, rounded outward to the digits of a figure, the unit said once: 23,600 and 34,200 Btu/h. */
export function endsText(scale: SurfaceScale, [low, high]: readonly [number, number]): readonly [string, string] {
  const isPower = scale.quantity === 'total' || scale.quantity === 'sensible';
  const size = isPower && scale.system === 'si' ? 100 : scale.factor / 10 ** scale.decimals;
  const outward = (si: number, round: (value: number) => number) => amountText(scale, round(si / size) * size);
  const [bare = ''] = outward(low, (at) => Math.floor(at + 1e-9)).split('\u00a0');
  return [bare, outward(high, (at) => Math.ceil(at - 1e-9))];
}

/** A change of a figure, to a digit more than the figure itself: 190 Btu/h. */
export function changeText({ quantity, system, factor, decimals, unit }: SurfaceScale, si: number): string {
  if (quantity === 'total' || quantity === 'sensible') {
    const text = system === 'ip' ? formatNumber(10 * Math.round((si / factor) * 100), 0) : formatNumber(si / factor, 2);
    return withUnit(text, displayUnit.power[system]);
  }
  return `${formatNumber(si / factor, decimals + 1)}\u00a0${unit}`;
}

/** Round values between which the bands lie, and the digits that they need. */
export interface Levels {
  /** SI, ascending; the bands lie below the first, between two of them, and above the last. */
  readonly values: readonly number[];
  readonly texts: readonly string[];
  /** SI: one step below the first and one above the last. */
  readonly range: readonly [number, number];
}

/** One less than there are inks. */
const mostLevels = 11;

/** Levels for everything that a surface may show: they stay while a slider moves, so that a shade keeps its meaning. */
export function levelsOf({ factor }: SurfaceScale, [low, high]: readonly [number, number]): Levels {
  const [from, to] = [low / factor, high / factor];
  const step = roundStep(Math.max((to - from) / (mostLevels - 1), 1e-6 * Math.max(1, Math.abs(to))));
  const inside = roundValues(from, to, step);
  const values = inside.length > 0 ? inside : [Math.round(from / step) * step];
  const first = values[0] as number;
  const last = values.at(-1) as number;
  return {
    values: values.map((value) => value * factor),
    texts: values.map((value) => formatNumber(value, decimalsOf(step))),
    range: [(first - step) * factor, (last + step) * factor],
  };
}

/** Of the twelve inks of a surface that of a band, counted from below the first level: more ink is more. */
export function inkOf(band: number, { values }: Levels): number {
  return Math.round((mostLevels * band) / values.length);
}
