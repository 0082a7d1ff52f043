/** What the airflow sheet shows of a job: which of its methods are open, what each has found, what counts, what the bar says. */
import { computed, signal } from '@preact/signals';
import type { AirflowFound } from '~/calc/airflow/found.ts';
import { type AirflowMethod, airflowMethods } from '~/calc/airflow/methods.ts';
import type { Outcome } from '~/calc/types.ts';
import { said } from '~/job/choices.ts';
import type { QuantityKey } from '~/job/types.ts';
import { airflowNeeds, methodWords, airflowBar as words } from '~/words/en/airflowSheet.ts';
import { problemInBar } from '~/words/en/problems.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { barWords } from '~/words/en/sheet.ts';
import { problemParts, readOf, typing } from '../fields.ts';
import { edit, job } from '../jobStore.ts';
import type { BarWords } from '../SheetBar.tsx';
import { type SheetSteps, sheetSteps } from '../sheetSteps.ts';
import { betweenText, flowText } from './flowText.ts';

export type Method = AirflowMethod;
export const methods = airflowMethods;

const inOrder = sheetSteps(methods);
inOrder.openStep.value = null;

/** Ways to one figure, not steps of one way: they fold on a desk too, and each of them leads to the answer. */
export const airflowWays: SheetSteps<Method> = {
  ...inOrder,
  fixed: signal(false),
  isOpen: (method) => inOrder.allOpen.value || inOrder.openStep.value === method,
  after: () => undefined,
};
export const { openStep, allOpen, isDesk } = airflowWays;
/** Where the parts of a way all stand open: on a desk, and among all ways. */
export const isRoomy = computed(() => isDesk.value || allOpen.value);

type Finder = typeof import('~/job/airflow/find.ts');
const finder = signal<Finder | null>(null);

/** What works the methods out comes when one is opened, or when a job that has one is shown. */
export async function fetchFinder(): Promise<void> {
  finder.value ??= await import('~/job/airflow/find.ts');
}

/** Every method's answer, or what it waits for; `null` until what works it out is there. */
export const found = computed(() => {
  const by = finder.value;
  if (!by) return null;
  const open = job.value;
  return new Map(methods.map((method) => [method, by.findBy(open, method)] as const));
});

export const answerOf = (method: Method): AirflowFound | null => {
  const outcome = found.value?.get(method);
  return outcome?.ok ? outcome.value : null;
};

export const answered = computed(() => methods.filter((method) => answerOf(method) !== null));

/** Several methods as one; `null` while there are fewer than two answers. */
export const together = computed(() => {
  const outcome = finder.value?.findTogether(job.value);
  return outcome?.ok ? outcome.value : null;
});

/** The airflow that counts here: of the method chosen, of all together, or of the only one. */
export const counts = computed(() => finder.value?.findAirflow(job.value) ?? null);

/** What was let count, or the only answer that there is. */
export const used = computed(() => {
  const [only, second] = answered.value;
  return said(job.value, 'airflow.use') ?? (second ? null : (only ?? null));
});

/** Makes one answer the airflow found, and that the airflow of the capacity sheet. */
export function use(which: Method | 'together'): boolean {
  return edit({ slot: 'chosen', key: 'airflow.use', to: which }, { slot: 'chosen', key: 'airflow.from', to: 'found' });
}

/** How a way is called inside a sentence. */
export const wayName = (which: Method | 'together'): string =>
  which === 'together' ? words.together : methodWords[which].inSentence;

const isQuantity = (key: string): key is QuantityKey => key in quantityWords;

/** What a method waits for, by the names of its fields and grids. */
export const needText = (waiting: readonly string[]): string =>
  waiting.map((key) => (isQuantity(key) ? quantityWords[key].inSentence : (airflowNeeds[key] ?? key))).join(', ');

const openOutcome = computed((): Outcome<unknown> | null => {
  const open = openStep.value;
  return (open && found.value?.get(open)) ?? null;
});

/** A figure of the open method that cannot be used and is not being typed in. */
const firstBad = computed((): BarWords | null => {
  const waiting = openOutcome.value && !openOutcome.value.ok ? openOutcome.value.waiting : [];
  for (const key of waiting.filter(isQuantity)) {
    const read = readOf(key);
    if (read.state !== 'bad' || typing.value === key) continue;
    const small = problemInBar(problemParts(key), read.code);
    return {
      big: `${barWords.check} ${quantityWords[key].inSentence}`,
      sentence: true,
      small,
      field: `field-${key}`,
    };
  }
  return null;
});

/** Bad figures first, then the airflow that counts, then what is missing. */
export const bar = computed((): BarWords => {
  if (firstBad.value) return firstBad.value;
  const outcome = counts.value;
  if (outcome?.ok) {
    const by = used.value ? words.by(wayName(used.value)) : '';
    return { big: flowText(outcome.value), sentence: false, small: [betweenText(outcome.value), by].join(' ') };
  }
  const open = openOutcome.value;
  if (open?.ok === false) {
    if (open.problem) return { big: words.check, sentence: true, small: words.checkSmall };
    return { big: barWords.stillNeeded, sentence: true, small: needText(open.waiting) };
  }
  if (answered.value.length > 1)
    return { big: words.choose, sentence: true, small: words.answers(answered.value.length) };
  return { big: words.start, sentence: true, small: words.startSmall };
});
