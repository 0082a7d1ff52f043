/**
 * The open job and what follows from it on a sheet: text becomes SI in `interpreted`, SI becomes results in `assessment`. A
 * worksheet that needs no assessment takes the job alone, from `jobStore.ts`.
 */
import { computed } from '@preact/signals';
import { assess } from '../calc/assess.ts';
import { toTest } from '../job/toTest.ts';
import { job } from './jobStore.ts';

export * from './jobStore.ts';

export const interpreted = computed(() => toTest(job.value));
export const assessment = computed(() => assess(interpreted.value.test));
