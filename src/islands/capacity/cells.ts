/** The figures that the maker's table is asked for, and how many of them are there. */
import { computed } from '@preact/signals';
import { ratingGrid } from '~/job/ratingGrid.ts';
import { ratingStep } from '~/words/en/steps.ts';
import { job, system } from '../store.ts';

export const grid = computed(() => ratingGrid(job.value, system.value));

export const cellCount = computed(() => {
  const cells = grid.value.state === 'ready' ? grid.value.cells.filter(({ quantity }) => quantity === 'total') : [];
  return { done: cells.filter(({ read }) => read.state === 'read').length, all: cells.length };
});

/** "85 and 95 outdoors, 62 and 67 wet bulb": the heads in one line. */
export const cellsSaid = computed(() => {
  const here = grid.value;
  if (here.state !== 'ready') return '';
  const labels = (heads: typeof here.outdoors) => heads.map(({ label }) => label).join(ratingStep.and);
  return ratingStep.heads(labels(here.outdoors), labels(here.wetBulbs));
});
