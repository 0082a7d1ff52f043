/** The two scales of a chart: dry bulb along the foot, humidity ratio up the right side. */
import { moistAirChart } from '../../words/en/moistAirChart.ts';
import { type Box, boxOf } from '../box.ts';
import { type Drawing, tenth, type Word, word } from '../shapes.ts';
import { type ChartFrame, xOf, yOf } from './frame.ts';
import { gridValues, numberOf, shown } from './scales.ts';

const tick = 6;

export function axes(frame: ChartFrame): Drawing {
  const { plot, letter, width } = frame;
  const size = letter / 14;
  const across = gridValues(frame, 'dryBulb', frame.dryBulb);
  const up = gridValues(frame, 'humidityRatio', frame.humidityRatio);
  const narrow = frame.labels === 'narrow';
  const last = across.at(-1);

  const row = plot.bottom + (tick + 11) * size;
  const words: Word[] = [
    ...across.map((value) => {
      const text = narrow && value === last ? shown(frame, 'dryBulb', value) : numberOf(frame, 'dryBulb', value);
      return word(text, xOf(frame, value), row, { anchor: 'middle' });
    }),
    ...up.map((value) =>
      word(numberOf(frame, 'humidityRatio', value), plot.right + (tick + 5) * size, yOf(frame, value)),
    ),
    word(moistAirChart.humidityRatioAxis[frame.system], width - 3, 9 * size, { anchor: 'end' }),
  ];
  if (!narrow) {
    words.push(word(moistAirChart.dryBulbAxis[frame.system], plot.right, row + 21 * size, { anchor: 'end' }));
  }
  const feet = across.map((value) => `M${tenth(xOf(frame, value))} ${tenth(plot.bottom)}v${tick}`);
  const sides = up.map((value) => `M${tenth(plot.right)} ${tenth(yOf(frame, value))}h${tick}`);
  const frameLine = `M${tenth(plot.left)} ${tenth(plot.bottom)}H${tenth(plot.right)}V${tenth(plot.top)}`;
  return { strokes: [{ pen: 'line-scale', d: frameLine + feet.join('') + sides.join('') }], words };
}

/** The room that the numbers and the two scales take: nothing else is written there. */
export function axisBoxes(frame: ChartFrame): Box[] {
  const { left, top, right, bottom } = frame.plot;
  return [
    ...axes(frame).words.map((one) => boxOf(one, frame.letter)),
    { x: (left + right) / 2, y: bottom, width: right - left, height: 0, angle: 0 },
    { x: right, y: (top + bottom) / 2, width: 0, height: bottom - top, angle: 0 },
  ];
}
