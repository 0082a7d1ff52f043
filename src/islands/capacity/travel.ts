/** Moving through the sheet: to the next field, to the field that is named, to the answer. */
import type { QuantityKey } from '~/job/types.ts';
import { rest } from '../fields.ts';
import { flush } from '../keep.ts';
import { isDesk, isOpen, openStep, type StepId, steps } from './model.ts';

const fieldsOf = (step: StepId): HTMLElement[] => [
  ...document.querySelectorAll<HTMLElement>(
    `#step-${step} .step-body :is(.field:not(.field-text) input, select, .choice input:checked, .choices:not(:has(:checked)) .choice:first-child input)`,
  ),
];

/** Folded fields are passed over: nobody asked for them. */
const reachable = (field: HTMLElement) => field.closest('details:not([open])') === null;

function stepOf(field: Element | null): StepId | null {
  const id = field?.closest('.step')?.id.replace('step-', '');
  return steps.find((step) => step === id) ?? null;
}

/** The field after this one; at the end of a step, the first of the next; at the end of the last, the answer. */
export function toNextField(from: Element | null): void {
  const step = stepOf(from);
  if (!from || !step) {
    goInto(openStep.value ?? 'entering');
    return;
  }
  const here = fieldsOf(step).filter(reachable);
  const group = from.closest('.choices');
  const at = here.findIndex((field) => field === from || (group !== null && field.closest('.choices') === group));
  const next = here[at + 1];
  const following = steps[steps.indexOf(step) + 1];
  if (at >= 0 && next) focus(next);
  else if (following) goInto(following);
  else toAnswer();
}

function goInto(step: StepId): void {
  openThen(step, () => fieldsOf(step).find(reachable));
}

/**
 * Opens a step where it is folded and goes to what is found in it. The fold is opened by hand before it is drawn anew: some
 * phones bring their keyboard up only for a field that gets the focus within the tap itself.
 */
export function openThen(step: StepId, find: () => HTMLElement | undefined): void {
  if (!isOpen(step)) {
    openStep.value = step;
    document.getElementById(`step-${step}`)?.setAttribute('data-open', '');
  }
  rest();
  void flush();
  const field = find();
  focus(field);
  // The step that was open folds at the next drawing, and everything below it moves up.
  if (field) requestAnimationFrame(() => keepInView(field));
}

export function toField(key: QuantityKey): void {
  const field = document.getElementById(`field-${key}`);
  const step = stepOf(field);
  if (step) openThen(step, () => document.getElementById(`field-${key}`) ?? undefined);
}

export function toAnswer(): void {
  const answer = document.getElementById('answer');
  answer?.focus({ preventScroll: true });
  answer?.scrollIntoView({ block: 'start' });
}

function focus(field: HTMLElement | undefined): void {
  if (!field) return;
  field.focus({ preventScroll: true });
  if (field instanceof HTMLInputElement && field.type === 'text') field.select();
  keepInView(field);
}

/** The field, and what is said below it, between the head of the page and the bar. */
export function keepInView(field: Element): void {
  const row = field.closest('.field-row, .field, .cell-grid, .choices') ?? field;
  const said = row.nextElementSibling?.matches('.echo, .check') ? row.nextElementSibling : null;
  const bar = document.querySelector('.answer-bar')?.getBoundingClientRect();
  const floor = isDesk.value || !bar ? innerHeight : Math.min(innerHeight, bar.top);
  const top = row.getBoundingClientRect().top;
  const bottom = (said ?? row).getBoundingClientRect().bottom;
  const gap = 8;
  if (bottom > floor - gap) scrollBy({ top: Math.min(bottom - floor + gap, top - gap) });
  else if (top < gap) scrollBy({ top: top - gap });
}
