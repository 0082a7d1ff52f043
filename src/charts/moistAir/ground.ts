/** Everything on a chart that does not move: its lines, what is written along them, and its two scales. */

import { type Drawing, type Pen, pathOf, type Stroke, word } from '../shapes.ts';
import { axes } from './axes.ts';
import { enthalpyScale } from './enthalpyScale.ts';
import type { ChartLine, LineFamily } from './families.ts';
import type { ChartFrame } from './frame.ts';

/** From the back to the front. */
const pens: readonly (readonly [LineFamily, Pen])[] = [
  ['dryBulb', 'line-grid-fine'],
  ['humidityRatio', 'line-grid-fine'],
  ['specificVolume', 'line-volume'],
  ['enthalpy', 'line-enthalpy'],
  ['wetBulb', 'line-wet-bulb'],
  ['relativeHumidity', 'line-humidity'],
  ['saturation', 'line-saturation'],
];

/** One stroke a family, so that a whole chart is a handful of nodes. */
export function ground(frame: ChartFrame, lines: readonly ChartLine[]): Drawing {
  const strokes = pens.flatMap(([family, pen]): Stroke[] => {
    const d = lines.filter((line) => line.family === family).map(({ points }) => pathOf(points));
    return d.length === 0 ? [] : [{ pen, d: d.join('') }];
  });
  const labels = lines.flatMap((line) =>
    line.labels.map(({ text, x, y, angle }) =>
      word(text, x, y, { angle: Math.round(angle * 10) / 10, anchor: 'middle', weight: 'quiet', clear: true }),
    ),
  );
  const scales = axes(frame);
  return {
    strokes: [...strokes, ...enthalpyScale(frame, lines), ...scales.strokes],
    words: [...labels, ...scales.words],
  };
}
