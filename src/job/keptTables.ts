/**
 * The maker's tables kept on this device, for later jobs: each is the part of a job that says what its table is, under the
 * name of the job in which it was typed. Every function answers with a result; storage that is refused is an answer too.
 */
import { type Done, inOneTransaction } from './database.ts';
import { emptyJob } from './edit.ts';
import { readJob } from './schema.ts';
import type { ChoiceKey, Edit, Job, NoteKey, QuantityKey, TableKey } from './types.ts';
import { usesSheet } from './usesSheet.ts';

/** A job in which nothing stands but its table. */
export type KeptTable = Job;

const ownNotes: readonly string[] = ['outdoor.model', 'indoor.model', 'furnace.model', 'rating.page', 'rating.typedAt'];
const ownTables: readonly string[] = ['rating', 'ratingSheet', 'ratingAirflow'];
/** What another day or another house changes belongs to the job and not to its table. */
const notOwn: readonly string[] = ['rating.beyond', 'rating.lineLength'];
const isOwn = (key: string) => key.startsWith('rating.') && !notOwn.includes(key);

const only = <Map extends Readonly<Record<string, unknown>>>(map: Map, keep: (key: string) => boolean): Map =>
  Object.fromEntries(Object.entries(map).filter(([key]) => keep(key))) as Map;

/** The part of a job that says what its table is. */
export function tableOf(job: Job): KeptTable {
  return {
    ...emptyJob(job.id),
    entered: only(job.entered, isOwn),
    chosen: only(job.chosen, isOwn),
    tables: only(job.tables, (key) => ownTables.includes(key)),
    notes: only(job.notes, (key) => ownNotes.includes(key)),
  };
}

/** Whether a job has a table worth keeping: a whole one, or the typed figures of one. */
export const hasTable = (job: Job) =>
  job.invented === undefined && (usesSheet(job) || (job.tables.rating?.rows.length ?? 0) > 0);

/** The tables of this device, the latest first, each once however many jobs it was used in; `without` leaves out one of a job. */
export async function keptTables(without?: string): Promise<Done<readonly KeptTable[]>> {
  const done = await inOneTransaction((shelf) => shelf.objectStore('tables').getAll(), ['tables']);
  if (!done.ok) return done;
  const known = new Set<string>();
  const tables = done.value
    .flatMap((value) => {
      const found = readJob(value);
      return found.ok && found.job.id !== without ? [found.job] : [];
    })
    .sort((a, b) => (b.notes['rating.typedAt'] ?? '').localeCompare(a.notes['rating.typedAt'] ?? ''))
    .filter((table) => {
      const name = sameness(table);
      return known.has(name) ? false : known.add(name);
    });
  return { ok: true, value: tables };
}

/** Keeps the table of a job, in place of what was kept of that job before. */
export function keepTable(job: Job): Promise<Done<unknown>> {
  return inOneTransaction((shelf) => shelf.objectStore('tables').put(tableOf(job)), ['tables']);
}

export function removeTable(id: string): Promise<Done<unknown>> {
  return inOneTransaction((shelf) => shelf.objectStore('tables').delete(id), ['tables']);
}

const sameness = ({ tables, notes, chosen, entered }: KeptTable) =>
  JSON.stringify([tables, chosen, entered, notes['outdoor.model'], notes['indoor.model']]);

const spelled = (model: string | undefined) => (model ?? '').replace(/[\s-]/g, '').toLowerCase();

/** Whether a kept table is for the models of a job: each model that both name is the same, and one at least is named by both. */
export function isForModels(table: KeptTable, job: Job): boolean {
  const both = (['outdoor.model', 'indoor.model'] as const).filter(
    (key) => spelled(table.notes[key]) !== '' && spelled(job.notes[key]) !== '',
  );
  return both.length > 0 && both.every((key) => spelled(table.notes[key]) === spelled(job.notes[key]));
}

/** The edits that put a table into a job in place of the one that it has. Model numbers of the job stay as they are. */
export function tableEdits(job: Job, table: KeptTable): readonly Edit[] {
  const was = tableOf(job);
  const keysOf = (one: object, other: object) => [...new Set([...Object.keys(one), ...Object.keys(other)])];
  return [
    ...keysOf(was.entered, table.entered).map(
      (key): Edit => ({ slot: 'entered', key: key as QuantityKey, to: table.entered[key as QuantityKey] }),
    ),
    ...keysOf(was.chosen, table.chosen).map(
      (key): Edit => ({ slot: 'chosen', key: key as ChoiceKey, to: table.chosen[key as ChoiceKey] }),
    ),
    ...keysOf(was.tables, table.tables).map(
      (key): Edit => ({ slot: 'tables', key: key as TableKey, to: table.tables[key as TableKey] }),
    ),
    ...keysOf(was.notes, table.notes).flatMap((key): Edit[] => {
      const note = key as NoteKey;
      const isModel = key.endsWith('.model');
      return isModel && (job.notes[note] ?? '') !== '' ? [] : [{ slot: 'notes', key: note, to: table.notes[note] }];
    }),
  ];
}
