/**
 * What may come in as a job: from storage, from another tab, from outside. Types and sizes are held to. A key or a choice that
 * this version does not know is dropped, because nothing here reads it; a name that reaches for a prototype is refused.
 */
import {
  array,
  exactOptional,
  type GenericSchema,
  literal,
  maxLength,
  object,
  picklist,
  pipe,
  regex,
  safeParse,
  string,
} from 'valibot';
import { allChoices, allQuantities, allTables } from './allKeys.ts';
import { type ChoiceKey, isChoice } from './choices.ts';
import { applyEdits, emptyJob } from './edit.ts';
import { notes } from './notes.ts';

import { rowLimits, type TableKey, tableLimits } from './tables.ts';
import type { Edit, Job } from './types.ts';
import { units } from './units.ts';
import { upgraded } from './upgrades.ts';

export const jobVersion = 1;

/** `notAJob`: something else altogether. `newer`: written by a later version of the site. `broken`: a job that breaks the rules. */
export type JobRefusal = 'notAJob' | 'newer' | 'broken';
export type ReadJob = { readonly ok: true; readonly job: Job } | { readonly ok: false; readonly reason: JobRefusal };

const slots = {
  entered: Object.keys(allQuantities),
  chosen: Object.keys(allChoices),
  tables: Object.keys(allTables),
  notes: [...notes] as readonly string[],
} as const satisfies Record<Edit['slot'], readonly string[]>;

const text = pipe(string(), maxLength(200));
const unit = picklist(Object.keys(units));

const entered = object({
  text,
  unit,
  origin: picklist(['typed', 'from sheet', 'assumed']),
  at: exactOptional(text),
  limit: exactOptional(text),
  shape: exactOptional(picklist(['normal', 'rectangular', 'triangular'])),
});
const columns = pipe(array(object({ key: text, unit })), maxLength(tableLimits.columns));
const row = pipe(array(text), maxLength(tableLimits.columns));
const table = object({ columns, rows: pipe(array(row), maxLength(tableLimits.rows)) });
const tableOf = (key: string) => {
  const most = rowLimits[key as TableKey];
  return most === undefined ? table : object({ columns, rows: pipe(array(row), maxLength(most)) });
};
const note = pipe(string(), maxLength(2000));

/** Parts of a job that stand in it many times, under the names by which its published schema calls them. */
export const schemaParts = { entered, table, columns, row, note, text, unit };

export const jobSchema = object({
  version: literal(jobVersion),
  id: pipe(string(), regex(/^[\w-]{1,64}$/)),
  invented: exactOptional(literal(true)),
  entered: mapOf('entered', () => entered),
  chosen: mapOf('chosen', () => text),
  tables: mapOf('tables', tableOf),
  notes: mapOf('notes', () => note),
});

function mapOf(slot: Edit['slot'], value: (key: string) => GenericSchema) {
  return object(Object.fromEntries(slots[slot].map((key) => [key, exactOptional(value(key))])));
}

/** The job that a value is, or why it is none. Never throws, whatever the value. */
export function readJob(value: unknown): ReadJob {
  try {
    return readRecord(value);
  } catch {
    return { ok: false, reason: 'broken' };
  }
}

function readRecord(value: unknown): ReadJob {
  if (!isRecord(value)) return { ok: false, reason: 'notAJob' };
  const { version } = value;
  if (typeof version !== 'number') return { ok: false, reason: 'notAJob' };
  if (version > jobVersion) return { ok: false, reason: 'newer' };
  const maps = Object.keys(slots).map((slot) => value[slot]);
  if (![value, ...maps].every(isSafe)) return { ok: false, reason: 'broken' };
  const record = upgraded(value, jobVersion);
  if (!record) return { ok: false, reason: 'broken' };
  const parsed = safeParse(jobSchema, record, { abortEarly: true });
  if (!parsed.success) return { ok: false, reason: 'broken' };
  // The keys and units were held to their tables above, which the types of the schema cannot say.
  const job = parsed.output as unknown as Job;
  const known = Object.entries(job.chosen).filter(([key, choice]) => isChoice(key as ChoiceKey, choice));
  return { ok: true, job: { ...job, chosen: Object.fromEntries(known) } };
}

/** The edits that a value is: all of them, or none when one breaks the rules. Edits of unknown keys are left out. */
export function readEdits(value: unknown): readonly Edit[] {
  if (!Array.isArray(value) || !value.every(isEdit)) return [];
  const known = value.filter(({ slot, key }) => slots[slot].includes(key));
  const before = known.map((edit): Edit => (edit.slot === 'tables' ? { ...edit, to: edit.was } : edit));
  return [known, before].every((edits) => readJob(applyEdits(emptyJob('edits'), edits)).ok) ? known : [];
}

function isEdit(value: unknown): value is Edit {
  if (!isRecord(value)) return false;
  const { slot } = value;
  return typeof slot === 'string' && Object.hasOwn(slots, slot);
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isSafe(value: unknown): boolean {
  return isRecord(value) && !['__proto__', 'constructor', 'prototype'].some((name) => Object.hasOwn(value, name));
}
