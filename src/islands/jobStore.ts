/**
 * The open job: the one mutable thing on a page. `edit` is the only way in; everything else follows from it. The first render
 * is the empty job on server and browser alike; the kept job is loaded after hydration.
 */
import { batch, computed, signal } from '@preact/signals';
import { applyEdits, emptyJob } from '../job/edit.ts';
import type { Edit, Job, System } from '../job/types.ts';
import { keep } from './keep.ts';

/**
 * A visitor came with points of the air chart: they may be worked on, and are kept when somebody asks for that. A linked job is
 * somebody's record: like the demo it is looked at, and copied before anything of it is changed.
 */
export type Source = 'own' | 'demo' | 'visitor' | 'linked';

const made = signal<Job>(emptyJob(''));
/** Edits that a hand is still making: shown everywhere, kept nowhere. */
const trial = signal<readonly Edit[]>([]);

export const job = computed(() => applyEdits(made.value, trial.value));
export const source = signal<Source>('own');
const isLocked = () => source.value === 'demo' || source.value === 'linked';
export const system = signal<System>('ip');
/** False until the kept job has been looked for: nothing may be judged, or said to be missing, before that. */
export const loaded = signal(false);
/** The job before and after what was done last, for who takes it back. */
export const lastEdit = signal<{ readonly before: Job; readonly after: Job; readonly edits: readonly Edit[] } | null>(
  null,
);
/** Edits made before the kept job was there. */
let early: readonly Edit[] = [];
/** Whether somebody tried to change what is only to be looked at. */
export const refused = signal(false);

/** Applies edits and keeps them. False when the job is only to be looked at: the caller puts its field back. */
export function edit(...edits: readonly Edit[]): boolean {
  if (isLocked()) {
    refused.value = true;
    return false;
  }
  const before = made.value;
  const after = applyEdits(before, edits);
  batch(() => {
    trial.value = [];
    made.value = after;
    lastEdit.value = { before, after, edits };
  });
  if (source.value === 'visitor') return true;
  const told = edits.map((one) => (one.slot === 'tables' ? { ...one, was: before.tables[one.key] } : one));
  if (loaded.value) keep(after, told);
  else early = [...early, ...edits];
  return true;
}

/** Shows edits while a hand still moves; `edit` makes the last of them, `takeBack` none. False when the job is only to be looked at. */
export function tryOut(...edits: Edit[]): boolean {
  if (isLocked()) {
    refused.value = true;
    return false;
  }
  trial.value = edits;
  return true;
}

export function takeBack(): void {
  trial.value = [];
}

/** Puts another job on the page, whole. What was typed while it was being fetched is not lost. */
export function show(next: Job, from: Source): void {
  const typed = from === 'own' ? early : [];
  early = [];
  batch(() => {
    trial.value = [];
    made.value = next;
    source.value = from;
    refused.value = false;
    loaded.value = true;
    if (typed.length > 0) edit(...typed);
  });
}

/** What another tab did to the same job: done here, not kept again. */
export function merge(change: (made: Job) => Job): void {
  made.value = change(made.value);
}
