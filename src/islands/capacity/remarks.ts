/** The remarks of the assessment in words, and what they do to the verdict. */
import { computed } from '@preact/signals';
import type { Problem, Remark } from '~/calc/types.ts';
import { outcomeWords, remarkWords } from '~/words/en/remarks.ts';
import { joined, remarkAmount } from '../show.ts';
import { assessment } from '../store.ts';

/** What is said of the table's end depends on whether it was carried on. */
const wordsOf = ({ code }: Remark) =>
  remarkWords[code === 'outsideTable' && assessment.value.expected.ok ? 'outsideTableExtended' : code];

const spoken = ({ amounts }: Remark) => amounts.map((amount) => joined(remarkAmount(amount)));

export interface Said {
  readonly code: string;
  readonly weight: Remark['weight'];
  readonly text: string;
}

/** What is said beside a step: remarks, and readings that cannot be together. */
export function saidAbout(about: Remark['about']): readonly Said[] {
  const { remarks } = assessment.value;
  const said = remarks
    .filter((remark) => remark.about === about && wordsOf(remark))
    .map((remark) => ({
      code: remark.code,
      weight: remark.weight,
      text: wordsOf(remark)?.say(...spoken(remark)) ?? '',
    }));
  const problem = problemAbout(about);
  const text = problem && outcomeWords[problem.code];
  return text ? [{ code: problem.code, weight: 'doubt', text }, ...said] : said;
}

/** What stands in the way of a state of the air, or of the expectation. What lies outside the table is a remark already. */
function problemAbout(about: Remark['about']): Problem | null {
  const { entering, leaving, expected } = assessment.value;
  const outcome =
    about === 'entering' ? entering : about === 'leaving' ? leaving : about === 'rating' ? expected : null;
  return outcome && !outcome.ok && outcome.problem?.code !== 'outsideTable' ? outcome.problem : null;
}

/** Why there is no verdict, when something withholds it. */
export const stopReason = computed(() => {
  const stop = assessment.value.remarks.find(({ weight }) => weight === 'stop');
  const words = stop && wordsOf(stop);
  if (!stop || !words) return null;
  const amounts = spoken(stop);
  return { code: stop.code, say: words.say(...amounts), short: words.short?.(...amounts) ?? '', next: words.next };
});

export const latentUnseen = computed(() =>
  assessment.value.remarks.some(({ code }) => code === 'latentUnseen' || code === 'leavingWetter'),
);
