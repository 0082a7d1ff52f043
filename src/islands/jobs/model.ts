/** The list of jobs: what stands on the device, what was taken away and may be put back, what a file would bring. */
import { signal } from '@preact/signals';
import type { Done, StorageTrouble } from '~/job/database.ts';
import { compared, type Incoming, longestFile, type ReadJobFile, readJobFile } from '~/job/jobFile.ts';
import { type JobRecord, type KeptJob, listJobs, putJobs, removeJob } from '~/job/jobShelf.ts';
import { newId } from '~/job/newId.ts';
import type { Job } from '~/job/types.ts';
import { jobsPage as words } from '~/words/en/jobs.ts';

/** `null` until the device has been asked. */
export const kept = signal<readonly KeptJob[] | null>(null);
export const trouble = signal<StorageTrouble | null>(null);
/** Taken away on this page, the last first. */
export const deleted = signal<readonly { readonly record: JobRecord; readonly name: string }[]>([]);
export const incoming = signal<Incoming | null>(null);
export const refusedFile = signal<Extract<ReadJobFile, { ok: false }> | null>(null);
/** How many a file has brought. */
export const taken = signal<number | null>(null);

export const nameOf = (job: Job | null) => (job ? job.notes.address?.trim() || words.unnamed : words.unread);

const jobs = () => (kept.value ?? []).flatMap(({ job }) => job ?? []);

export async function look(): Promise<void> {
  const found = await listJobs();
  trouble.value = found.ok ? null : found.trouble;
  kept.value = found.ok ? found.value : [];
}

/** Says what stood in the way, else looks again; false when something did. */
async function after(done: Promise<Done<unknown>>): Promise<boolean> {
  const found = await done;
  if (found.ok) await look();
  else trouble.value = found.trouble;
  return found.ok;
}

export async function copy(job: Job): Promise<void> {
  const notes = { ...job.notes, address: words.copied(nameOf(job)) };
  const record: Job = { ...job, id: newId(), notes };
  await after(putJobs([record]));
}

export async function remove({ record, job }: KeptJob): Promise<void> {
  if (await after(removeJob(record.id))) deleted.value = [{ record, name: nameOf(job) }, ...deleted.value];
}

export async function putBack(record: JobRecord): Promise<void> {
  if (await after(putJobs([record]))) deleted.value = deleted.value.filter((one) => one.record !== record);
}

/** Looks into a file and says what it would bring; nothing is kept before somebody says so. */
export async function lookInto(file: File): Promise<void> {
  incoming.value = null;
  taken.value = null;
  const read: ReadJobFile = file.size > longestFile ? { ok: false, reason: 'tooLong' } : readJobFile(await file.text());
  refusedFile.value = read.ok ? null : read;
  if (read.ok) incoming.value = compared(read.jobs, jobs());
}

export async function takeIn({ fresh, differing }: Incoming): Promise<void> {
  const copies = differing.map((job) => ({ ...job, id: newId() }));
  if (!(await after(putJobs([...fresh, ...copies])))) return;
  incoming.value = null;
  taken.value = fresh.length + copies.length;
}
