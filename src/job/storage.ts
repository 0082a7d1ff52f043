/** The jobs kept on this device. Every function answers with a result; storage that is refused is an answer too. */
import { inOneTransaction, openKey, otherVersion, type Shelf, type StorageTrouble } from './database.ts';
import { emptyJob } from './edit.ts';
import { mergeEdits } from './mergeTables.ts';
import { newId } from './newId.ts';
import { type JobRefusal, readEdits, readJob } from './schema.ts';
import type { Edit, Job } from './types.ts';

export type { StorageTrouble };
export { mergeEdits };

export type Saved = { readonly saved: true } | { readonly saved: false; readonly trouble: StorageTrouble };

export interface Opened {
  /** The job that was open, or a new one. */
  readonly job: Job;
  /** Why nothing can be kept here, or `null`. */
  readonly trouble: StorageTrouble | null;
  /** Why the job that was open could not be read, or `null`. It was set aside (when newer: left as it is), never deleted. */
  readonly unread: JobRefusal | 'missing' | null;
}

const channelName = 'ton-for-ton';

/**
 * The job of a name, and it becomes the open one; without a name the one that was open here last, else a new one. Never rejects.
 * `missing`: this device keeps no job of that name; the one that was open last stands in for it.
 */
export async function openJob(asked?: string | null): Promise<Opened> {
  const fresh = emptyJob(newId());
  const done = await inOneTransaction(async (shelf): Promise<Opened> => {
    const named = asked ? await shelf.objectStore('jobs').get(asked) : undefined;
    if (asked && named !== undefined) return read(shelf, named, fresh);
    const id = await shelf.objectStore('state').get(openKey);
    const stored = typeof id === 'string' ? await shelf.objectStore('jobs').get(id) : undefined;
    const found = stored === undefined ? await start(shelf, fresh) : await read(shelf, stored, fresh);
    return { ...found, unread: found.unread ?? (asked ? 'missing' : null) };
  });
  return done.ok ? done.value : { job: fresh, trouble: done.trouble, unread: null };
}

async function read(shelf: Shelf, stored: { readonly id: string }, fresh: Job): Promise<Opened> {
  const found = readJob(stored);
  if (found.ok) {
    await shelf.objectStore('state').put(found.job.id, openKey);
    return { job: found.job, trouble: null, unread: null };
  }
  if (found.reason !== 'newer') {
    await setAside(shelf, stored);
    await put(shelf, fresh);
  }
  return { job: fresh, trouble: null, unread: found.reason };
}

/** A new job, stored at once, so that a second page opened now opens the same one. */
async function start(shelf: Shelf, fresh: Job): Promise<Opened> {
  await put(shelf, fresh);
  return { job: fresh, trouble: null, unread: null };
}

/**
 * Applies edits to the stored job in one transaction, makes it the open one and tells other tabs, so that two tabs merge by
 * field, and tables by row. Where nothing readable is stored the edits apply to `otherwise`. Never rejects.
 */
export async function saveEdits(id: string, edits: readonly Edit[], otherwise: Job = emptyJob(id)): Promise<Saved> {
  const saved = await inOneTransaction(async (shelf) => {
    const stored = await shelf.objectStore('jobs').get(id);
    const found = stored === undefined ? null : readJob(stored);
    if (found?.ok === false) {
      if (found.reason === 'newer') throw otherVersion();
      await setAside(shelf, stored);
    }
    await put(shelf, mergeEdits(found?.ok === true ? found.job : otherwise, edits));
  });
  if (saved.ok) channel()?.postMessage({ id, edits });
  return saved.ok ? { saved: true } : { saved: false, trouble: saved.trouble };
}

/** Stores a whole job, a new one or a copy, and makes it the open one. Never rejects. */
export async function keepJob(job: Job): Promise<Saved> {
  const saved = await inOneTransaction((shelf) => put(shelf, job));
  return saved.ok ? { saved: true } : { saved: false, trouble: saved.trouble };
}

/** Calls back with the edits that other tabs save, until the function that it returns is called. */
export function onEdits(callback: (id: string, edits: readonly Edit[]) => void): () => void {
  const heard = ({ data }: MessageEvent): void => {
    const told = readTold(data);
    if (told !== null) callback(told.id, told.edits);
  };
  channel()?.addEventListener('message', heard);
  return () => channel()?.removeEventListener('message', heard);
}

/** What another tab told, or `null` when it is nothing that this one understands. */
export function readTold(data: unknown): { readonly id: string; readonly edits: readonly Edit[] } | null {
  if (typeof data !== 'object' || data === null || !('id' in data) || !('edits' in data)) return null;
  const edits = readEdits(data.edits);
  return typeof data.id === 'string' && edits.length > 0 ? { id: data.id, edits } : null;
}

async function put(shelf: Shelf, job: Job): Promise<void> {
  await shelf.objectStore('jobs').put(job);
  await shelf.objectStore('state').put(job.id, openKey);
}

/** Moves a record that cannot be read out of the way, whole, for someone who can. */
async function setAside(shelf: Shelf, record: { readonly id: string } | undefined): Promise<void> {
  if (record === undefined) return;
  await shelf.objectStore('state').put(record, `set aside ${record.id} ${new Date().toISOString()}`);
  await shelf.objectStore('jobs').delete(record.id);
}

let open: BroadcastChannel | undefined;

function channel(): BroadcastChannel | undefined {
  if (typeof BroadcastChannel !== 'undefined') open ??= new BroadcastChannel(channelName);
  return open;
}
