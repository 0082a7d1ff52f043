/** The figures that the maker's table is asked for, and how many of them are there. */
import { computed } from '@preact/signals';
import { ratingStep } from '~/words/en/steps.ts';
import { expectedHalf, job, system } from '../store.ts';

/** `null` until the expected half has been fetched. */
export const grid = computed(() => expectedHalf.value?.ratingGrid(job.value, system.value) ?? null);

/** The grid once the readings say which cells they lie between. */
export const readyGrid = computed(() => (grid.value?.state === 'ready' ? grid.value : null));

/** Whether published curves through the certified capacity stand for the table. */
export const isGeneric = computed(() => job.value.chosen['rating.from'] === 'generic');

export const cellCount = computed(() => {
  const cells = readyGrid.value?.cells.filter(({ quantity }) => quantity === 'total') ?? [];
  return { done: cells.filter(({ read }) => read.state === 'read').length, all: cells.length };
});

/** "85 and 95 outdoors, 62 and 67 wet bulb": the heads in one line. */
export const cellsSaid = computed(() => {
  const here = readyGrid.value;
  if (here === null) return '';
  const labels = (heads: typeof here.outdoors) => heads.map(({ label }) => label).join(ratingStep.and);
  return ratingStep.heads(labels(here.outdoors), labels(here.wetBulbs));
});
