/** The list of jobs: what stands on the device, what was taken away and may be put back, what a file would bring. */
import { signal } from '@preact/signals';
import type { Done, StorageTrouble } from '~/job/database.ts';
import { compared, type Incoming, longestFile, type ReadJobFile, readJobFile } from '~/job/jobFile.ts';
import { type JobRecord, type KeptJob, listJobs, putJobs, removeJob, renameJob } from '~/job/jobShelf.ts';
import { newId } from '~/job/newId.ts';
import type { Job, System } from '~/job/types.ts';
import { jobsPage as words } from '~/words/en/jobs.ts';
import { textFile } from '../saveFile.ts';

/** `null` until the device has been asked. */
export const kept = signal<readonly KeptJob[] | null>(null);
export const trouble = signal<StorageTrouble | null>(null);
/** Taken away on this page, the last first. */
export const deleted = signal<readonly { readonly record: JobRecord; readonly name: string }[]>([]);
export const incoming = signal<Incoming | null>(null);
export const refusedFile = signal<Extract<ReadJobFile, { ok: false }> | null>(null);
/** How many lines are drawn at first, and with each press of the key below them: nobody reads a thousand. */
export const atOnce = 50;
export const shown = signal(atOnce);
/** Whether results are being worked out for a file. */
export const isDrawing = signal(false);
/** Whether the browser will keep the store when the device runs low; `null` until it has said. */
export const isLasting = signal<boolean | null>(null);
/** How many a file has brought. */
export const taken = signal<number | null>(null);

export const nameOf = (job: Job | null) => (job ? job.notes.address?.trim() || words.unnamed : words.unread);

/** Those that this version of the site can read. */
export const readable = () => (kept.value ?? []).flatMap(({ job }) => job ?? []);

export async function look(): Promise<void> {
  const found = await listJobs();
  trouble.value = found.ok ? null : found.trouble;
  kept.value = found.ok ? found.value : [];
  isLasting.value = (await navigator.storage?.persisted?.().catch(() => false)) ?? false;
}

/** The results of all jobs for a spreadsheet, in the units of the page. */
export async function saveResults(): Promise<void> {
  isDrawing.value = true;
  const [{ resultRows, testOf }, { drawAll }, { csvText }] = await Promise.all([
    import('./resultsTable.ts'),
    import('../drawOnce.ts'),
    import('~/job/csv.ts'),
  ]);
  const all = readable();
  const system = (document.documentElement.dataset['units'] as System | undefined) ?? 'ip';
  textFile(csvText(resultRows(all, await drawAll(all.map(testOf)), system)), words.resultsName, 'csv');
  isDrawing.value = false;
}

/** Says what stood in the way, else looks again; false when something did. */
async function after(done: Promise<Done<unknown>>): Promise<boolean> {
  const found = await done;
  if (found.ok) await look();
  else trouble.value = found.trouble;
  return found.ok;
}

export async function copy(job: Job): Promise<void> {
  // A copy is an open job again.
  const { 'locked.at': _at, 'locked.code': _code, ...notes } = job.notes;
  const { 'locked.changes': _changes, ...tables } = job.tables;
  const record: Job = { ...job, id: newId(), tables, notes: { ...notes, address: words.copied(nameOf(job)) } };
  await after(putJobs([record]));
}

/** The job whose name is being typed, and what was typed. */
export const renaming = signal<string | null>(null);
export const newName = signal('');

export function startRename({ record, job }: KeptJob): void {
  newName.value = job?.notes.address ?? '';
  renaming.value = record.id;
}

export async function rename(id: string, name: string): Promise<void> {
  if (await after(renameJob(id, name))) renaming.value = null;
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
  if (read.ok) incoming.value = compared(read.jobs, readable());
}

export async function takeIn({ fresh, differing }: Incoming): Promise<void> {
  const copies = differing.map((job) => ({ ...job, id: newId() }));
  if (!(await after(putJobs([...fresh, ...copies])))) return;
  incoming.value = null;
  taken.value = fresh.length + copies.length;
}
