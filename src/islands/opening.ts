/** What a worksheet opens with: the demo, a new job, or the job that this device keeps. */
import { computed, signal } from '@preact/signals';
import { emptyJob, isEmpty } from '~/job/edit.ts';
import type { LinkRefusal } from '~/job/linkText.ts';
import { newId } from '~/job/newId.ts';
import type { JobRefusal } from '~/job/schema.ts';
import type { Job, System } from '~/job/types.ts';
import { job, merge, show, source, system } from './jobStore.ts';
import { keeping, noteResult, storage } from './keep.ts';

/** Why the job kept here, or that of a link, could not be read; `null` when it could. */
export const unread = signal<JobRefusal | `link.${LinkRefusal}` | null>(null);

/** Whether there is something to be known before the first field. */
export const noticed = computed(
  () =>
    job.value.invented === true ||
    source.value === 'linked' ||
    unread.value !== null ||
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

/** Follows the units of the frame and the edits of other tabs. Returns what ends that. */
export function follow(): () => void {
  const unfollowUnits = followUnits();
  let stop = () => {};
  const others = storage().then(({ onEdits, mergeEdits }) => {
    stop = onEdits((id, edits) => {
      if (source.value === 'own' && id === job.value.id) merge((made) => mergeEdits(made, edits));
    });
  });
  return () => {
    unfollowUnits();
    void others.then(() => stop());
  };
}

/** Puts the job on the page that the address asks for. */
export async function open(query: URLSearchParams): Promise<void> {
  if (query.has('demo')) return showDemo();
  const { openLinked, openJob } = await storage();
  if (await openLinked()) return;
  const found = await openJob();
  if (found.trouble) keeping.value = found.trouble;
  unread.value ??= found.unread;
  if (query.has('new') && !isEmpty(found.job)) startOwn();
  else show(found.job, 'own');
  // A reload must not start yet another job.
  forgetQuery();
}

async function showDemo(): Promise<void> {
  const { demoJob } = await import('~/job/demo.ts');
  show(demoJob, 'demo');
}

/** An empty job of the person's own, the one kept before staying on the device. */
export function startOwn(): void {
  take(emptyJob(newId()));
}

/** The demo, or what a link showed, as a job that is kept; an invented one keeps saying so. */
export function takeCopy(): void {
  take({ ...job.value, id: newId() });
}

/** Makes a job the open one, here and on the device, and forgets what the address asked for. */
function take(own: Job): void {
  show(own, 'own');
  void storage()
    .then(({ keepJob }) => keepJob(own))
    .then((result) => noteResult(result, own));
  forgetQuery();
}

const forgetQuery = () => history.replaceState(null, '', location.pathname + location.hash.replace(/^#job=.*/, ''));
