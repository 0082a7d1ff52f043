import { measureOf } from '~/calc/sideBySide.ts';
import { chosen } from '~/job/choices.ts';
import { changesAfterLock, lockedOf } from '~/job/lockList.ts';
import type { Assumed } from '~/job/measuredTest.ts';
import { joinSure } from '~/job/sure/join.ts';
import { choiceWords } from '~/words/en/choices.ts';
import { assumedWords, trade } from '~/words/en/reportTrade.ts';
import { changeSaid } from '../../lockSaid.ts';
import { humidityStep, percent, temperatureStep } from '../../show.ts';
import { interpreted, job } from '../../store.ts';
import { note } from '../facts.ts';

joinSure();

/** The instruments, what was done to trust them, and when they were calibrated. */
export function Instruments() {
  const named = note('report.instruments');
  const calibrated = note('report.calibration');
  return (
    <section>
      <h3>{trade.instruments}</h3>
      <p class="report-typed">{named || trade.instrumentsEmpty}</p>
      {calibrated !== '' && <p>{trade.calibrated(calibrated)}</p>}
      <p>{checkedSaid()}</p>
    </section>
  );
}

function checkedSaid(): string {
  const { sideBySide, leaving } = interpreted.value.test;
  const standard = chosen(job.value, 'probes.humidityStandard');
  const held = [
    standard && standard !== 'none' ? trade.standards[standard] : '',
    chosen(job.value, 'probes.iceBath') === 'yes' ? trade.iceBath : '',
  ];
  if (!sideBySide) return [trade.unchecked, ...held].filter(Boolean).join(' ');
  const { dryBulb, humidity } = sideBySide.returnAir;
  const checked = trade.checked(
    temperatureStep(-dryBulb),
    humidity === null ? '' : humidityStep(-humidity, measureOf(leaving)),
  );
  return [checked, sideBySide.drift ? trade.again : '', ...held].filter(Boolean).join(' ');
}

/** What nobody said, and what is taken in its place. */
export function TakenForGranted({ isRecorded }: { isRecorded: boolean }) {
  const all = [...interpreted.value.assumed.map(assumedText), ...(isRecorded ? [] : [trade.noRecord])];
  return (
    <section>
      <h3>{trade.assumed}</h3>
      <p>{all.length === 0 ? trade.assumedNone : capital(`${all.join('; ')}.`)}</p>
    </section>
  );
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function assumedText(what: Assumed): string {
  const { airflow, blower, probeLimits, line } = interpreted.value.test;
  const values: Readonly<Record<Assumed, () => string>> = {
    altitude: () => '',
    'airflow.place': () => trade.place[airflow.place],
    'airflow.kind': () => trade.kind[airflow.kind],
    'blower.place': () => choiceWords['blower.place'].options[blower.place].toLowerCase(),
    'rating.basis': () => '',
    'probeLimits.dryBulb': () => temperatureStep(probeLimits.dryBulb),
    'probeLimits.relativeHumidity': () => percent(probeLimits.relativeHumidity),
    'probeLimits.wetBulb': () => temperatureStep(probeLimits.wetBulb),
    line: () => percent(line),
  };
  return assumedWords[what](values[what]());
}

/** What was changed after the figures were locked: nothing is said of an open record. */
export function Changes() {
  if (!lockedOf(job.value)) return null;
  const changes = changesAfterLock(job.value);
  return (
    <section>
      <h3>{trade.changes}</h3>
      {changes.length === 0 ? (
        <p>{trade.changesNone}</p>
      ) : (
        <ul>
          {changes.map((change) => {
            const { what, was, now, at } = changeSaid(change);
            return <li key={`${change.slot}/${change.key}/${change.row}`}>{trade.change(what, was, now, at)}</li>;
          })}
        </ul>
      )}
    </section>
  );
}
