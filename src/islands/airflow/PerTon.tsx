import { airflowPerTon } from '~/calc/airflow/perTon.ts';
import { attempt, orNull } from '~/calc/outcome.ts';
import { sourceLabels } from '~/calc/sourceLabels.ts';
import { RangeRows } from '~/charts/airflow/RangeRows.tsx';
import { entered } from '~/job/entered.ts';
import { formatNumber, unitLabel } from '~/job/format.ts';
import { fromSi } from '~/job/units.ts';
import { perTonWords as words } from '~/words/en/airflowContext.ts';
import { job, system } from '../jobStore.ts';
import { QuantityField } from '../QuantityField.tsx';
import { perCapacity } from '../show.ts';
import { isDesk } from './model.ts';

/** The airflow for the size of the system, beside what is usual. */
export function PerTon({ dryAirFlow, u }: { dryAirFlow: number; u: number }) {
  const nominal = entered(job.value, 'nominalCapacity');
  const perTon = nominal === null ? null : orNull(attempt(() => airflowPerTon(dryAirFlow, nominal)));
  return (
    <section>
      <h2>{words.head}</h2>
      {perTon ? (
        <>
          <p>{words.each(perCapacity(perTon.each))}</p>
          <Ranges {...perTon} u={u} />
          <p class="answer-note">{words.outranked}</p>
        </>
      ) : (
        <>
          <p>{words.size}</p>
          <QuantityField of="nominalCapacity" />
        </>
      )}
    </section>
  );
}

function Ranges({ each, ranges, u }: ReturnType<typeof airflowPerTon> & { u: number }) {
  const unit = system.value === 'ip' ? 'cfmPerTon' : 'lsPerKw';
  const shown = (flow: number) => fromSi(flow, unit);
  const rows = ranges.map(({ name, range: [low, high], position, source }) => ({
    name: words.names[name],
    low: shown(low),
    high: shown(high),
    position,
    source,
  }));
  const text = (value: number) => formatNumber(value, 0);
  return (
    <>
      <RangeRows
        rows={rows}
        line={shown(each)}
        band={[shown(each * (1 - 2 * u)), shown(each * (1 + 2 * u))]}
        unit={unitLabel(unit)}
        width={isDesk.value ? 600 : 358}
        summary={words.summary(perCapacity(each))}
      />
      <table class="ledger">
        <caption class="spoken">{words.head}</caption>
        <tbody>
          {rows.map(({ name, low, high, position, source }) => (
            <tr key={name}>
              <th scope="row">
                {name} <cite class="note quiet">{sourceLabels[source]}</cite>
              </th>
              <td class="number">{words.range(text(low), text(high))}</td>
              <td class="unit">{words.positions[position]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
