/** Where each family is written: relative humidity and volume near their ends, wet bulb and enthalpy outside saturation. */
import { moistAirChart } from '../../words/en/moistAirChart.ts';
import { textWidth } from '../box.ts';
import type { ChartLine, LineFamily, LineLabel } from './families.ts';
import type { ChartFrame } from './frame.ts';
import { along, lengthOf, onward } from './path.ts';
import { numberOf, shown } from './scales.ts';

export type Placer = (frame: ChartFrame, line: ChartLine) => LineLabel | null;

const size = ({ letter }: ChartFrame) => letter / 14;

const numberAt = (frame: ChartFrame, { family, value, label }: ChartLine) =>
  family === 'relativeHumidity' ? label : numberOf(frame, family, value);

/** On the line, `space` px between the text and the start of the line. */
function nearStart(frame: ChartFrame, line: ChartLine, space: number): LineLabel {
  const text = numberAt(frame, line);
  return { text, ...along(line.points, space * size(frame) + textWidth(text, frame.letter) / 2) };
}

function nearEnd(frame: ChartFrame, line: ChartLine, space: number): LineLabel {
  const text = numberAt(frame, line);
  return { text, ...along(line.points, -(space * size(frame) + textWidth(text, frame.letter) / 2)) };
}

/** Whether a line that falls begins on saturation, not at the top or the left of the plot. */
function beginsOnSaturation({ plot }: ChartFrame, { points: [start] }: ChartLine): boolean {
  return start !== undefined && start[0] > plot.left + 0.2 && start[1] > plot.top + 0.2;
}

/** Slope of the line where it begins, and of saturation there, as the cosine and sine of the angle between them. */
function meeting(line: ChartLine, saturation: ChartLine) {
  const { angle } = along(line.points, 0);
  const [x] = line.points[0]!;
  const at = saturation.points.findIndex((point, i) => i > 0 && point[0] >= x);
  const [from, to] = [saturation.points[Math.max(0, at - 1)]!, saturation.points[Math.max(1, at)]!];
  const between = (angle * Math.PI) / 180 - Math.atan2(to[1] - from[1], to[0] - from[0]);
  return { angle, cos: Math.abs(Math.cos(between)), sin: Math.abs(Math.sin(between)) };
}

/** Outside saturation in the line's own direction; `off` is how far the scale it stands at is from saturation, px. */
function beyond(frame: ChartFrame, line: ChartLine, saturation: ChartLine, off: number): LineLabel {
  const { angle, cos, sin } = meeting(line, saturation);
  const text = numberAt(frame, line);
  // So far that the nearer corner of the text keeps 4 px from the curve.
  const distance = (off + 4 + (cos * frame.letter) / 2) / sin;
  const [x, y] = onward(line.points[0]!, angle, -(distance + textWidth(text, frame.letter) / 2));
  if (off === 0) return { text, x, y, angle };
  const middle = onward(line.points[0]!, angle, -off / sin);
  return { text, x, y, angle, tick: [onward(middle, angle, -4), onward(middle, angle, 4)] };
}

/** How far the scale of enthalpy stands off saturation: beyond the numbers of the wet bulbs. */
export const scaleDistance = (frame: ChartFrame): number => 34 * size(frame);

const outside =
  (off: (frame: ChartFrame) => number) =>
  (saturation: ChartLine | undefined): Placer =>
  (frame, line) =>
    saturation && beginsOnSaturation(frame, line)
      ? beyond(frame, line, saturation, off(frame))
      : nearStart(frame, line, 14);

export interface Place {
  readonly family: LineFamily;
  readonly number: (saturation: ChartLine | undefined) => Placer;
  /** Where the one line that says what the family is may say so. */
  readonly names: readonly Placer[];
}

/** The name with the value of its line, at one of some shares of the length: the first is where it looks best. */
const named = (text: (shown: string) => string, shares: readonly number[]): Placer[] =>
  shares.map((at) => (frame, line) => {
    const name = text(shown(frame, line.family, line.value));
    const length = lengthOf(line.points);
    return length < 1.4 * textWidth(name, frame.letter) ? null : { text: name, ...along(line.points, at * length) };
  });

/** Shares of the saturation curve, from its middle up: its name goes into the first gap between the numbers there. */
const upTheCurve = Array.from({ length: 24 }, (_, i) => 0.48 + i * 0.02);

const besideSaturation =
  (at: number): Placer =>
  (frame, { points }) => {
    const place = along(points, at * lengthOf(points));
    const [x, y] = onward([place.x, place.y], place.angle - 90, 4 + frame.letter / 2);
    return { text: moistAirChart.saturation, x, y, angle: place.angle };
  };

/** In the order in which they are written. */
export const places: readonly Place[] = [
  {
    family: 'saturation',
    number: () => () => null,
    names: upTheCurve.map(besideSaturation),
  },
  {
    family: 'relativeHumidity',
    number: () => (frame, line) => nearEnd(frame, line, 16),
    names: named((shown) => `${shown} ${moistAirChart.relativeHumidity}`, [0.72, 0.6, 0.5]),
  },
  {
    family: 'wetBulb',
    number: outside(() => 0),
    names: named((shown) => `${moistAirChart.wetBulb} ${shown}`, [0.62, 0.75, 0.5]),
  },
  {
    family: 'enthalpy',
    number: outside(scaleDistance),
    names: named((shown) => `${moistAirChart.enthalpy} ${shown}`, [0.78, 0.6, 0.4]),
  },
  {
    family: 'specificVolume',
    number: () => (frame, line) => nearEnd(frame, line, 14),
    names: named((shown) => `${moistAirChart.specificVolume} ${shown}`, [0.55, 0.7, 0.4, 0.3]),
  },
];
