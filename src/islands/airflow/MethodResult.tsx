import { useMemo } from 'preact/hooks';
import type { AirflowFound } from '~/calc/airflow/found.ts';
import { reaching } from '~/calc/airflow/found.ts';
import { airflowPerTon } from '~/calc/airflow/perTon.ts';
import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { attempt, orNull } from '~/calc/outcome.ts';
import { sourceLabels } from '~/calc/sourceLabels.ts';
import type { Problem, Step } from '~/calc/types.ts';
import { findBy } from '~/job/airflow/find.ts';
import { entered } from '~/job/entered.ts';
import { unitLabel } from '~/job/format.ts';
import { displayUnit } from '~/job/units.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { airflowProblems, airflowRemarks } from '~/words/en/airflowRemarks.ts';
import { causeNames, airflowResult as words } from '~/words/en/airflowResult.ts';
import { airflowSheet } from '~/words/en/airflowSheet.ts';
import { typing } from '../fields.ts';
import { job, system } from '../jobStore.ts';
import { LateFold } from '../LateFold.tsx';
import { joined, ofCapacity, ofKind, remarkAmount } from '../show.ts';
import { WorkingLines } from '../WorkingLines.tsx';
import { detailsOf } from './details.ts';
import { endTexts, fine, flowText, standardText } from './flowText.ts';
import { found, isDesk, type Method, needText, wayName } from './model.ts';

/** More than these would fill a phone while nothing is typed yet. */
const named = 3;

/** What a method makes of its figures, how good that is and why; or what it still needs, once the fingers rest. */
export function MethodResult({ method }: { method: Method }) {
  const outcome = found.value?.get(method);
  if (!outcome) return null;
  if (!outcome.ok) {
    const { problem, waiting } = outcome;
    if (typing.value !== null) return null;
    if (!problem) return <Echo>{words.waiting(needText(waiting.slice(0, named)), waiting.length - named)}</Echo>;
    return <Check>{problemText(problem)}</Check>;
  }
  const answer = outcome.value;
  const { partial, remarks } = answer;
  const doubts = remarks.filter(({ weight }) => weight !== 'note').length;
  const aside = [partial && words.first, doubts > 0 && words.toCheck(doubts)].filter(Boolean).join(', ');
  return (
    <section class="airflow-result" aria-label={words.of(wayName(method))}>
      <details class="fold" open={isDesk.value}>
        <summary>
          <span class="part-name">{airflowSheet.line(flowText(answer), ...endTexts(answer))}</span>{' '}
          <span class="part-said">{aside}</span>
        </summary>
        <Echo>{words.comes(standardText(answer.dryAirFlow), ...standardEnds(answer))}</Echo>
        {partial && <Check>{words.partial}</Check>}
        {remarks.map(({ code, weight, amounts }, index) => {
          const text = airflowRemarks[code]?.(...amounts.map((one) => joined(remarkAmount(one))));
          if (!text) return null;
          return weight === 'note' ? <Echo key={index}>{text}</Echo> : <Check key={index}>{text}</Check>;
        })}
        <Ledger caption={words.name} lines={linesOf(answer)} />
        <LateFold summary={words.why}>
          <Ledger caption={words.why} lines={causesOf(answer)} />
          <h3>{words.working}</h3>
          <Working method={method} />
        </LateFold>
      </details>
    </section>
  );
}

function problemText(problem: Problem): string {
  const ofPressure = (value: number) => joined(ofKind('airPressure', value));
  return airflowProblems(problem, [ofPressure(problem.value), ofPressure(problem.min), ofPressure(problem.max)]);
}

function linesOf(answer: AirflowFound): readonly LedgerLine[] {
  const nominal = entered(job.value, 'nominalCapacity');
  const perTon = nominal === null ? null : orNull(attempt(() => airflowPerTon(answer.dryAirFlow, nominal)));
  const standard = standardVolumeFlow(answer.dryAirFlow);
  return [
    ...detailsOf(answer),
    ...(answer.at === 'standard' ? [] : [{ name: words.asItMoves, ...ofKind('volumeFlow', answer.volumeFlow) }]),
    { name: words.asStandard, ...ofKind('volumeFlow', standard), sum: true },
    {
      name: words.range,
      number: words.between(...standardEnds(answer)),
      unit: unitLabel(displayUnit.volumeFlow[system.value]),
    },
    { name: words.uncertainty, ...fine(answer.u) },
    ...(perTon ? [{ name: words.perTon, ...ofCapacity(perTon.each) }] : []),
  ];
}

/** Between which ends the standard air lies. */
const standardEnds = ({ dryAirFlow, u }: AirflowFound) => endTexts({ volumeFlow: standardVolumeFlow(dryAirFlow), u });

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

/** The method's own steps, as on every sheet. */
function Working({ method }: { method: Method }) {
  const open = job.value;
  const steps = useMemo(() => {
    const taken: Step[] = [];
    findBy(open, method, (step) => taken.push(step));
    return taken;
  }, [open, method]);
  return (
    <div class="working-steps">
      <WorkingLines steps={steps} />
    </div>
  );
}
