import { useMemo } from 'preact/hooks';
import { assess } from '~/calc/assess.ts';
import type { Step } from '~/calc/types.ts';
import { type WorkingGroup, workingGroup, workingGroups } from '~/words/en/working.ts';
import { interpreted } from '../store.ts';
import { WorkingLines } from '../WorkingLines.tsx';

/** One part of the working, where it was asked for. */
export function CameAbout({ group }: { group: WorkingGroup }) {
  const { test } = interpreted.value;
  const steps = useMemo(() => {
    const taken: Step[] = [];
    assess(test, (step) => {
      if (workingGroup(step.id) === group) taken.push(step);
    });
    return taken;
  }, [test, group]);
  return (
    <div class="working-steps">
      <p class="label">
        <b>{workingGroups[group]}</b>
      </p>
      <WorkingLines steps={steps} />
    </div>
  );
}
