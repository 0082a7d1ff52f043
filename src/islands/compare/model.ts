/** Two jobs of this device as tests, what they share, and their difference. */
import { computed, signal } from '@preact/signals';
import { assess } from '~/calc/assess.ts';
import { compareTests, type SameCause } from '~/calc/confidence/difference.ts';
import type { Assessment, Test } from '~/calc/types.ts';
import { findAirflow } from '~/job/airflow/find.ts';
import type { StorageTrouble } from '~/job/database.ts';
import { listJobs } from '~/job/jobShelf.ts';
import { readSheet } from '~/job/ratingSheet.ts';
import { toTest } from '~/job/toTest.ts';
import type { Job } from '~/job/types.ts';

export type Which = 'before' | 'after';

/** `null` until the device has been asked. */
export const jobs = signal<readonly Job[] | null>(null);
export const trouble = signal<StorageTrouble | null>(null);
export const chosen = { before: signal<string | undefined>(undefined), after: signal<string | undefined>(undefined) };
export const same = signal<readonly SameCause[]>([]);

export interface Tested {
  readonly job: Job;
  readonly test: Test;
  readonly assessment: Assessment;
}

/** Fetches the jobs, and takes those that the address names. */
export async function look(): Promise<void> {
  const found = await listJobs();
  trouble.value = found.ok ? null : found.trouble;
  jobs.value = found.ok ? found.value.flatMap(({ job }) => job ?? []) : [];
  const query = new URLSearchParams(location.search);
  for (const which of ['before', 'after'] as const) {
    const asked = query.get(which);
    if (jobs.value.some(({ id }) => id === asked)) chosen[which].value = asked ?? undefined;
  }
}

/** Takes a job for one side; the address tells it, so that a reload shows the same two. */
export function choose(which: Which, id: string): void {
  chosen[which].value = id;
  const query = new URLSearchParams();
  for (const side of ['before', 'after'] as const) {
    const at = chosen[side].value;
    if (at !== undefined) query.set(side, at);
  }
  history.replaceState(null, '', `${location.pathname}?${query}`);
}

export function toggle(cause: SameCause): void {
  const now = same.value;
  same.value = now.includes(cause) ? now.filter((one) => one !== cause) : [...now, cause];
}

const tested = (which: Which) =>
  computed((): Tested | null => {
    const job = jobs.value?.find(({ id }) => id === chosen[which].value);
    if (!job) return null;
    const { test } = toTest(job, findAirflow, readSheet);
    return { job, test, assessment: assess(test) };
  });

export const sides = { before: tested('before'), after: tested('after') };

/** The difference, or what stands in its way; `null` until both sides are chosen. */
export const difference = computed(() => {
  const [before, after] = [sides.before.value, sides.after.value];
  return before && after && compareTests(before.test, after.test, same.value, after.test.confidence);
});

/** Whether the probes were checked side by side at one of the two only. */
export const checksDiffer = computed(() => {
  const checks = [sides.before.value, sides.after.value].map((side) => Boolean(side?.test.sideBySide));
  return checks[0] !== checks[1];
});
