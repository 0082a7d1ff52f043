/** Moving through the sheet: to the next field, to the field that is named, to the answer. */
import { rest } from '../fields.ts';
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
  const field = find();
  focus(field);
  // The step that was open folds at the next drawing, and everything below it moves up.
  if (field) requestAnimationFrame(() => keepInView(field));
}

/** To a field by its id. */
export function toField(id: string): void {
  const step = stepOf(document.getElementById(id));
  if (step) openThen(step, () => document.getElementById(id) ?? undefined);
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

/** What is said of a field: what it names as its description, and the line that follows its row. */
function saidOf(field: Element, row: Element): Element[] {
  const named = (field.getAttribute('aria-describedby') ?? '').split(' ').map((id) => document.getElementById(id));
  const next = row.nextElementSibling;
  return [...named, next?.matches('.echo, .check') ? next : null].filter((one) => one !== null);
}

/** Brings the field, and what is said of it, between the head of the page and the bar. */
export function keepInView(field: Element): void {
  const row = field.closest('.cell .field, .field-row, .field, .choices') ?? field;
  const bar = document.querySelector('.answer-bar')?.getBoundingClientRect();
  const floor = isDesk.value || !bar ? innerHeight : Math.min(innerHeight, bar.top);
  const top = (field.closest('.field') ?? row).getBoundingClientRect().top;
  const bottoms = [row, ...saidOf(field, row)].map((one) => one.getBoundingClientRect().bottom);
  const bottom = Math.max(...bottoms);
  const gap = 8;
  if (bottom > floor - gap) scrollBy({ top: Math.min(bottom - floor + gap, top - gap) });
  else if (top < gap) scrollBy({ top: top - gap });
}
