/** What a worksheet opens with: the demo, a new job, or the job that this device keeps. */
import { computed, signal } from '@preact/signals';
import type { LinkRefusal } from '~/job/linkText.ts';
import type { JobRefusal } from '~/job/schema.ts';
import type { System } from '~/job/types.ts';
import { job, show, source, system } from './jobStore.ts';
import { keeping, storage } from './keep.ts';

/** Why the job kept here, or that of a link, could not be read; `null` when it could. */
export const unread = signal<JobRefusal | 'missing' | `link.${LinkRefusal}` | null>(null);
/** Readings that are an hour old, and what leads to them. */
export const stale = signal<Stale | null>(null);

export interface Stale {
  readonly side: 'entering' | 'leaving';
  /** ISO 8601. */
  readonly at: string;
  readonly readAgain: () => void;
}

/** Whether there is something to be known before the first field. */
export const noticed = computed(
  () =>
    job.value.invented === true ||
    source.value === 'linked' ||
    (unread.value ?? stale.value) !== null ||
    (keeping.value !== 'not yet' && keeping.value !== 'kept'),
);

/** Follows the units of the frame. Returns what ends that. */
export function followUnits(): () => void {
  const units = () => {
    system.value = (document.documentElement.dataset['units'] as System | undefined) ?? 'ip';
  };
  units();
  document.addEventListener('unitschange', units);
  return () => document.removeEventListener('unitschange', units);
}

/** Follows the units of the frame and the job, here and in other tabs. Returns what ends that. */
export function follow(): () => void {
  const unfollowUnits = followUnits();
  const others = storage().then(({ followJob }) => followJob());
  return () => {
    unfollowUnits();
    void others.then((stop) => stop());
  };
}

/** Puts the job on the page that the address asks for. */
export async function open(query: URLSearchParams): Promise<void> {
  if (query.has('demo')) return showDemo();
  await (await storage()).openHere(query);
}

async function showDemo(): Promise<void> {
  const { demoJob } = await import('~/job/demo.ts');
  show(demoJob, 'demo');
}
