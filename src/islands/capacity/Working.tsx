import { useEffect, useMemo } from 'preact/hooks';
import { assess } from '~/calc/assess.ts';
import type { Step } from '~/calc/types.ts';
import { results } from '~/words/en/results.ts';
import { type WorkingGroup, workingGroup, workingGroups } from '~/words/en/working.ts';
import { interpreted } from '../store.ts';
import { WorkingLines } from '../WorkingLines.tsx';
import { workingAsked } from './model.ts';

/** Every result in its steps: the equation, the numbers put in, what it gives, and where it stands. */
export function Working() {
  const { test } = interpreted.value;
  const steps = useMemo(() => {
    const taken: Step[] = [];
    assess(test, (step) => taken.push(step));
    return taken;
  }, [test]);
  const asked = workingAsked.value;
  useEffect(() => {
    const head = asked && document.getElementById(`working-${asked}`);
    if (!head) return;
    head.focus({ preventScroll: true });
    head.scrollIntoView();
  }, [asked]);
  return (
    <div class="working-steps">
      <p class="label quiet">{results.workingLead}</p>
      {inGroups(steps).map(([group, own]) => (
        <section key={group}>
          <h3 id={`working-${group}`} tabIndex={-1}>
            {workingGroups[group]}
          </h3>
          <WorkingLines steps={own} />
        </section>
      ))}
    </div>
  );
}

/** The steps under their headings, both in the order in which they first come. */
function inGroups(steps: readonly Step[]): readonly (readonly [WorkingGroup, readonly Step[]])[] {
  const found = new Map<WorkingGroup, Step[]>();
  for (const step of steps) {
    const group = workingGroup(step.id);
    found.set(group, [...(found.get(group) ?? []), step]);
  }
  return [...found];
}
