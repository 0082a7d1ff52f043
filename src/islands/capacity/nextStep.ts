/** The one next step: what stands in the way first, then what is odd, then what is missing, then the probes. */
import { computed } from '@preact/signals';
import { remarkWords } from '~/words/en/remarks.ts';
import { nextSteps } from '~/words/en/results.ts';
import { assessment, expectedHalf, job } from '../store.ts';
import { cellsSaid } from './cells.ts';

export const nextStep = computed((): string => {
  const { remarks, expected } = assessment.value;
  const pressing = remarks.find(({ code, weight }) => weight !== 'note' && remarkWords[code]?.next);
  if (pressing) return remarkWords[pressing.code]?.next ?? '';
  // What is still missing is known when the whole assessment has come.
  if (expectedHalf.value === null) return '\u00a0';
  const needs = expected.ok ? [] : expected.waiting;
  if (needs.includes('outdoorDryBulb')) return nextSteps.outdoors;
  if (needs.includes('rating')) return nextSteps.table(cellsSaid.value);
  if (job.value.chosen.fullSpeed === undefined) return nextSteps.fullSpeed;
  if (job.value.chosen.sideBySide !== 'yes') return nextSteps.sideBySide;
  return nextSteps.nothing;
});
