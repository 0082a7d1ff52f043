/** What the numbers of a chart are: for each family its unit, the room that a line wants, and its round values. */
import { standardPressureAtSeaLevel } from '../../calc/constants.ts';
import type { Kind } from '../../calc/types.ts';
import { formatNumber, withUnit } from '../../job/format.ts';
import type { System, UnitKey } from '../../job/types.ts';
import { displayUnit, fromSi, toSi, units } from '../../job/units.ts';
import { decimalsOf, roundStep, roundValues } from '../grid.ts';
import type { LineFamily } from './families.ts';
import type { ChartFrame } from './frame.ts';

interface Scale {
  readonly kind: Kind;
  /** Least px between two lines: narrow, middle, wide. Along the axis, or across for the lines that fall. */
  readonly room: readonly [number, number, number];
  /** How far the value rises across the whole plot, SI, from its width or height in K or kg/kg. */
  readonly rise: (span: number, pressure: number) => number;
  readonly across: boolean;
}

const same = (span: number) => span;

/**
 * How much a kelvin of dry bulb changes each property, roughly; only the choice of a round step hangs on it. The wet bulb
 * rises by about 0.4 K, the enthalpy by 1 kJ/kg and the volume by 1/300 of about 0.85 m³/kg.
 */
const scales: Readonly<Record<Exclude<LineFamily, 'saturation' | 'relativeHumidity'>, Scale>> = {
  dryBulb: { kind: 'temperature', room: [42, 52, 80], across: true, rise: same },
  humidityRatio: { kind: 'humidityRatio', room: [34, 34, 48], across: false, rise: same },
  wetBulb: { kind: 'temperature', room: [60, 80, 140], across: true, rise: (span) => 0.4 * span },
  enthalpy: { kind: 'enthalpy', room: [80, 120, 140], across: true, rise: (span) => 1000 * span },
  specificVolume: {
    kind: 'specificVolume',
    room: [70, 90, 110],
    across: true,
    rise: (span, pressure) => (0.0029 * span * standardPressureAtSeaLevel) / pressure,
  },
};

export type ScaledFamily = keyof typeof scales;

/** The unit of a family in the system of the chart. */
export function unitOf(system: System, family: LineFamily): UnitKey {
  return family === 'saturation' || family === 'relativeHumidity'
    ? 'percent'
    : displayUnit[scales[family].kind][system];
}

/** The step between two lines, in the unit of the chart. */
export function stepOf(frame: ChartFrame, family: ScaledFamily): number {
  const { room, rise, across } = scales[family];
  const { plot, dryBulb, humidityRatio, labels, letter } = frame;
  const size = across ? plot.right - plot.left : plot.bottom - plot.top;
  const span = across ? dryBulb[1] - dryBulb[0] : humidityRatio[1] - humidityRatio[0];
  const lines = (size * 14) / letter / room[labels === 'narrow' ? 0 : labels === 'middle' ? 1 : 2];
  return roundStep(rise(span, frame.pressure) / lines / units[unitOf(frame.system, family)].factor);
}

/** The round values of a family in a range, SI. */
export function gridValues(frame: ChartFrame, family: ScaledFamily, range: readonly [number, number]): number[] {
  const unit = unitOf(frame.system, family);
  const [low, high] = [fromSi(range[0], unit), fromSi(range[1], unit)];
  return roundValues(low, high, stepOf(frame, family)).map((value) => toSi(value, unit));
}

/** A value of a family as it stands at its line: the number alone. */
export function numberOf(frame: ChartFrame, family: LineFamily, value: number): string {
  const unit = unitOf(frame.system, family);
  const decimals = family === 'saturation' || family === 'relativeHumidity' ? 0 : decimalsOf(stepOf(frame, family));
  return formatNumber(fromSi(value, unit), decimals);
}

/** The same with its unit. */
export function shown(frame: ChartFrame, family: LineFamily, value: number): string {
  return withUnit(numberOf(frame, family, value), unitOf(frame.system, family));
}
