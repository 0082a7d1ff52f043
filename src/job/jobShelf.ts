/** All jobs kept on this device: to look over, to open, to take away and put back. Nothing rejects; a refusal is an answer too. */
import { type Done, inOneTransaction, openKey } from './database.ts';
import { applyEdits } from './edit.ts';
import { readJob } from './schema.ts';
import type { Job } from './types.ts';
import { dropSteps } from './undoShelf.ts';

/** A record as it stands on the device. */
export type JobRecord = { readonly id: string };

export interface KeptJob {
  readonly record: JobRecord;
  /** `null`: this version of the site cannot read it. It stays where it is. Read when it is asked for: a list may be long. */
  readonly job: Job | null;
  readonly isOpen: boolean;
}

/** The kept jobs, the one read last first; those in which nothing was entered yet are left out. */
export function listJobs(): Promise<Done<readonly KeptJob[]>> {
  return inOneTransaction(async (shelf) => {
    const [records, open] = await Promise.all([
      shelf.objectStore('jobs').getAll(),
      shelf.objectStore('state').get(openKey),
    ]);
    return records
      .filter((record) => !isBlank(record))
      .sort((a, b) => lastAt(b).localeCompare(lastAt(a)))
      .map((record) => ({
        record,
        isOpen: record.id === open,
        get job() {
          return readOnce(record);
        },
      }));
  });
}

const jobsRead = new WeakMap<JobRecord, Job | null>();

function readOnce(record: JobRecord): Job | null {
  let job = jobsRead.get(record);
  if (job === undefined) {
    const found = readJob(record);
    job = found.ok ? found.job : null;
    jobsRead.set(record, job);
  }
  return job;
}

/** A map of a record that nobody has read yet: whatever stands there, its values. */
const valuesIn = (record: JobRecord, slot: string): readonly unknown[] =>
  Object.values(Object(Reflect.get(record, slot)) as object);

/** Whether nothing was entered in a record: all of its maps are there, and empty. */
const isBlank = (record: JobRecord): boolean =>
  ['entered', 'chosen', 'tables', 'notes'].every((slot) => {
    const map: unknown = Reflect.get(record, slot);
    return typeof map === 'object' && map !== null && Object.keys(map).length === 0;
  });

const lastAt = (record: JobRecord): string =>
  valuesIn(record, 'entered').reduce((last: string, value) => {
    const at = Object(value)['at'];
    return typeof at === 'string' && at > last ? at : last;
  }, '');

/** When a figure of the job was typed last, ISO 8601; '' for none. */
export function lastTyped({ entered }: Job): string {
  return Object.values(entered).reduce((last, { at = '' }) => (at > last ? at : last), '');
}

/** Takes a job off the device; when it was open, the next page opens a new one. */
export function removeJob(id: string): Promise<Done<unknown>> {
  return inOneTransaction(
    async (shelf) => {
      const state = shelf.objectStore('state');
      if ((await state.get(openKey)) === id) await state.delete(openKey);
      await shelf.objectStore('jobs').delete(id);
      await dropSteps(shelf, id);
    },
    ['jobs', 'state', 'undo'],
  );
}

/** Keeps records, all of them or none; which job is open stays as it is. */
export function putJobs(records: readonly JobRecord[]): Promise<Done<unknown>> {
  return inOneTransaction((shelf) => Promise.all(records.map((record) => shelf.objectStore('jobs').put(record))));
}

/** Gives a kept job another address, which is its name, and changes nothing else of it, nor which job is open. */
export function renameJob(id: string, name: string): Promise<Done<unknown>> {
  return inOneTransaction(async (shelf) => {
    const found = readJob(await shelf.objectStore('jobs').get(id));
    if (!found.ok) return;
    const to = name.trim() === '' ? undefined : name.trim();
    await shelf.objectStore('jobs').put(applyEdits(found.job, [{ slot: 'notes', key: 'address', to }]));
  });
}
