import { useState } from 'preact/hooks';
import type { LogColumn } from '~/calc/confidence/logColumns.ts';
import type { NotSteady } from '~/calc/confidence/steady.ts';
import { SteadyPlot } from '~/charts/SteadyPlot.tsx';
import { formatNumber } from '~/job/format.ts';
import type { JudgedLog } from '~/job/log/judgeLog.ts';
import type { TracePoint } from '~/job/log/thinTrace.ts';
import { traceEdit } from '~/job/log/trace.ts';
import { meansEdits } from '~/job/sure/steadyMeans.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { steadyResult as words } from '~/words/en/probeSteady.ts';
import { edit, job, system } from '../../jobStore.ts';
import { clock, humidityStep, inUnitOf, joined, ofKind, percent, temperature, temperatureStep } from '../../show.ts';
import { isDesk } from '../model.ts';
import { found, record, recordMeasure } from './model.ts';

/** Whether the record is steady, since when and why not; the plot, the means, and the way to the capacity sheet. */
export function SteadyResult() {
  const made = found.value;
  if (!made) return null;
  const { steadiness } = made;
  return (
    <section class="steady-result" aria-label={words.title}>
      <p class="label" role="status">
        <b>{steadiness.isSteady ? words.steady(timeText(made, steadiness.since ?? 0)) : words.notSteady}</b>
      </p>
      {steadiness.notSteady.map((fault, index) => (
        <Check key={index}>{faultText(fault)}</Check>
      ))}
      <Bad of={made} />
      <Plot of={made} />
      <Means of={made} />
    </section>
  );
}

/** A time of the record as a clock; of one without dates as hours, minutes and seconds of its own. */
function timeText({ dated, steadiness }: JudgedLog, seconds: number): string {
  if (dated) return clock(new Date(seconds * 1000).toISOString());
  const whole = Math.round(seconds % 86_400);
  const isClock = steadiness.window.to > 3600;
  const two = (count: number) => String(Math.floor(count)).padStart(2, '0');
  return isClock ? `${two(whole / 3600)}:${two((whole % 3600) / 60)}` : `${two(whole / 60)}:${two(whole % 60)}`;
}

function amount(column: NotSteady['column'], value: number): string {
  if (column === 'capacity') return joined(inUnitOf(value, 'percent', 1));
  if (column?.endsWith('humidity')) return humidityStep(value, recordMeasure.value);
  return column === 'supplyStatic' ? joined(ofKind('airPressure', value)) : temperatureStep(value);
}

/** s. A record that ends so long before the start of the test is none of it. */
const anotherDay = 12 * 3600;

function faultText({ code, column, value, most }: NotSteady): string {
  if (code === 'range')
    return words.faults.range(amount(column, value), words.names[column ?? 'capacity'], amount(column, most));
  if (code === 'trend') return words.faults.trend(amount('capacity', value));
  if (code === 'tooFewRows') return words.faults.tooFewRows(formatNumber(value, 0));
  if (code === 'tooEarly' && value > anotherDay) return words.faults.otherDay;
  return words.faults[code](words.seconds(value));
}

/** What could not be read, with the lines of the first, and what was left out. */
function Bad({ of: { steadiness, bad } }: { of: JudgedLog }) {
  const { counts } = steadiness;
  const lines = bad.map(({ line, text }) => words.line(line, text)).join(', ');
  const more = bad.length < counts.unreadable ? ' …' : '';
  const said = [
    counts.repeated > 0 && words.repeated(counts.repeated),
    counts.backwards > 0 && words.backwards(counts.backwards),
  ].filter(Boolean);
  return (
    <>
      {counts.unreadable > 0 && (
        <Check>
          {words.unreadable(counts.unreadable)}
          {lines && `: ${lines}${more}`}.
        </Check>
      )}
      {record.value && (
        <Echo>
          {words.left(formatNumber(counts.used, 0), formatNumber(counts.rows, 0))} {said.join(' ')}
        </Echo>
      )}
    </>
  );
}

const signed = (fraction: number) => `${fraction < 0 ? '−' : '+'}${joined(inUnitOf(Math.abs(fraction), 'percent', 1))}`;

