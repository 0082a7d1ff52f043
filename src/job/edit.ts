/** The only way in which a job changes: edits of single keys, applied in order. Nothing is ever changed in place. */
import { unitLabel } from './format.ts';
import type { QuantityKey } from './quantities.ts';
import type { Edit, Entered, Job, UnitKey } from './types.ts';

/** A job in which nothing is entered yet. */
export function emptyJob(id: string): Job {
  return { version: 1, id, entered: {}, chosen: {}, tables: {}, notes: {} };
}

/** Whether nothing was entered in a job yet; it then serves as a new one. */
export const isEmpty = ({ entered, chosen, tables, notes }: Job): boolean =>
  [entered, chosen, tables, notes].every((map) => Object.keys(map).length === 0);

/** The job after the edits, the later outranking the earlier; the same object when there are none. */
export function applyEdits(job: Job, edits: readonly Edit[]): Job {
  return edits.reduce(applyEdit, job);
}

function applyEdit(job: Job, { slot, key, to }: Edit): Job {
  const map: Record<string, unknown> = { ...job[slot] };
  if (to === undefined) delete map[key];
  else map[key] = to;
  return { ...job, [slot]: map };
}

/**
 * The edit for a typed value. A ± typed earlier stays and keeps its meaning when the unit changes; an empty text without a ±
 * clears the field.
 */
export function typed(job: Job, key: QuantityKey, text: string, unit: UnitKey, at?: string): Edit {
  const was = job.entered[key];
  if (text === '' && was?.limit === undefined) return { slot: 'entered', key, to: undefined };
  const to: Entered = {
    text,
    unit,
    origin: 'typed',
    ...(at === undefined ? {} : { at }),
    ...(was?.limit === undefined ? {} : { limit: was.unit === unit ? was.limit : withOwnUnit(was.limit, was.unit) }),
    ...(was?.shape === undefined ? {} : { shape: was.shape }),
  };
  return { slot: 'entered', key, to };
}

/** A typed number with the unit that it was typed in behind it, so that it means the same elsewhere. */
export function withOwnUnit(text: string, unit: UnitKey): string {
  const bare = /\d/.test(text) && /^[^\p{L}%°]*$/u.test(text);
  return bare ? `${text.trim()} ${unitLabel(unit)}` : text;
}
