import { type ProcessColumn, removeProcess, setProcess } from '~/job/processEdits.ts';
import { type PointKey, type Process, processKinds } from '~/job/processes.ts';
import { unitOf } from '~/job/quantities.ts';
import type { Cell } from '~/job/states.ts';
import type { QuantityKey } from '~/job/types.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { Select } from '~/parts/Select.tsx';
import { processWords } from '~/words/en/moistAir.ts';
import { processProblems, processSteps } from '~/words/en/moistAirSteps.ts';
import { CellField } from '../../CellField.tsx';
import { typing } from '../../fields.ts';
import { edit, job, system } from '../../jobStore.ts';
import { temperature } from '../../show.ts';
import { nameOfPoint, points, processes, processNumber, states } from '../points.ts';
import { Loads } from './Loads.tsx';

/** One process: what happens, between which points, with how much air, and what it comes to. */
export function ProcessBody({ process }: { process: Process }) {
  const { key, kind, outcome } = process;
  const number = processNumber(key);
  const name = processSteps.name(number);
  const write = (column: ProcessColumn) => (text: string) =>
    edit(...setProcess(job.value, key, { [column]: text }, system.value));
  return (
    <>
      <Select
        id={`process-${key}-kind`}
        ask={processSteps.kind}
        options={Object.fromEntries(processKinds.map((one) => [one, processWords.kinds[one]]))}
        value={kind}
        open=""
        onChoose={(text, select) => {
          if (!write('kind')(text)) select.value = kind;
        }}
      />
      <div class="field-row">
        <PointSelect process={process} column="from" onChoose={write('from')} />
        {kind === 'mixing' && <PointSelect process={process} column="with" onChoose={write('with')} />}
        {kind === 'drying' && <PointSelect process={process} column="to" onChoose={write('to')} />}
        {(kind === 'heating' || kind === 'cooling') && (
          <Figure process={process} column="endDryBulb" of="state.dryBulb" name={processSteps.endDryBulb} />
        )}
      </div>
      <div class="field-row">
        <Figure
          process={process}
          column="airflow"
          of="process.airflow"
          name={kind === 'mixing' ? processSteps.firstAirflow : processSteps.airflow}
        />
        {kind === 'mixing' && (
          <Figure process={process} column="secondAirflow" of="process.airflow" name={processSteps.secondAirflow} />
        )}
      </div>
      <Echo>{processSteps.flowHint}</Echo>
      {typing.value?.startsWith(`process-${key}`) ? null : <Said process={process} />}
      {outcome.ok && <Loads process={process} result={outcome.value} />}
      <div class="tools">
        <button type="button" class="plain-button" onClick={() => edit(...removeProcess(job.value, key))}>
          {processSteps.remove(name)}
        </button>
      </div>
    </>
  );
}

/** What is missing, or why it cannot be. */
function Said({ process: { outcome } }: { process: Process }) {
  if (outcome.ok) return null;
  const { problem, waiting } = outcome;
  const [first] = waiting;
  if (!problem)
    return <Echo>{(processSteps.waiting as Record<string, string>)[first ?? ''] ?? processWords.waiting}</Echo>;
  const say = processProblems[problem.code];
  return say ? <Check>{say(temperature(problem.code === 'belowDewPoint' ? problem.min : problem.max))}</Check> : null;
}

interface PointSelectProps {
  readonly process: Process;
  readonly column: 'from' | 'with' | 'to';
  readonly onChoose: (text: string) => boolean;
}

function PointSelect({ process, column, onChoose }: PointSelectProps) {
  const value = process[column] ?? undefined;
  const options = Object.fromEntries(choices(process).map((key) => [key, nameOfPoint(key)]));
  return (
    <Select
      id={`process-${process.key}-${column}`}
      ask={{ from: processSteps.from, with: processSteps.with, to: processSteps.to }[column]}
      options={options}
      value={value !== undefined && value in options ? value : undefined}
      open={processSteps.choose}
      onChoose={(text, select) => {
        if (!onChoose(text)) select.value = value ?? '';
      }}
    />
  );
}

/** Where a process may begin or end: points of the job, named states, and the ends of processes before it. */
function choices({ key }: Process): readonly PointKey[] {
  const own = points.value.flatMap((point) => (point.key === 'entering' || point.key === 'leaving' ? [point.key] : []));
  const before = processes.value.slice(
    0,
    processes.value.findIndex((one) => one.key === key),
  );
  const ends = before.filter(({ kind }) => kind !== 'drying').map((one) => one.key);
  return [...own, ...states.value.map((state) => state.key), ...ends];
}

interface FigureProps {
  readonly process: Process;
  readonly column: 'endDryBulb' | 'airflow' | 'secondAirflow';
  readonly of: QuantityKey;
  readonly name: string;
}

function Figure({ process, column, of, name }: FigureProps) {
  const { key } = process;
  const cell: Cell = process[column];
  const shown = cell.text === '' ? { ...cell, unit: unitOf(of, system.value) } : cell;
  return (
    <CellField
      id={`process-${key}-${column}`}
      of={of}
      name={name}
      cell={shown}
      onText={(text, system) => edit(...setProcess(job.value, key, { [column]: text }, system))}
    />
  );
}
