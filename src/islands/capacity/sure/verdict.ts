/** The verdict that counts on this sheet, and the one pair of ends that words, mark and picture share. */
import { computed } from '@preact/signals';
import type { Verdict } from '~/calc/types.ts';
import { percent } from '../../show.ts';
import { assessment, expectedHalf, interpreted, job, source } from '../../store.ts';
import { drawn } from './draws.ts';

/** Whether the draws decide: their ends differ from first order by more than half a point. */
const isDrawn = computed(() => drawn.value?.by === 'monteCarlo');

/** `null` while there is none: something is missing, or something withholds it. */
export const verdict = computed((): Verdict | null => {
  const found = (isDrawn.value && drawn.value?.verdict) || assessment.value.verdict;
  return found.ok ? found.value : null;
});

/** What the verdict is, and of "cannot tell" which of its three forms. */
export type Reason = 'meets' | 'short' | NonNullable<Verdict['because']>;

export const reasonOf = ({ outcome, because }: Verdict): Reason =>
  because ?? (outcome === 'cannotTell' ? 'tooNear' : outcome);

/** Whether somebody said if the probes were checked; the demo is not asked. */
export const isAsked = computed(() => job.value.chosen.sideBySide !== undefined || source.value === 'demo');

/** The share and the ends of its range, rounded outward; `null` without a share. */
export const shown = computed(() => {
  const { ratio } = assessment.value;
  const half = expectedHalf.value;
  if (!ratio.ok || !half) return null;
  const ranged = isDrawn.value && drawn.value?.ratio.ok ? drawn.value.ratio.value : ratio.value;
  const { low, high } = verdict.value ?? half.outward(ranged.interval);
  const { test } = interpreted.value;
  return { value: ratio.value.value, low, high, line: test.line, confidence: test.confidence };
});

/** A low end in front of a high one: its sign stands behind the high one only. */
const lowText = (low: number) => String(Math.round(low * 100));

/** The ends as words: "79" and "107 %". */
export const endsText = ({ low, high }: { readonly low: number; readonly high: number }) =>
  [lowText(low), percent(high)] as const;
