import type { Step } from '~/calc/types.ts';
import { type ProcessKey, traceProcess } from '~/job/processes.ts';
import { results } from '~/words/en/results.ts';
import { WorkingLines } from '../../WorkingLines.tsx';
import { chartJob } from '../points.ts';

/** The loads of a process in their steps. */
export function Working({ of }: { of: ProcessKey }) {
  const steps: Step[] = [];
  traceProcess(chartJob.value, of, (step) => steps.push(step));
  return (
    <div class="working-steps">
      <p class="label quiet">{results.workingLead}</p>
      <WorkingLines steps={steps} />
    </div>
  );
}
