/**
 * The open job and what follows from it on a sheet: text becomes SI in `interpreted`, SI becomes results in `assessment`. A
 * worksheet that needs no assessment takes the job alone, from `jobStore.ts`.
 *
 * A sheet starts with the measured half, which is all that its first figure needs. The expected half is fetched when it has
 * something to say; until then it waits for nothing that could be named.
 */
import { computed, effect, signal } from '@preact/signals';
import { assessMeasured } from '../calc/measured.ts';
import { type FindAirflow, isFound, measuredTest } from '../job/measuredTest.ts';
import type { ReadSheet } from '../job/toRating.ts';
import { usesSheet } from '../job/usesSheet.ts';
import { job } from './jobStore.ts';
import { whenUntouched } from './untouched.ts';

export * from './jobStore.ts';

/** `null` until it has been fetched. */
export const expectedHalf = signal<typeof import('./expectedHalf.ts') | null>(null);
/** What works out an airflow that was found on its own sheet: fetched with the first job that has one. */
const findAirflow = signal<FindAirflow | null>(null);

/** What reads a whole table of the maker: fetched with the first job that has one. */
const readSheet = signal<ReadSheet | null>(null);

const measured = computed(() => measuredTest(job.value, findAirflow.value));
const assessedMeasured = computed(() => assessMeasured(measured.value.test));

export const interpreted = computed(
  () => expectedHalf.value?.toTest(job.value, findAirflow.value, readSheet.value) ?? measured.value,
);
export const assessment = computed(() => expectedHalf.value?.assess(interpreted.value.test) ?? assessedMeasured.value);

const asked = signal(false);
/** For a page that wants it whatever was read. */
export const askExpectedHalf = () => {
  asked.value = true;
};

/** Something is measured, or the readings may contradict each other, or something was said from which an expectation may follow. */
const isNeeded = computed(() => {
  const { entering, leaving } = assessedMeasured.value;
  const { outdoorDryBulb, fullSpeed, barometer } = measured.value.test;
  const said = [outdoorDryBulb, fullSpeed, barometer, job.value.chosen['rating.from'] ?? null];
  return asked.value || (entering.ok && leaving.ok) || said.some((one) => one !== null);
});

/** Fetches something once it is needed. A fetch that failed is tried again with the next edit. */
export function fetchWhen(needed: () => boolean, fetch: () => Promise<void>): void {
  let fetching = false;
  const stop = effect(() => {
    if (!job.value || !needed() || fetching) return;
    fetching = true;
    fetch().then(
      () => stop(),
      () => {
        fetching = false;
      },
    );
  });
}

if (typeof document !== 'undefined') {
  fetchWhen(
    () => usesSheet(job.value),
    async () => {
      readSheet.value = (await import('../job/ratingSheet.ts')).readSheet;
    },
  );
  fetchWhen(
    () => isFound(job.value),
    async () => {
      findAirflow.value = (await import('../job/airflow/find.ts')).findAirflow;
    },
  );
  fetchWhen(
    () => isNeeded.value,
    async () => {
      const half = await import('./expectedHalf.ts');
      whenUntouched(() => {
        expectedHalf.value = half;
      });
    },
  );
}
