/** The check that would decide, and the one that would help most. */
import { computed } from '@preact/signals';
import type { Improvement } from '~/calc/types.ts';
import { improvementParts, improvementWords } from '~/words/en/improvements.ts';
import { assessment, expectedHalf } from '../../store.ts';
import { endsText, verdict } from './verdict.ts';

/** What is named where the verdict cannot be told yet could be: the single check that narrows most and decides, else all together. */
export const deciding = computed((): Improvement | null => {
  const half = expectedHalf.value;
  if (verdict.value?.because !== 'improvable' || !half) return null;
  return assessment.value.improvements.find(({ decides, takes }) => decides && takes <= half.thisVisit) ?? null;
});

const timeText = ({ takes }: Improvement) => improvementParts.minutes(Math.round(takes / 60));

const partsOf = (one: Improvement) => [...endsText(one), timeText(one)] as const;

/** "A side-by-side check would narrow it to about 73 to 87 % (30 minutes)." */
export function narrowing(one: Improvement): string {
  return improvementParts.wouldNarrow(improvementWords[one.change]?.name ?? one.change, ...partsOf(one));
}

/** What to do, and what it would give. */
export function todo(one: Improvement): string {
  return improvementParts.next(improvementWords[one.change]?.todo ?? one.change, ...partsOf(one));
}
