/** The chart in words, for those who do not see it. */
import type { CoilLoad, MoistAir } from '../../calc/types.ts';
import type { System } from '../../job/types.ts';
import { differenceUnit, displayUnit } from '../../job/units.ts';
import { moistAirChart, chartSentences as say } from '../../words/en/moistAirChart.ts';
import { amountText, fractionText, inUnit, powerText, pressureText } from './amounts.ts';
import type { ChartFrame } from './frame.ts';
import { readingText } from './processWords.ts';

/** What the chart shows, in sentences. */
export function describe(
  frame: Pick<ChartFrame, 'system' | 'pressure'>,
  entering: MoistAir | null,
  leaving: MoistAir | null,
  load: CoilLoad | null,
): string {
  const { system } = frame;
  const sentences = [say.chart(pressureText(frame.pressure, system))];
  if (entering) sentences.push(say.state(moistAirChart.returnAir, stateText(entering, system)));
  if (leaving) sentences.push(say.state(moistAirChart.supplyAir, stateText(leaving, system)));
  if (entering && leaving) sentences.push(...changeOf(entering, leaving, system));
  if (load) sentences.push(say.load(powerText(load.sensible, system), powerText(load.latent, system)));
  if (load?.apparatus) {
    const { dewPoint, bypassFactor } = load.apparatus;
    sentences.push(say.coil(amountText('temperature', dewPoint, system), fractionText(bypassFactor)));
  }
  return sentences.join(' ');
}

const stateText = (air: MoistAir, system: System) =>
  `${readingText(air, system)}, ${amountText('humidityRatio', air.humidityRatio, system)}`;

function changeOf(entering: MoistAir, leaving: MoistAir, system: System): string[] {
  const step = differenceUnit(displayUnit.temperature[system]);
  const drop = entering.dryBulb - leaving.dryBulb;
  const water = entering.humidityRatio - leaving.humidityRatio;
  const texts = [inUnit(Math.abs(drop), step), amountText('humidityRatio', Math.abs(water), system)] as const;
  return [say.change(texts[0], drop >= 0, texts[1], water >= 0)];
}
