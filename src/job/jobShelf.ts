/** All jobs kept on this device: to look over, to open, to take away and put back. Nothing rejects; a refusal is an answer too. */
import { type Done, inOneTransaction, openKey } from './database.ts';
import { isEmpty } from './edit.ts';
import { readJob } from './schema.ts';
import type { Job } from './types.ts';
import { dropSteps } from './undoShelf.ts';

/** A record as it stands on the device. */
export type JobRecord = { readonly id: string };

export interface KeptJob {
  readonly record: JobRecord;
  /** `null`: this version of the site cannot read it. It stays where it is. */
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
    const kept = records.map((record): KeptJob => {
      const found = readJob(record);
      return { record, job: found.ok ? found.job : null, isOpen: record.id === open };
    });
    return kept.filter(({ job }) => job === null || !isEmpty(job)).sort((a, b) => lastAt(b).localeCompare(lastAt(a)));
  });
}

/** When a figure of the job was typed last, ISO 8601; '' for none. */
export function lastTyped({ entered }: Job): string {
  return Object.values(entered).reduce((last, { at = '' }) => (at > last ? at : last), '');
}

const lastAt = ({ job }: KeptJob) => (job ? lastTyped(job) : '');

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
