import type { ComponentChildren } from 'preact';
import { addProcess, freeProcessKey } from '~/job/processEdits.ts';
import type { Process } from '~/job/processes.ts';
import { addState, freeKey } from '~/job/stateEdits.ts';
import type { NamedState } from '~/job/states.ts';
import { Mark } from '~/parts/Mark.tsx';
import { Step } from '~/parts/Step.tsx';
import { airChart, processWords, stateWords } from '~/words/en/moistAir.ts';
import { edit, job, loaded, system } from '../jobStore.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { capacityText, temperature } from '../show.ts';
import { measureOf } from './keys.ts';
import { ownProcess } from './own.ts';
import { nameOfState, points, processes, processNumber, returnAir, stateCode, states, supplyAir } from './points.ts';
import { spokenAir } from './said.ts';
import { looked, openStep } from './view.ts';

const late = () => import('./late/index.ts');
const JobAirBody = lazy<{ side: 'entering' | 'leaving' }>(() => late().then((parts) => parts.JobAirBody));
const NamedBody = lazy<{ state: NamedState }>(() => late().then((parts) => parts.NamedBody));
const ProcessBody = lazy<{ process: Process }>(() => late().then((parts) => parts.ProcessBody));
const JobProcessBody = lazy(() => late().then((parts) => parts.JobProcessBody));
const HeightBody = lazy(() => late().then((parts) => parts.HeightBody));

/** The points and the processes: a line each, one of them open. */
export function Steps() {
  return (
    <div class="sheet-steps air-steps">
      <h2>{airChart.points}</h2>
      <JobAir side="entering" />
      <JobAir side="leaving" />
      {states.value.map((state) => (
        <Line
          key={state.key}
          id={`point-${state.key}`}
          of={state.key}
          mark={stateCode(state.key)}
          name={nameOfState(state)}
          summary={stateLine(state)}
        >
          <NamedBody state={state} />
        </Line>
      ))}
      <AddState />
      <h2>{airChart.processes}</h2>
      {ownProcess.value?.load && (
        <Line
          id="process-job"
          of="job"
          mark="R"
          name={processWords.job}
          summary={capacityText(ownProcess.value.load.total)}
        >
          <JobProcessBody />
        </Line>
      )}
      {processes.value.map((process) => (
        <Line
          key={process.key}
          id={`process-${process.key}`}
          of={process.key}
          mark={processNumber(process.key)}
          name={processWords.kinds[process.kind]}
          summary={processLine(process)}
        >
          <ProcessBody process={process} />
        </Line>
      ))}
      <AddProcess />
      <LateFold summary={airChart.heightFold}>
        <HeightBody />
      </LateFold>
    </div>
  );
}

interface LineProps {
  readonly id: string;
  readonly of: NonNullable<typeof openStep.value>;
  readonly mark: string;
  readonly name: string;
  readonly drawn?: ComponentChildren;
  readonly summary: string;
  readonly children: ComponentChildren;
}

/** One step; its inside is fetched when it is opened. */
function Line({ id, of, mark, name, drawn, summary, children }: LineProps) {
  const open = openStep.value === of;
  return (
    <Step
      id={id}
      number={mark}
      name={name}
      mark={drawn}
      summary={summary}
      open={open}
      fixed={false}
      onToggle={() => {
        openStep.value = open ? null : of;
        looked.value = null;
      }}
    >
      {open && children}
    </Step>
  );
}

function JobAir({ side }: { side: 'entering' | 'leaving' }) {
  const outcome = (side === 'entering' ? returnAir : supplyAir).value;
  return (
    <Line
      id={`point-${side}`}
      of={side}
      mark={side === 'entering' ? 'R' : 'S'}
      name={side === 'entering' ? stateWords.return : stateWords.supply}
      drawn={<Mark of={side} />}
      summary={
        outcome.ok ? spokenAir(outcome.value, measureOf(side)) : outcome.problem ? stateWords.check : stateWords.empty
      }
    >
      <JobAirBody side={side} />
    </Line>
  );
}

function stateLine({ air, measure }: NamedState): string {
  if (air.ok) return spokenAir(air.value, measure ?? 'relativeHumidity');
  return air.problem ? stateWords.check : stateWords.empty;
}

/** The load, or where it ends. */
function processLine({ outcome }: Process): string {
  if (!outcome.ok) return outcome.problem ? stateWords.check : processWords.waiting;
  const { load, end } = outcome.value;
  return load ? capacityText(Math.abs(load.total)) : temperature(end.dryBulb);
}

function AddState() {
  const key = freeKey(job.value);
  if (key === null) return <p class="hint">{stateWords.full}</p>;
  return (
    <Add
      words={stateWords.add}
      onAdd={() => {
        if (edit(...addState(job.value, system.value))) openStep.value = key;
      }}
    />
  );
}

/** A process more: cooling with drying, as the usual one, from the first point that is not the job's. */
function AddProcess() {
  const key = freeProcessKey(job.value);
  if (key === null) return <p class="hint">{processWords.full}</p>;
  const from = points.value.find((point) => point.key !== 'entering' && point.key !== 'leaving')?.key ?? '';
  return (
    <Add
      words={processWords.add}
      onAdd={() => {
        if (edit(...addProcess(job.value, { kind: 'drying', from }, system.value))) openStep.value = key;
      }}
    />
  );
}

function Add({ words, onAdd }: { words: string; onAdd: () => void }) {
  return (
    <p class="tools">
      <button type="button" class="plain-button" disabled={!loaded.value} onClick={onAdd}>
        {words}
      </button>
    </p>
  );
}
