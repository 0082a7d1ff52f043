/** What the report can say: everything, no verdict and why, or what is still missing. */
import { computed } from '@preact/signals';
import type { Outcome } from '~/calc/types.ts';
import { incomplete } from '~/words/en/report.ts';
import { barWords, needNames } from '~/words/en/sheet.ts';
import { saidAbout, stopReason } from '../capacity/remarks.ts';
import { isAsked, type Reason, reasonOf, shown, verdict } from '../capacity/sure/verdict.ts';
import { capacity, type Shown } from '../show.ts';
import { assessment } from '../store.ts';

const waitingOf = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.waiting);

/** What the report waits for, in words. What withholds the verdict is an answer already: then nothing is waited for. */
export const missing = computed((): readonly string[] => {
  const { measured, expected, ratio, verdict: judged } = assessment.value;
  if (!measured.ok && measured.problem) return [barWords.cannotBe];
  if (measured.ok && withheldBy.value !== null) return [];
  const needs = [measured, expected, judged].flatMap(waitingOf).map((need) => needNames[need] ?? need);
  const asks = ratio.ok && !isAsked.value ? [incomplete.sideBySide] : [];
  return [...new Set([...needs, ...asks])];
});

/** Why there is no verdict; `null` where nothing withholds it. */
export const withheldBy = computed((): string | null => {
  const { measured, expected } = assessment.value;
  if (!measured.ok) return null;
  if (stopReason.value) return stopReason.value.say;
  return expected.ok || expected.problem === null ? null : (saidAbout('rating')[0]?.text ?? '');
});

/** What the test came to; `null` while the report cannot be made. */
export const outcome = computed((): Reason | 'withheld' | null => {
  if (!assessment.value.measured.ok || missing.value.length > 0) return null;
  if (withheldBy.value !== null) return 'withheld';
  return verdict.value && shown.value ? reasonOf(verdict.value) : null;
});

/** What it makes: net where it is compared, as on the sheet. */
export const made = computed((): Shown | null => {
  const { measured, ratio } = assessment.value;
  if (!measured.ok) return null;
  return capacity(ratio.ok ? ratio.value.measured : measured.value.total);
});

/** Whether the blower's own heat was taken off what was measured. */
export const isNet = computed(() => {
  const { measured, ratio } = assessment.value;
  return measured.ok && measured.value.basis === 'gross' && ratio.ok;
});
