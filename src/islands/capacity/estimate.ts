/** Whether the expectation is an estimate from published curves, and how far open sources differ there. */
import { computed } from '@preact/signals';
import { percent } from '../show.ts';
import { assessment, interpreted } from '../store.ts';

/** The band, either way, as text; `null` where a table of the maker's stands behind the expectation. */
export const estimateBand = computed((): string | null => {
  const { expected } = assessment.value;
  if (!expected.ok || interpreted.value.test.rating?.from !== 'generic') return null;
  const band = expected.value.derates.find(({ cause }) => cause === 'temperatures')?.band ?? 0;
  return percent(band);
});
