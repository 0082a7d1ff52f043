import { useState } from 'preact/hooks';
import type { ProcessKey } from '~/job/processes.ts';
import { processSteps } from '~/words/en/moistAirSteps.ts';
import { lazy } from '../../lazy.tsx';

const Working = lazy<{ of: ProcessKey }>(() => import('./Working.tsx').then((module) => module.Working));

/** The steps behind the loads of a process, fetched when they are asked for. */
export function WorkingFold({ of }: { of: ProcessKey }) {
  const [seen, see] = useState(false);
  return (
    <details class="fold" onToggle={(event) => event.currentTarget.open && see(true)}>
      <summary>{processSteps.working}</summary>
      {seen && <Working of={of} />}
    </details>
  );
}
