/** What the ducts outside the rooms take of what was measured at the coil; nothing of it changes what should be made. */
import { computed } from '@preact/signals';
import { ductGain } from '~/calc/ductGain.ts';
import { attempt, orNull } from '~/calc/outcome.ts';
import type { Step } from '~/calc/types.ts';
import { type AtTheCoil, ductsOf } from '~/job/ducts/index.ts';
import { job } from '../../jobStore.ts';
import { measuredHere, shown } from '../model.ts';

/** `null` while something of it is not measured. */
const coil = computed((): AtTheCoil | null => {
  const measured = shown.value?.job === job.value ? shown.value.measured : null;
  const [entering, leaving, flow] = [measured?.entering, measured?.leaving, measured?.flow];
  const total = measuredHere('total')?.value;
  if (!entering?.ok || !leaving?.ok || !flow?.ok || total === undefined) return null;
  return {
    entering: entering.value,
    leavingDryBulb: leaving.value.dryBulb,
    dryAirFlow: flow.value.dryAirFlow,
    total,
  };
});

export const isMeasured = computed(() => coil.value !== null);
export const ducts = computed(() => ductsOf(job.value, coil.value));
export const gain = computed(() => {
  const { input } = ducts.value;
  return input && orNull(attempt(() => ductGain(input)));
});
export const made = computed(() => coil.value?.total ?? null);

export function workingOfDucts(): readonly Step[] {
  const { input } = ducts.value;
  const steps: Step[] = [];
  if (input) attempt(() => ductGain(input, (step) => steps.push(step)));
  return steps;
}
