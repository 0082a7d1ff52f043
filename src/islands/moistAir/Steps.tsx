import { addProcess, freeProcessKey } from '~/job/processEdits.ts';
import { addState, freeKey } from '~/job/stateEdits.ts';
import { Ledger } from '~/parts/Ledger.tsx';
import { Step } from '~/parts/Step.tsx';
import { airChart, processWords, stateWords } from '~/words/en/moistAir.ts';
import { edit, job, system } from '../jobStore.ts';
import { capacityText } from '../show.ts';
import { JobAir } from './JobAir.tsx';
import { ownLoads } from './Loads.tsx';
import { NamedAir } from './NamedAir.tsx';
import { ownProcess } from './own.ts';
import { ProcessStep } from './ProcessStep.tsx';
import { points, processes, states } from './points.ts';
import { HeightFold } from './Title.tsx';
import { openStep } from './view.ts';

/** The points and the processes, one open at a time. */
export function Steps() {
  return (
    <div class="sheet-steps air-steps">
      <h2>{airChart.points}</h2>
      <JobAir side="entering" />
      <JobAir side="leaving" />
      {states.value.map((state) => (
        <NamedAir key={state.key} state={state} />
      ))}
      <AddState />
      <h2>{airChart.processes}</h2>
      <JobProcess />
      {processes.value.map((process) => (
        <ProcessStep key={process.key} process={process} />
      ))}
      <AddProcess />
      <HeightFold />
    </div>
  );
}

function AddState() {
  const key = freeKey(job.value);
  if (key === null) return <p class="hint">{stateWords.full}</p>;
  return (
    <p class="tools">
      <button
        type="button"
        class="plain-button"
        onClick={() => {
          if (edit(...addState(job.value, system.value))) openStep.value = key;
        }}
      >
        {stateWords.add}
      </button>
    </p>
  );
}

/** A process more: cooling with drying where there are two points for it, as the usual one. */
function AddProcess() {
  const key = freeProcessKey(job.value);
  if (key === null) return <p class="hint">{processWords.full}</p>;
  const from = points.value.find((point) => point.key !== 'entering' && point.key !== 'leaving')?.key ?? '';
  return (
    <p class="tools">
      <button
        type="button"
        class="plain-button"
        onClick={() => {
          if (edit(...addProcess(job.value, { kind: 'drying', from }, system.value))) openStep.value = key;
        }}
      >
        {processWords.add}
      </button>
    </p>
  );
}

/** The job's own process, which its sheet works out; here its loads stand beside the picture. */
function JobProcess() {
  const process = ownProcess.value;
  if (!process?.load) return null;
  const { load } = process;
  return (
    <Step
      id="process-job"
      number="R"
      name={processWords.job}
      summary={capacityText(load.total)}
      open={openStep.value === 'job'}
      fixed={false}
      onToggle={() => {
        openStep.value = openStep.value === 'job' ? null : 'job';
      }}
    >
      <p class="step-say">{processWords.jobSay}</p>
      <Ledger caption={processWords.loads(processWords.job)} lines={ownLoads(load)} />
    </Step>
  );
}
