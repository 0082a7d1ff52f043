/**
 * The processes between the points of the air chart. Drying goes from one point to another; heating and cooling without
 * water and the mixing of two streams end in a point of their own, which later processes may begin in.
 */
import type { MoistAir, Outcome, Trace } from '../calc/types.ts';
import { type PointKey, type ProcessKey, type ProcessRow, processRow } from './processRows.ts';
import { type ProcessResult, workProcess } from './processWork.ts';
import { jobAir, namedStates } from './states.ts';
import type { Job } from './types.ts';

export * from './processRows.ts';
export type { ProcessResult };

export interface Process extends ProcessRow {
  readonly outcome: Outcome<ProcessResult>;
}

/** The processes, in their order; each may begin where an earlier one ends. Rows without a key or a kind are none. Never throws. */
export function processesOf(job: Job): readonly Process[] {
  return chain(job).processes;
}

/** The steps of one process, to a trace. */
export function traceProcess(job: Job, key: ProcessKey, trace: Trace): void {
  const { processes, points } = chain(job);
  const process = processes.find((one) => one.key === key);
  if (process?.outcome.ok) workProcess(process, points, trace);
}

function chain(job: Job) {
  const table = job.tables.processes;
  const points = new Map<PointKey, Outcome<MoistAir>>([
    ['entering', jobAir(job, 'entering')],
    ['leaving', jobAir(job, 'leaving')],
    ...namedStates(job).map(({ key, air }) => [key, air] as const),
  ]);
  const processes: Process[] = [];
  for (const row of table?.rows ?? []) {
    const read = table && processRow(table, row);
    if (!read || processes.some(({ key }) => key === read.key)) continue;
    const outcome = workProcess(read, points);
    processes.push({ ...read, outcome });
    if (read.kind !== 'drying') points.set(read.key, outcome.ok ? { ok: true, value: outcome.value.end } : outcome);
  }
  return { processes, points };
}
