/** The paths of the lines. Nothing is contoured: every point comes from the equation of its own line. */
import { enthalpy } from '../../calc/enthalpy.ts';
import { humidityRatio } from '../../calc/humidityRatio.ts';
import { specificVolume } from '../../calc/specificVolume.ts';
import { wetBulb } from '../../calc/wetBulb.ts';
import { type Point, tenth } from '../shapes.ts';
import { rootOf, sample } from './curve.ts';
import { enthalpyLine, type Falling, volumeLine, wetBulbLine } from './falling.ts';
import type { ChartLine, Family, LineFamily } from './families.ts';
import { type ChartFrame, saturated, xOf, yOf } from './frame.ts';
import { gridValues, shown } from './scales.ts';

/** Cut at the bottom and the sides, and at the top or at saturation, whichever comes first. */
function fallingPath(frame: ChartFrame, { ratioAt, dryBulbAt, saturatedAt }: Falling): Point[] {
  const from = Math.max(frame.dryBulb[0], dryBulbAt(frame.humidityRatio[1]), saturatedAt ?? frame.dryBulb[0]);
  const to = Math.min(frame.dryBulb[1], dryBulbAt(frame.humidityRatio[0]));
  const room = (t: number) => saturated(frame, t) - ratioAt(t);
  if (!(from < to) || room(to) < 0) return [];
  const start = saturatedAt === undefined && room(from) < 0 ? rootOf(room, from, to) : from;
  return path(frame, ratioAt, start, to);
}

/** A line that rises, cut at the bottom or the left and at the top or the right. */
function risingPath(frame: ChartFrame, ratioAt: (t: number) => number): Point[] {
  const [cold, hot] = frame.dryBulb;
  const [dry, damp] = frame.humidityRatio;
  if (ratioAt(hot) <= dry || ratioAt(cold) >= damp) return [];
  const from = ratioAt(cold) < dry ? rootOf((t) => ratioAt(t) - dry, cold, hot) : cold;
  const to = ratioAt(hot) > damp ? rootOf((t) => ratioAt(t) - damp, cold, hot) : hot;
  return path(frame, ratioAt, from, to);
}

function path(frame: ChartFrame, ratioAt: (t: number) => number, from: number, to: number): Point[] {
  const points = sample((t) => [xOf(frame, t), yOf(frame, ratioAt(t))], from, to);
  return points.map(([x, y]) => [tenth(x), tenth(y)] as const);
}

type Make = (frame: ChartFrame) => readonly { readonly value: number; readonly points: readonly Point[] }[];

const falling =
  (
    line: (value: number, p: number) => Falling,
    range: (frame: ChartFrame) => readonly [number, number],
    of: Scaled,
  ): Make =>
  (frame) =>
    gridValues(frame, of, range(frame)).map((value) => ({
      value,
      points: fallingPath(frame, line(value, frame.pressure)),
    }));

type Scaled = 'wetBulb' | 'enthalpy' | 'specificVolume';

const corner = ({ dryBulb, humidityRatio: W, pressure }: ChartFrame, i: 0 | 1) => ({
  t: dryBulb[i],
  W: Math.min(W[i], saturated({ pressure }, dryBulb[i])),
  p: pressure,
});

/** Between the coldest, driest and the hottest, dampest corner of the plot every property has its least and its most. */
const extent =
  (property: (t: number, W: number, p: number) => number) =>
  (frame: ChartFrame): readonly [number, number] => {
    const [low, high] = [corner(frame, 0), corner(frame, 1)];
    return [property(low.t, low.W, low.p), property(high.t, high.W, high.p)];
  };

const relativeHumidities = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

const makers: Readonly<Record<LineFamily, Make>> = {
  saturation: (frame) => [{ value: 1, points: risingPath(frame, (t) => saturated(frame, t)) }],
  relativeHumidity: (frame) =>
    relativeHumidities.map((value) => ({
      value,
      points: risingPath(frame, (t) => humidityRatio(t, value, frame.pressure)),
    })),
  wetBulb: falling(wetBulbLine, extent(wetBulb), 'wetBulb'),
  enthalpy: falling(enthalpyLine, extent(enthalpy), 'enthalpy'),
  specificVolume: falling(volumeLine, extent(specificVolume), 'specificVolume'),
  dryBulb: (frame) =>
    gridValues(frame, 'dryBulb', frame.dryBulb).map((value) => ({ value, points: upright(frame, value) })),
  humidityRatio: (frame) =>
    gridValues(frame, 'humidityRatio', frame.humidityRatio).map((value) => ({ value, points: level(frame, value) })),
};

/** From the foot of the plot up to saturation or to its top. */
function upright(frame: ChartFrame, dryBulb: number): Point[] {
  const top = Math.min(frame.humidityRatio[1], saturated(frame, dryBulb));
  const x = tenth(xOf(frame, dryBulb));
  return top > frame.humidityRatio[0]
    ? [
        [x, tenth(frame.plot.bottom)],
        [x, tenth(yOf(frame, top))],
      ]
    : [];
}

/** From saturation or the left edge to the right. */
function level(frame: ChartFrame, ratio: number): Point[] {
  const [cold, hot] = frame.dryBulb;
  const room = (t: number) => saturated(frame, t) - ratio;
  if (room(hot) <= 0) return [];
  const y = tenth(yOf(frame, ratio));
  const from = room(cold) < 0 ? rootOf(room, cold, hot) : cold;
  return [
    [tenth(xOf(frame, from)), y],
    [tenth(frame.plot.right), y],
  ];
}

const members: Readonly<Record<Family, readonly LineFamily[]>> = {
  saturation: ['saturation'],
  relativeHumidity: ['relativeHumidity'],
  wetBulb: ['wetBulb'],
  enthalpy: ['enthalpy'],
  specificVolume: ['specificVolume'],
  grid: ['dryBulb', 'humidityRatio'],
};

/** The lines of a family that cross the plot, without labels. */
export function linesOf(frame: ChartFrame, family: Family): ChartLine[] {
  return members[family].flatMap((of) =>
    makers[of](frame)
      .filter(({ points }) => points.length > 1)
      .map(({ value, points }) => ({ family: of, value, label: shown(frame, of, value), points, labels: [] })),
  );
}