function Plot({ of: made }: { of: JudgedLog }) {
  const { trace, steadiness } = made;
  const [looked, setLooked] = useState<number | null>(null);
  const points = trace.flatMap(({ time, capacity }) =>
    capacity === null ? [] : [{ minutes: (time - steadiness.window.to) / 60, value: capacity }],
  );
  if (points.length < 3) return null;
  const minutesAt = (time: number) => (time - steadiness.window.to) / 60;
  const values = points.map(({ value }) => value);
  const at = looked === null ? null : trace[Math.min(looked, trace.length - 1)];
  const verdict = steadiness.isSteady ? words.steady(timeText(made, steadiness.since ?? 0)) : words.notSteady;
  return (
    <>
      <SteadyPlot
        points={points}
        window={minutesAt(steadiness.window.from)}
        since={steadiness.since === null ? null : minutesAt(steadiness.since)}
        trend={steadiness.trend}
        at={at ? minutesAt(at.time) : null}
        width={isDesk.value ? 440 : 358}
        words={{
          since: steadiness.since === null ? '' : words.sinceLabel(timeText(made, steadiness.since)),
          axis: words.axis,
          summary: words.summary(
            formatNumber(-(points[0]?.minutes ?? 0), 0),
            signed(Math.min(...values)),
            signed(Math.max(...values)),
            verdict,
          ),
        }}
      />
      <label class="label" for="record-moment">
        {words.slider}
      </label>
      <input
        id="record-moment"
        class="slide"
        type="range"
        min={0}
        max={trace.length - 1}
        value={looked ?? trace.length - 1}
        aria-valuetext={at ? momentText(made, at) : undefined}
        onInput={({ currentTarget }) => setLooked(currentTarget.valueAsNumber)}
      />
      <p class="hint">{at ? momentText(made, at) : '\u00a0'}</p>
      <Table of={made} />
    </>
  );
}

function readingText(column: LogColumn, value: number): string {
  if (column === 'supplyStatic') return joined(ofKind('airPressure', value));
  if (!column.endsWith('humidity')) return temperature(value);
  return recordMeasure.value === 'wetBulb' ? temperature(value) : percent(value);
}

function momentText(made: JudgedLog, { time, capacity, readings }: TracePoint): string {
  const said = (Object.entries(readings) as [LogColumn, number][]).map(
    ([column, value]) => `${words.names[column].toLowerCase()} ${readingText(column, value)}`,
  );
  return words.moment(
    timeText(made, time),
    [...said, ...(capacity === null ? [] : [words.capacityAt(signed(capacity))])].join(', '),
  );
}

/** Twelve moments of the record. */
function Table({ of: made }: { of: JudgedLog }) {
  const step = Math.max(1, Math.floor(made.trace.length / 12));
  const rows = made.trace.filter((_, index) => index % step === 0 || index === made.trace.length - 1);
  const columns = Object.keys(rows[0]?.readings ?? {}) as LogColumn[];
  return (
    <details class="fold">
      <summary>{words.table}</summary>
      <ScrollRegion label={words.table}>
        <table class="ledger">
          <caption class="spoken">{words.table}</caption>
          <thead>
            <tr>
              <td />
              {columns.map((column) => (
                <th key={column} scope="col" class="number">
                  {words.names[column]}
                </th>
              ))}
              <th scope="col" class="number">
                {words.names.capacity}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.time}>
                <th scope="row" class="record-time">
                  {timeText(made, row.time)}
                </th>
                {columns.map((column) => (
                  <td key={column} class="number">
                    {readingText(column, row.readings[column] ?? Number.NaN)}
                  </td>
                ))}
                <td class="number">{row.capacity === null ? '–' : signed(row.capacity)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </details>
  );
}

/** The means of the last window and how far the readings moved in it; one key takes them over. */
function Means({ of: { steadiness, dated, trace } }: { of: JudgedLog }) {
  const columns = Object.keys(steadiness.means) as LogColumn[];
  const lines = columns.map((column): LedgerLine => {
    const mean = readingText(column, steadiness.means[column] ?? Number.NaN);
    return {
      name: `${words.names[column]} (${words.spread} ${amount(column, steadiness.spreads[column] ?? 0)})`,
      number: mean.replace(/\u00a0.*$/, ''),
      unit: mean.replace(/^.*\u00a0/, ''),
    };
  });
  const stamp = String(steadiness.window.to);
  const at = dated ? new Date(steadiness.window.to * 1000).toISOString() : null;
  const isUsed = job.value.tables['steady.batches']?.rows[0]?.[0] === stamp;
  return (
    <>
      <h3>{words.means}</h3>
      <Ledger caption={words.means} lines={lines} />
      {steadiness.means.supplyStatic !== undefined && <p class="hint">{words.staticGoes}</p>}
      {isUsed ? (
        <Echo>{words.used}</Echo>
      ) : (
        <p class="tools">
          <button
            type="button"
            class={steadiness.isSteady ? 'action' : 'plain-button'}
            onClick={() =>
              edit(
                ...meansEdits(job.value, steadiness, { stamp, at, measure: recordMeasure.value, system: system.value }),
                traceEdit(trace, steadiness, recordMeasure.value),
              )
            }
          >
            {steadiness.isSteady ? words.use : words.useUnsteady}
          </button>
        </p>
      )}
    </>
  );
}
