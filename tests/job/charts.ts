import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import { addProcess, type ProcessColumn } from '../../src/job/processEdits.ts';
import { addState, type StateColumn } from '../../src/job/stateEdits.ts';
import type { Job, System } from '../../src/job/types.ts';

type Texts<Column extends string> = Readonly<Partial<Record<Column, string>>>;

/** A job with these states (a, b, … in their order) and processes (p1, p2, …), typed in a system. */
export function chartWith(
  states: readonly Texts<StateColumn>[],
  processes: readonly Texts<ProcessColumn>[] = [],
  system: System = 'ip',
  job: Job = emptyJob('test'),
): Job {
  const withStates = states.reduce((now, texts) => applyEdits(now, addState(now, system, texts)), job);
  return processes.reduce((now, texts) => applyEdits(now, addProcess(now, texts, system)), withStates);
}
