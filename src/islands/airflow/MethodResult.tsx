import type { AirflowFound } from '~/calc/airflow/found.ts';
import { reaching } from '~/calc/airflow/found.ts';
import { airflowPerTon } from '~/calc/airflow/perTon.ts';
import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { attempt, orNull } from '~/calc/outcome.ts';
import { sourceLabels } from '~/calc/sourceLabels.ts';
import { tonOfRefrigeration } from '~/calc/units.ts';
import { entered } from '~/job/entered.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { airflowProblems, airflowRemarks } from '~/words/en/airflowRemarks.ts';
import { causeNames, waitingName, airflowResult as words } from '~/words/en/airflowResult.ts';
import { typing } from '../fields.ts';
import { job } from '../jobStore.ts';
import { joined, ofCapacity, ofKind, remarkAmount } from '../show.ts';
import { fine } from './flowText.ts';
import { found, type Method, use, used } from './model.ts';

/** What a method makes of its figures, how good that is and why; or what it still needs. */
export function MethodResult({ method }: { method: Method }) {
  const outcome = found.value?.get(method);
  if (!outcome || typing.value !== null) return null;
  if (!outcome.ok) {
    const { problem, waiting } = outcome;
    if (!problem) return <Echo>{words.waiting(waiting.map(waitingName))}</Echo>;
    return <Check>{airflowProblems(problem)}</Check>;
  }
  const answer = outcome.value;
  return (
    <section class="airflow-result" aria-label={words.name}>
      <Ledger caption={words.name} lines={linesOf(answer)} />
      {answer.partial && <Check>{words.partial}</Check>}
      {answer.remarks.map(({ code, weight, amounts }, index) => {
        const text = airflowRemarks[code]?.(...amounts.map((one) => joined(remarkAmount(one))));
        if (!text) return null;
        return weight === 'note' ? <Echo key={index}>{text}</Echo> : <Check key={index}>{text}</Check>;
      })}
      <details class="fold">
        <summary>{words.why}</summary>
        <Ledger caption={words.why} lines={causesOf(answer)} />
      </details>
      <p class="tools">
        <button
          type="button"
          class="action"
          aria-pressed={used.value === method ? 'true' : 'false'}
          onClick={() => use(method)}
        >
          {used.value === method ? words.counts : words.use}
        </button>
      </p>
    </section>
  );
}

function linesOf(answer: AirflowFound): readonly LedgerLine[] {
  const nominal = entered(job.value, 'nominalCapacity');
  const perTon = nominal === null ? null : orNull(attempt(() => airflowPerTon(answer.dryAirFlow, nominal)));
  return [
    ...(answer.at === 'standard' ? [] : [{ name: words.asItMoves, ...ofKind('volumeFlow', answer.volumeFlow) }]),
    { name: words.asStandard, ...ofKind('volumeFlow', standardVolumeFlow(answer.dryAirFlow)), sum: true },
    ...(perTon ? [{ name: words.perTon, ...ofCapacity(perTon.each / tonOfRefrigeration) }] : []),
    { name: words.uncertainty, ...fine(answer.u) },
  ];
}

/** The causes, the greatest first, with what each rests on. */
function causesOf({ sources }: AirflowFound): readonly LedgerLine[] {
  return [...sources]
    .sort((one, other) => Math.abs(reaching(other)) - Math.abs(reaching(one)))
    .map((source) => ({
      name: causeNames[source.name] ?? source.name,
      ...fine(Math.abs(reaching(source))),
      source: sourceLabels[source.basis],
    }));
}
