import { useMemo } from 'preact/hooks';
import { lineSet } from '~/calc/lineSet.ts';
import type { Step } from '~/calc/types.ts';
import { lineResults } from '~/words/en/lineSetResults.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { lines } from './model.ts';

const WorkingLines = lazy(() => import('../WorkingLines.tsx').then((module) => module.WorkingLines));

/** Every step of the calculation, with its numbers. */
export function Working() {
  return (
    <LateFold summary={lineResults.working}>
      <Steps />
    </LateFold>
  );
}

function Steps() {
  const { input } = lines.value;
  const steps = useMemo(() => {
    const taken: Step[] = [];
    if (input) lineSet(input, (step) => taken.push(step));
    return taken;
  }, [input]);
  return (
    <div class="working-steps">
      <p class="label quiet">{lineResults.workingLead}</p>
      <WorkingLines steps={steps} />
    </div>
  );
}
