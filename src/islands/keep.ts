/** Keeps the job on this device: edits are gathered for a moment, then written together; leaving the page writes at once. */
import { signal } from '@preact/signals';
import { type Saved, type StorageTrouble, saveEdits } from '../job/storage.ts';
import type { Edit, Job } from '../job/types.ts';

export type Keeping = 'not yet' | 'kept' | StorageTrouble;

export const keeping = signal<Keeping>('not yet');
export const keptAt = signal<Date | null>(null);

const pause = 250;
let waiting: { readonly job: Job; readonly edits: readonly Edit[] } | null = null;
let timer: ReturnType<typeof setTimeout> | undefined;

export function keep(job: Job, edits: readonly Edit[]): void {
  const before = waiting && waiting.job.id === job.id ? waiting.edits : [];
  if (waiting && waiting.job.id !== job.id) void flush();
  waiting = { job, edits: [...before, ...edits] };
  clearTimeout(timer);
  timer = setTimeout(() => void flush(), pause);
}

/** Writes what waits. Safe to call at any time. */
export async function flush(): Promise<void> {
  clearTimeout(timer);
  if (!waiting) return;
  const { job, edits } = waiting;
  waiting = null;
  // Where nothing is stored under this name yet, the job as it stands is; the edits are in it, and applying them twice changes nothing.
  noteResult(await saveEdits(job.id, edits, job), job);
}

/** What came of a write, for whoever looks at the page; the home page learns by its name that there is a job to go on with. */
export function noteResult(result: Saved, job: Job): void {
  if (result.saved) {
    keptAt.value = new Date();
    leaveName(job);
  }
  keeping.value = result.saved ? 'kept' : result.trouble;
}

function leaveName({ notes }: Job): void {
  try {
    localStorage.setItem('ton-for-ton.open', notes.address?.trim() ?? '');
  } catch {
    // Then the home page offers a new job only.
  }
}

if (typeof document !== 'undefined') {
  document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && void flush());
  addEventListener('pagehide', () => void flush());
}
