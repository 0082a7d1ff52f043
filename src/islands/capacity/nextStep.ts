/** The one next step: what stands in the way first, then what is odd, then what is missing, then the probes. */
import { computed } from '@preact/signals';
import { remarkWords } from '~/words/en/remarks.ts';
import { nextSteps } from '~/words/en/results.ts';
import { percent } from '../show.ts';
import { assessment, expectedHalf, job } from '../store.ts';
import { cellsSaid } from './cells.ts';
import { deciding, todo } from './sure/improvement.ts';
import { verdict } from './sure/verdict.ts';

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
  const found = verdict.value;
  if (found?.outcome === 'short') return nextSteps.short;
  const check = deciding.value ?? unchecked();
  if (check) return todo(check);
  return found?.because === 'tooNear' ? nextSteps.undecidable(percent(found.low)) : nextSteps.nothing;
});

/** While nobody has compared the probes, that is worth most, whether it decides or not; where the range is clear, it is not asked. */
function unchecked() {
  if (verdict.value?.outcome === 'meets') return undefined;
  return assessment.value.improvements.find(({ change }) => change === 'sideBySide');
}
