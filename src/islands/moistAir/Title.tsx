import { entered } from '~/job/entered.ts';
import { format, withUnit } from '~/job/format.ts';
import { unitOf } from '~/job/quantities.ts';
import { jobLine } from '~/words/en/jobLine.ts';
import { airChart, processWords } from '~/words/en/moistAir.ts';
import { system } from '../jobStore.ts';
import { capacityText } from '../show.ts';
import { ownProcess } from './own.ts';
import { chartJob, isInvented, points, pressure } from './points.ts';
import { pressureText, spokenAir } from './said.ts';

/** For which pressure the chart is drawn, and what is on it. */
export function Title() {
  const load = ownProcess.value?.load;
  const said = [
    ...points.value.map(({ name, air }) => airChart.at(name, spokenAir(air, 'relativeHumidity'))),
    ...(load ? [airChart.at(processWords.job, capacityText(load.total))] : []),
  ];
  return (
    <figcaption class="air-title">
      <b>{titleText()}</b>
      <span class="spoken">{said.length === 0 ? airChart.nothing : said.join('; ')}.</span>
      {said.length === 0 && <span class="hint">{airChart.nothing}</span>}
    </figcaption>
  );
}

/** The title line of the chart, on the page and on a file of it. */
export function titleText(withOrigin = true): string {
  const invented = withOrigin && isInvented.value ? `${jobLine.demo}. ` : '';
  return `${invented}${airChart.pressure(pressureText(pressure.value))}, ${placeText()}`;
}

function placeText(): string {
  if (entered(chartJob.value, 'barometer') !== null) return airChart.station;
  const height = entered(chartJob.value, 'altitude');
  if (height === null) return airChart.seaLevel;
  const unit = unitOf('altitude', system.value);
  return airChart.height(withUnit(format(height, unit, 0), unit));
}
