/** What the coil of the job does to the air, for a chart: both readings, the load, and the blower's step. */
import { computed } from '@preact/signals';
import { blowerHere } from '~/calc/blowers.ts';
import type { ChartProcess } from '~/charts/moistAir/process.ts';
import { assessment, interpreted } from './store.ts';

/** `null` until both states of the air are there. */
export const jobProcess = computed((): ChartProcess | null => {
  const { entering, leaving, measured } = assessment.value;
  if (!entering.ok || !leaving.ok) return null;
  const load = measured.ok ? measured.value : null;
  const { test } = interpreted.value;
  const blower = load && { heat: blowerHere(test, load.dryAirFlow), place: test.blower.place };
  return { entering: entering.value, leaving: leaving.value, load, blower };
});
