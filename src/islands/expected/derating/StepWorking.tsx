import type { DerateCause } from '~/calc/types.ts';
import { derating } from '~/words/en/derating.ts';
import { WorkingLines } from '../../WorkingLines.tsx';
import { workingOf } from './model.ts';

/** The working of one step; where it does nothing there is none. */
export function StepWorking({ cause }: { cause: DerateCause }) {
  const steps = workingOf(cause);
  return (
    <div class="working-steps">
      {steps.length === 0 ? <p class="quiet">{derating.doesNotApply}</p> : <WorkingLines steps={steps} />}
    </div>
  );
}
