/** The demo's job, whose invented table is drawn for who has none yet. It is fetched beside the page, not after it. */
import { effect, signal } from '@preact/signals';
import type { Job } from '~/job/types.ts';
import { askExpectedHalf, expectedHalf, interpreted, job, loaded } from '../store.ts';

export const standIn = signal<Job | null>(null);

/** Fetches it as soon as the open job turns out to have no table. Returns what ends that. */
export function followNeed(): () => void {
  return effect(() => {
    if (!loaded.value || standIn.peek()) return;
    const { rating, ratingSheet } = job.value.tables;
    if (rating || ratingSheet) {
      askExpectedHalf();
      const rows = interpreted.value.test.rating?.rows ?? [];
      if (expectedHalf.value === null || rows.length > 0) return;
    }
    // Without the network it may not come; the still picture is there all the same.
    void import('~/job/demo.ts')
      .then(({ demoJob }) => {
        standIn.value = demoJob;
      })
      .catch(() => {});
  });
}
