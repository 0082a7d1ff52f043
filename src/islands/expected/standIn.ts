/** The demo's job, whose invented table is drawn for who has none yet. */
import { effect, signal } from '@preact/signals';
import { chosen } from '~/job/choices.ts';
import type { Job } from '~/job/types.ts';
import { askExpectedHalf, job, loaded } from '../store.ts';

export const standIn = signal<Job | null>(null);
let fetching = false;

export function fetchStandIn(): void {
  if (fetching) return;
  fetching = true;
  // Without the network it may not come; the still picture is there all the same.
  void import('~/job/demo.ts')
    .then(({ demoJob }) => {
      standIn.value = demoJob;
    })
    .catch(() => {
      fetching = false;
    });
}

/** Fetches it beside the page, not after it, for a job that plainly has no table. Returns what ends that. */
export function followNeed(): () => void {
  askExpectedHalf();
  return effect(() => {
    const { rating, ratingSheet } = job.value.tables;
    const has = rating !== undefined || ratingSheet !== undefined || chosen(job.value, 'rating.from') === 'generic';
    if (loaded.value && !has) fetchStandIn();
  });
}
