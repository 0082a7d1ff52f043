/**
 * The open job and what follows from it on a sheet: text becomes SI in `interpreted`, SI becomes results in `assessment`. A
 * worksheet that needs no assessment takes the job alone, from `jobStore.ts`.
 */
import { computed, effect, signal } from '@preact/signals';
import { assessMeasured } from '../calc/measured.ts';
import type { ReadSheet } from '../job/toRating.ts';
import { type FindAirflow, isFound, toTest } from '../job/toTest.ts';
import { usesSheet } from '../job/usesSheet.ts';
import { job } from './jobStore.ts';
import { whenUntouched } from './untouched.ts';

export * from './jobStore.ts';

/** What works out an airflow that was found on its own sheet: fetched with the first job that has one. */
const findAirflow = signal<FindAirflow | null>(null);

/** What reads a whole table of the maker: fetched with the first job that has one. */
const readSheet = signal<ReadSheet | null>(null);

export const interpreted = computed(() => toTest(job.value, findAirflow.value, readSheet.value));

/** The whole assessment, once it has been fetched. Until then the measured half stands alone, which is what the first answer needs. */
const whole = signal<typeof import('../calc/assess.ts') | null>(null);
export const isWhole = computed(() => whole.value !== null);
const measuredAlone = computed(() => assessMeasured(interpreted.value.test));

export const assessment = computed(() =>
  whole.value ? whole.value.assess(interpreted.value.test) : measuredAlone.value,
);

/** Something is measured, or something was said from which an expectation may follow. */
const isNeeded = computed(() => {
  const { outdoorDryBulb, fullSpeed } = interpreted.value.test;
  return measuredAlone.value.measured.ok || outdoorDryBulb !== null || fullSpeed !== null;
});

if (typeof document !== 'undefined') {
  let asked = false;
  const fetchWhole = async (): Promise<void> => {
    asked = true;
    try {
      const module = await import('../calc/assess.ts');
      stop();
      whenUntouched(() => {
        whole.value = module;
      });
    } catch {
      asked = false;
    }
  };
  let finding = false;
  const fetchFinder = async (): Promise<void> => {
    finding = true;
    try {
      const module = await import('../job/airflow/find.ts');
      stopFinding();
      findAirflow.value = module.findAirflow;
    } catch {
      finding = false;
    }
  };
  let opening = false;
  const fetchSheet = async (): Promise<void> => {
    opening = true;
    try {
      const module = await import('../job/ratingSheet.ts');
      stopOpening();
      readSheet.value = module.readSheet;
    } catch {
      opening = false;
    }
  };
  // A fetch that failed is tried again with the next edit.
  const stopOpening = effect(() => {
    if (usesSheet(job.value) && !opening) void fetchSheet();
  });
  const stopFinding = effect(() => {
    if (isFound(job.value) && !finding) void fetchFinder();
  });
  const stop = effect(() => {
    if (job.value && isNeeded.value && !asked) void fetchWhole();
  });
}
