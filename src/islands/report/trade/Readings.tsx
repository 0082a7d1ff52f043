import { listedReadings, meanReading, measuredHere } from '~/job/readings.ts';
import { Mark } from '~/parts/Mark.tsx';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { choiceWords } from '~/words/en/choices.ts';
import { trade } from '~/words/en/reportTrade.ts';
import { latentUnseen } from '../../capacity/remarks.ts';
import { capacityText, clock, humidityStep, percent, temperature, temperatureStep } from '../../show.ts';
import { assessment, interpreted, job } from '../../store.ts';
import { CamePlace, Figure } from '../Came.tsx';
import { note } from '../facts.ts';

/** Every reading: where, what, how far its probe may be out, with which probe and when. */
export function Readings() {
  const humidity = measuredHere(job.value)[1] === 'wetBulb' ? 'wetBulb' : 'relativeHumidity';
  return (
    <section class="report-readings">
      <h3>{trade.readings}</h3>
      <ScrollRegion label={trade.readings}>
        <table class="ledger">
          <caption class="spoken">{trade.readings}</caption>
          <thead>
            <tr>
              <th scope="col">{trade.air}</th>
              <th scope="col">{trade.where}</th>
              <th scope="col" class="number">
                {trade.temperature}
              </th>
              <th scope="col" class="number">
                {trade.humidity[humidity]}
              </th>
              <th scope="col" class="number">
                {trade.limits}
              </th>
              <th scope="col">{trade.probe}</th>
              <th scope="col" class="number">
                {trade.at}
              </th>
            </tr>
          </thead>
          <tbody>
            <AirRow place="entering" humidity={humidity} />
            <AirRow place="leaving" humidity={humidity} />
            <OutdoorRow />
          </tbody>
        </table>
      </ScrollRegion>
      <ComesTo />
    </section>
  );
}

function AirRow({ place, humidity }: { place: 'entering' | 'leaving'; humidity: 'relativeHumidity' | 'wetBulb' }) {
  const { probeLimits } = interpreted.value.test;
  const mean = meanReading(job.value, place);
  const [dryBulb, damp] = [mean.dryBulb, mean[humidity]];
  const { name } = trade.rows[place];
  return (
    <tr>
      <th scope="row">
        <Mark of={place} />{' '}
        <Figure at="readings" group={place}>
          {name}
        </Figure>
      </th>
      <td>{whereOf(place)}</td>
      <td class="number">{dryBulb === null ? trade.notSaid : temperature(dryBulb)}</td>
      <td class="number">
        {damp === null ? trade.notSaid : humidity === 'wetBulb' ? temperature(damp) : percent(damp)}
      </td>
      <td class="number">
        {trade.limit(temperatureStep(probeLimits.dryBulb))}, {trade.limit(limitText(humidity, probeLimits[humidity]))}
      </td>
      <td>{note(`${place}.probe`) || trade.notSaid}</td>
      <td class="number">{clock(job.value.entered[`${place}.dryBulb`]?.at ?? '') || trade.notSaid}</td>
    </tr>
  );
}

/** Limits of a humidity are usually whole per cents. */
const limitText = (measure: 'relativeHumidity' | 'wetBulb', si: number) =>
  measure === 'relativeHumidity' && Number.isInteger(Math.round(si * 1000) / 10)
    ? percent(si)
    : humidityStep(si, measure);

/** Where it was read, and whether it stands for several readings. */
function whereOf(place: 'entering' | 'leaving'): string {
  const { entered } = job.value;
  const kept = listedReadings(job.value, place).length;
  const now = entered[`${place}.dryBulb`]?.text ? 1 : 0;
  const points = place === 'leaving' ? interpreted.value.test.supplyPoints.length : 0;
  return [
    trade.rows[place].where,
    kept + now > 1 && trade.mean(kept + now),
    entered[`${place}.dryBulb`]?.origin === 'from sheet' && points === 0 && trade.record,
    points > 1 && trade.points(points),
  ]
    .filter(Boolean)
    .join(', ');
}

function OutdoorRow() {
  const { outdoorDryBulb, fullSpeed } = interpreted.value.test;
  const speed = fullSpeed && (choiceWords.fullSpeed.options as Readonly<Record<string, string>>)[fullSpeed];
  return (
    <tr>
      <th scope="row">{trade.rows.outdoors.name}</th>
      <td>{trade.rows.outdoors.where}</td>
      <td class="number">{outdoorDryBulb === null ? trade.notSaid : temperature(outdoorDryBulb)}</td>
      <td colSpan={3}>{speed && `${choiceWords.fullSpeed.ask} ${speed}.`}</td>
      <td class="number">{clock(job.value.entered.outdoorDryBulb?.at ?? '') || trade.notSaid}</td>
    </tr>
  );
}

const figure = (text: string) => (
  <Figure at="readings" group="measured">
    {text}
  </Figure>
);

/** How the work divides, and the drop in temperature. */
function ComesTo() {
  const { measured, entering, leaving } = assessment.value;
  if (!measured.ok || !entering.ok || !leaving.ok) return null;
  const { sensible, latent } = measured.value;
  const drop = temperatureStep(entering.value.dryBulb - leaving.value.dryBulb);
  return (
    <CamePlace at="readings">
      <p>
        {trade.comesTo(
          figure(capacityText(sensible)),
          latentUnseen.value ? trade.unseen : figure(capacityText(latent)),
          drop,
        )}
      </p>
    </CamePlace>
  );
}
