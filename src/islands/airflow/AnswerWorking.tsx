import { useMemo } from 'preact/hooks';
import type { Step } from '~/calc/types.ts';
import { findAirflow } from '~/job/airflow/find.ts';
import { results } from '~/words/en/results.ts';
import { job } from '../jobStore.ts';
import { LateFold } from '../LateFold.tsx';
import { WorkingLines } from '../WorkingLines.tsx';

/** Every step to the airflow that counts, with its numbers. */
export function AnswerWorking() {
  return (
    <LateFold summary={results.working}>
      <Steps />
    </LateFold>
  );
}

function Steps() {
  const open = job.value;
  const steps = useMemo(() => {
    const taken: Step[] = [];
    findAirflow(open, (step) => taken.push(step));
    return taken;
  }, [open]);
  return (
    <div class="working-steps">
      <p class="label quiet">{results.workingLead}</p>
      <WorkingLines steps={steps} />
    </div>
  );
}
