/** The only way in which a job changes: edits of single keys, applied in order. Nothing is ever changed in place. */
import type { QuantityKey } from './quantities.ts';
import type { Edit, Entered, Job, UnitKey } from './types.ts';

/** A job in which nothing is entered yet. */
export function emptyJob(id: string): Job {
  return { version: 1, id, entered: {}, chosen: {}, tables: {}, notes: {} };
}

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

/** The edit for a typed value; a ± typed earlier stays. An empty text without a ± clears the field. */
export function typed(job: Job, key: QuantityKey, text: string, unit: UnitKey, at?: string): Edit {
  const { limit, shape } = job.entered[key] ?? {};
  if (text === '' && limit === undefined) return { slot: 'entered', key, to: undefined };
  const to: Entered = {
    text,
    unit,
    origin: 'typed',
    ...(at === undefined ? {} : { at }),
    ...(limit === undefined ? {} : { limit }),
    ...(shape === undefined ? {} : { shape }),
  };
  return { slot: 'entered', key, to };
}
