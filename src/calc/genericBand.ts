import { type TemperatureCurve, temperatureFactor } from './coolingCurves.ts';
import { ratingPoint } from './ratingPoint.ts';
import { fromFahrenheit } from './units.ts';

/** Wet bulbs and outdoor temperatures, °F, at which eight open sets of curves were compared. */
const wetBulbs = [57, 62, 63, 67, 72].map(fromFahrenheit);
const outdoors = [75, 82, 85, 95, 105, 115].map(fromFahrenheit);

/**
 * Capacity over its own value at the rating point: the mean of eight open sets and how far the farthest of them is from it; a
 * line an outdoor temperature, a pair a wet bulb from 62 °F on. Computed from the sets named under `genericCurves`.
 */
const ensemble: readonly (readonly (readonly [mean: number, farthest: number])[])[] = [
  [
    [1.023, 0.023],
    [1.037, 0.026],
    [1.105, 0.048],
    [1.212, 0.1],
  ],
  [
    [0.991, 0.02],
    [1.005, 0.016],
    [1.07, 0.026],
    [1.174, 0.07],
  ],
  [
    [0.977, 0.019],
    [0.99, 0.015],
    [1.054, 0.018],
    [1.158, 0.059],
  ],
  [
    [0.927, 0.021],
    [0.939, 0.015],
    [1, 0.01],
    [1.099, 0.03],
  ],
  [
    [0.873, 0.027],
    [0.885, 0.021],
    [0.942, 0.011],
    [1.038, 0.019],
  ],
  [
    [0.816, 0.032],
    [0.827, 0.028],
    [0.881, 0.019],
    [0.973, 0.028],
  ],
];

/** Never less than this, although all sets meet at the rating point by their making. */
const least = 0.02;
/** At 57 °F the coil is dry or nearly: one model of dry coils has 10 % less than these curves there, so that is the band. */
const nearlyDry = 0.11;

/** Relative half-width that holds all eight sets around a curve, at each of the compared points; a line an outdoor temperature. */
function bandNodes(curve: TemperatureCurve): number[][] {
  const atRating = temperatureFactor(curve, ratingPoint.enteringWetBulb, ratingPoint.outdoorDryBulb);
  return ensemble.map((line, o) => [
    nearlyDry,
    ...line.map(([mean, farthest], i) => {
      const ours = temperatureFactor(curve, wetBulbs[i + 1] as number, outdoors[o] as number) / atRating;
      return Math.max(least, (farthest + Math.abs(mean - ours)) / ours);
    }),
  ]);
}

/** The band of a curve anywhere between the compared points, as a function of wet bulb and outdoor temperature, °C. */
export function genericBand(curve: TemperatureCurve): (enteringWetBulb: number, outdoorDryBulb: number) => number {
  const nodes = bandNodes(curve);
  return (enteringWetBulb, outdoorDryBulb) => {
    const [w, y] = between(wetBulbs, enteringWetBulb);
    const [o, x] = between(outdoors, outdoorDryBulb);
    const along = (line: number) => {
      const [low = 0, high = 0] = (nodes[line] as number[]).slice(w, w + 2);
      return low + y * (high - low);
    };
    return along(o) + x * (along(o + 1) - along(o));
  };
}

/** The node below a value and the share of the way to the next, held inside the nodes. */
function between(nodes: readonly number[], at: number): readonly [number, number] {
  let low = 0;
  while (low < nodes.length - 2 && at > (nodes[low + 1] as number)) low++;
  const from = nodes[low] as number;
  const share = (at - from) / ((nodes[low + 1] as number) - from);
  return [low, Math.min(1, Math.max(0, share))];
}
