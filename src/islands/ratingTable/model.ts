/** The sheet that is being looked at, before it becomes the table of the job. */
import { batch, computed, signal } from '@preact/signals';
import { confirmedEdits } from '~/job/tableImport/confirmed.ts';
import type { Imported } from '~/job/tableImport/imported.ts';
import { withFix } from '~/job/tableImport/said.ts';
import { type Fix, nothingSaid, type Said } from '~/job/tableImport/types.ts';
import { edit, job } from '../jobStore.ts';
import { isLarge, readSource, type Source, stopReading } from './reader.ts';

/** What the person says of the whole table. */
export interface About {
  readonly basis: 'net' | 'gross' | 'unsure' | undefined;
  readonly stage: string | undefined;
  readonly indoorMatch: string | undefined;
  readonly lineLength: string | undefined;
}

const nothing: About = { basis: undefined, stage: undefined, indoorMatch: undefined, lineLength: undefined };

export const pasted = signal('');
export const source = signal<Source | null>(null);
export const said = signal<Said>(nothingSaid);
export const about = signal<About>(nothing);
export const imported = signal<Imported | 'reading' | 'unreadable' | null>(null);
/** Lines of the sheet that is being read, once they are known. */
export const lines = signal<number | null>(null);
/** Whether somebody may have to wait for it, and would rather stop. */
export const isSlow = computed(() => imported.value === 'reading' && source.value !== null && isLarge(source.value));
/** Whether a table was taken over just now. */
export const taken = signal(false);

export const found = computed(() => {
  const now = imported.value;
  return now !== null && typeof now === 'object' && now.ok ? now : null;
});
export const isUsable = computed(
  () => found.value !== null && !found.value.findings.some(({ weight }) => weight === 'stop'),
);

/** How long a pasted or typed text rests before it is read, ms. */
const pause = 250;
let timer: ReturnType<typeof setTimeout> | undefined;

/** Another text or file: what was said of the one before does not hold for it. */
export function look(next: Source): void {
  clearTimeout(timer);
  batch(() => {
    source.value = next;
    said.value = nothingSaid;
    about.value = nothing;
    lines.value = null;
    taken.value = false;
    imported.value = typeof next === 'string' && next.trim() === '' ? null : 'reading';
  });
  timer = setTimeout(() => void read(), typeof next === 'string' ? pause : 0);
}

export function say(next: Said): void {
  said.value = next;
  void read();
}

export const fix = (...fixes: readonly Fix[]) => say(fixes.reduce(withFix, said.value));

async function read(): Promise<void> {
  const from = source.value;
  const with_ = said.value;
  if (from === null || (typeof from === 'string' && from.trim() === '')) return;
  const tellLines = (count: number) => {
    lines.value = count;
  };
  const answer = await readSource(from, with_, tellLines).catch(() => null);
  if (from === source.value && with_ === said.value) imported.value = answer ?? 'unreadable';
}

/** Makes the sheet the table of the job; what was there before is gone only now. False when the job is only to be looked at. */
export function use(page: string): boolean {
  const now = found.value;
  if (!now || !isUsable.value) return false;
  const basis = about.value.basis ?? now.proposal.basis ?? undefined;
  const done = edit(...confirmedEdits(now, { ...about.value, basis, page: page.trim(), at: new Date().toISOString() }));
  if (done) forget(true);
  return done;
}

/** Reads no further; the table of the job is what it was. */
export function stop(): void {
  stopReading();
  forget();
}

/** Leaves the table of the job as it is. */
export function forget(wasTaken = false): void {
  clearTimeout(timer);
  batch(() => {
    pasted.value = '';
    source.value = null;
    said.value = nothingSaid;
    imported.value = null;
    taken.value = wasTaken;
  });
}

export const hasOneBefore = computed(
  () => job.value.tables.ratingSheet !== undefined || job.value.tables.rating !== undefined,
);
