/** What the sheet opens with: the demo, a new job, or the job that this device keeps. */

import { signal } from '@preact/signals';
import { emptyJob } from '~/job/edit.ts';
import type { JobRefusal } from '~/job/schema.ts';
import { keepJob, newId, onEdits, openJob } from '~/job/storage.ts';
import type { Job, System } from '~/job/types.ts';
import { keeping, noteResult } from '../keep.ts';
import { job, merge, show, source, system } from '../store.ts';
import { isDesk } from './model.ts';

/** Why the job kept here could not be read; `null` when it could. */
export const unread = signal<JobRefusal | null>(null);

/** Runs once after hydration. Returns what is to be undone when the page goes. */
export function start(): () => void {
  const units = () => {
    system.value = (document.documentElement.dataset['units'] as System | undefined) ?? 'ip';
  };
  const wide = matchMedia('(min-width: 68.75em)');
  const width = () => {
    isDesk.value = wide.matches;
  };
  units();
  width();
  document.addEventListener('unitschange', units);
  wide.addEventListener('change', width);
  const stop = onEdits((id, edits) => source.value === 'own' && id === job.value.id && merge(edits));
  void open(new URLSearchParams(location.search));
  return () => {
    document.removeEventListener('unitschange', units);
    wide.removeEventListener('change', width);
    stop();
  };
}

async function open(query: URLSearchParams): Promise<void> {
  if (query.has('demo')) return showDemo();
  const found = await openJob();
  if (found.trouble) keeping.value = found.trouble;
  unread.value = found.unread;
  if (query.has('new') && !isEmpty(found.job)) startOwn();
  else show(found.job, 'own');
  // A reload must not start yet another job.
  forgetQuery();
}

/** A job in which nothing was entered yet serves as a new one. */
const isEmpty = ({ entered, chosen, tables, notes }: Job) =>
  [entered, chosen, tables, notes].every((map) => Object.keys(map).length === 0);

async function showDemo(): Promise<void> {
  const { demoJob } = await import('~/job/demo.ts');
  show(demoJob, 'demo');
}

/** An empty job of the person's own, the one kept before staying on the device. */
export function startOwn(): void {
  take(emptyJob(newId()));
}

/** The demo as a job that can be written on; it keeps saying that it began as one. */
export function copyDemo(): void {
  take({ ...job.value, id: newId() });
}

/** Makes a job the open one, here and on the device, and forgets what the address asked for. */
function take(own: Job): void {
  show(own, 'own');
  void keepJob(own).then((result) => noteResult(result, own));
  forgetQuery();
}

const forgetQuery = () => history.replaceState(null, '', location.pathname);
