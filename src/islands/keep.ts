/** Keeps the job on this device, edit by edit. */
import { signal } from '@preact/signals';
import type { Saved, StorageTrouble } from '../job/storage.ts';
import type { Edit, Job } from '../job/types.ts';

export type Keeping = 'not yet' | 'kept' | StorageTrouble;

export const keeping = signal<Keeping>('not yet');
export const keptAt = signal<Date | null>(null);

/** The store of this device, fetched beside the page: nobody waits for it to type or to read an answer. */
export const storage = () => import('./device.ts');

interface Waiting {
  readonly job: Job;
  readonly edits: readonly Edit[];
}

let waiting: readonly Waiting[] = [];
let writing = false;

/**
 * Writes edits at once: a page that is closed or a battery that dies loses the key that is being written at most. What comes
 * while a write is under way is gathered for the next one, and what was refused goes again with it.
 */
export function keep(job: Job, edits: readonly Edit[]): void {
  const last = waiting.at(-1);
  if (last?.job.id === job.id) waiting = [...waiting.slice(0, -1), { job, edits: [...last.edits, ...edits] }];
  else waiting = [...waiting, { job, edits }];
  if (!writing) void write();
}

async function write(): Promise<void> {
  writing = true;
  const refused: Waiting[] = [];
  for (let next = waiting[0]; next; next = waiting[0]) {
    waiting = waiting.slice(1);
    // Where nothing is stored under this name yet, the job as it stands is: the edits are in it, and applying them twice changes nothing.
    const result = await save(next);
    if (!result.saved) holdBack(next, refused);
    noteResult(result, next.job);
  }
  waiting = refused;
  writing = false;
}

/** Puts refused edits before later ones of their job, or by until there are any. */
function holdBack(held: Waiting, refused: Waiting[]): void {
  const later = waiting.find(({ job }) => job.id === held.job.id);
  if (!later) refused.push(held);
  waiting = waiting.map((one) => (one === later ? { job: one.job, edits: [...held.edits, ...one.edits] } : one));
}

async function save({ job, edits }: Waiting): Promise<Saved> {
  try {
    return await (await storage()).saveEdits(job.id, edits, job);
  } catch {
    // The store itself could not be fetched.
    return { saved: false, trouble: 'refused' };
  }
}

/** What came of a write, for whoever looks at the page; the home page learns by its name that there is a job to go on with. */
export function noteResult(result: Saved, job: Job): void {
  if (result.saved) {
    keptAt.value = new Date();
    leaveName(job);
  }
  keeping.value = result.saved ? 'kept' : result.trouble;
}

function leaveName({ id, notes }: Job): void {
  try {
    localStorage.setItem('ton-for-ton.open', `${id} ${notes.address?.trim() ?? ''}`);
  } catch {
    // Then the home page offers a new job only.
  }
}
