import { airflowQuantities } from '~/job/airflow/quantities.ts';
import { entered } from '~/job/entered.ts';
import { isFound } from '~/job/measuredTest.ts';
import { joinQuantities } from '~/job/quantities.ts';
import { choiceWords } from '~/words/en/choices.ts';
import { trade } from '~/words/en/reportTrade.ts';
import { lazy } from '../../lazy.tsx';
import { joined, ofKind, perCapacity, percent } from '../../show.ts';
import { assessment, interpreted, job } from '../../store.ts';

joinQuantities(airflowQuantities);

const FoundSaid = lazy(() => import('../../capacity/FoundAirflow.tsx').then((module) => module.FoundSaid));

/** The airflow: how it was found, where and as what it holds, how far it may be out. */
export function Airflow() {
  const each = assessment.value.checks.find(({ code }) => code === 'airflowPerCapacity')?.value ?? null;
  const sized = interpreted.value.test.nominalCapacity !== null;
  return (
    <section>
      <h3>{trade.airflow}</h3>
      <p>
        {isFound(job.value) ? <FoundSaid /> : typedSaid()} {each !== null && sized && trade.each(perCapacity(each))}{' '}
        {staticSaid()}
      </p>
    </section>
  );
}

/** The static pressures of the ducts, where they were read. */
function staticSaid(): string {
  const [supply, back] = (['supplyStatic', 'returnStatic'] as const).map((side) =>
    entered(job.value, `fanTable.${side}`),
  );
  if (typeof supply !== 'number' || typeof back !== 'number') return '';
  const text = (si: number) => joined(ofKind('airPressure', si));
  return trade.static(text(supply), text(back));
}

function typedSaid(): string {
  const { volumeFlow, place, kind, limit } = interpreted.value.test.airflow;
  const method = job.value.chosen['airflow.method'] ?? 'unsure';
  const named = (choiceWords['airflow.method'].options as Readonly<Record<string, string>>)[method] ?? method;
  return `${trade.airflowSaid(
    volumeFlow === null ? trade.notSaid : joined(ofKind('volumeFlow', volumeFlow)),
    named.toLowerCase(),
    trade.place[place],
    trade.kind[kind],
    limit === null ? '' : percent(limit),
  )}.`;
}
