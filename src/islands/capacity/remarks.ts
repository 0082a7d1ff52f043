/** The remarks of the assessment in words, and what they do to the verdict. */
import { computed, effect, signal } from '@preact/signals';
import type { Problem, Remark } from '~/calc/types.ts';
import { joined, remarkAmount } from '../show.ts';
import { assessment, job } from '../store.ts';
import { whenUntouched } from '../untouched.ts';

type Sentences = typeof import('~/words/en/remarks.ts');

/** The sentences are fetched when there is something to remark: most jobs have none before their first answer. */
const sentences = signal<Sentences | null>(null);

const isNeeded = computed(() => {
  const { remarks, entering, leaving, expected } = assessment.value;
  return remarks.length > 0 || [entering, leaving, expected].some((outcome) => !outcome.ok && outcome.problem !== null);
});

if (typeof document !== 'undefined') {
  const stop = effect(() => {
    if (!isNeeded.value) return;
    void import('~/words/en/remarks.ts').then((module) => {
      stop();
      whenUntouched(() => {
        sentences.value = module;
      });
    });
  });
}

/** What is said of the table's end depends on whether it was carried on. */
const wordsOf = ({ code }: Remark) =>
  sentences.value?.remarkWords[code === 'outsideTable' && assessment.value.expected.ok ? 'outsideTableExtended' : code];

const spoken = ({ amounts, about }: Remark) => [...amounts.map((amount) => joined(remarkAmount(amount))), about];

/** Of a question that stands open beside it nothing has to be said. */
const isAsked = ({ code }: Remark) => code === 'basisUnknown' && job.value.chosen['rating.basis'] === undefined;

export interface Said {
  readonly code: string;
  readonly weight: Remark['weight'];
  readonly text: string;
}

/** What is said beside a step: remarks, and readings that cannot be together. */
export function saidAbout(about: Remark['about']): readonly Said[] {
  const { remarks } = assessment.value;
  const said = remarks
    .filter((remark) => remark.about === about && wordsOf(remark) && !isAsked(remark))
    .map((remark) => ({
      code: remark.code,
      weight: remark.weight,
      text: wordsOf(remark)?.say(...spoken(remark)) ?? '',
    }));
  const problem = problemAbout(about);
  const text = problem && sentences.value?.outcomeWords[problem.code];
  const all = text ? [{ code: problem.code, weight: 'doubt' as const, text }, ...said] : said;
  // Several figures may earn the same sentence: once is enough.
  return all.filter((one, index) => all.findIndex((other) => other.text === one.text) === index);
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
  if (!stop) return null;
  const words = wordsOf(stop);
  const amounts = spoken(stop);
  return { say: words?.say(...amounts) ?? '', short: words?.short?.(...amounts) ?? '' };
});

export const latentUnseen = computed(() =>
  assessment.value.remarks.some(({ code }) => code === 'latentUnseen' || code === 'leavingWetter'),
);
