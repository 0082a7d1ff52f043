/** What the airflow sheet shows of a job: its methods, which of them is open, and what each has found. */
import { computed, signal } from '@preact/signals';
import type { AirflowFound, AirflowMethod } from '~/calc/airflow/found.ts';
import { said } from '~/job/choices.ts';
import { edit, job } from '../jobStore.ts';

export type Method = AirflowMethod;
export const methods = [
  'readout',
  'fanTable',
  'flowGrid',
  'hood',
  'traverse',
  'temperatureRise',
  'pressureMatch',
  'grille',
] as const satisfies readonly Method[];

/** One method is open at a time; `together` is what several of them come to, `air` the air that they were measured in. */
export type Part = Method | 'together' | 'air';
export const openPart = signal<Part | null>(null);
export const isDesk = signal(false);

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

/** Several methods as one; `null` while there are fewer than two answers. */
export const together = computed(() => {
  const outcome = finder.value?.findTogether(job.value);
  return outcome?.ok ? outcome.value : null;
});

/** The airflow that counts here: of the method chosen, of all together, or of the only one. */
export const counts = computed(() => finder.value?.findAirflow(job.value) ?? null);
export const used = computed(() => said(job.value, 'airflow.use'));

/** Makes one answer the airflow found, and that the airflow of the capacity sheet. */
export function use(which: Method | 'together'): boolean {
  return edit({ slot: 'chosen', key: 'airflow.use', to: which }, { slot: 'chosen', key: 'airflow.from', to: 'found' });
}
