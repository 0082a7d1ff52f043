/** Moving through a worksheet of steps: to the next field, to the field that is named, to the answer. */
import { rest } from './fields.ts';
import type { SheetSteps } from './sheetSteps.ts';

/** What a step asks, in its order. What is taken for granted until somebody says otherwise holds nobody up. */
const fieldsOf = (step: string): HTMLElement[] => [
  ...document.querySelectorAll<HTMLElement>(
    `#step-${step} .step-body :is(.field:not(.field-text) input, .grid-cell, select, .choices:not([data-assumed]) .choice input:checked, .choices:not(:has(:checked)) .choice:first-child input)`,
  ),
];

/** Folded fields are passed over: nobody asked for them. A part of a step opens for them. */
const reachable = (field: HTMLElement) => field.closest('details:not([open], .part), [hidden]') === null;

export function stepOf<Step extends string>({ steps }: SheetSteps<Step>, field: Element | null): Step | null {
  const id = field?.closest('.step')?.id.replace('step-', '');
  return steps.find((step) => step === id) ?? null;
}

/** The field after this one; at the end of a step, the first of the next; at the end of the last, the answer. */
export function toNextField<Step extends string>(sheet: SheetSteps<Step>, from: Element | null): void {
  const step = stepOf(sheet, from);
  if (!from || !step) {
    goInto(sheet, sheet.openStep.value ?? (sheet.steps[0] as Step));
    return;
  }
  const next = nextInStep(sheet, from);
  const following = sheet.after(step);
  if (next) focus(sheet, next);
  else if (following) goInto(sheet, following);
  else toAnswer();
}

/** The field that follows in the same step. */
export function nextInStep<Step extends string>(sheet: SheetSteps<Step>, from: Element): HTMLElement | undefined {
  const step = stepOf(sheet, from);
  const group = from.closest('.choices');
  const isAfter = (field: Element) =>
    (from.compareDocumentPosition(field) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0 && !group?.contains(field);
  return step ? fieldsOf(step).filter(reachable).find(isAfter) : undefined;
}

export function goInto<Step extends string>(sheet: SheetSteps<Step>, step: Step): void {
  openThen(sheet, step, () => fieldsOf(step).find(reachable));
}

/**
 * Opens a step where it is folded and goes to what is found in it. The fold is opened by hand before it is drawn anew: some
 * phones bring their keyboard up only for a field that gets the focus within the tap itself.
 */
function openThen<Step extends string>(sheet: SheetSteps<Step>, step: Step, find: () => HTMLElement | undefined): void {
  if (!sheet.isOpen(step)) {
    sheet.openStep.value = step;
    document.getElementById(`step-${step}`)?.setAttribute('data-open', '');
  }
  rest();
  const field = find();
  focus(sheet, field);
  // The step that was open folds at the next drawing, and everything below it moves up.
  if (field) requestAnimationFrame(() => keepInView(sheet, field));
}

/** To a field by its id. */
export function toField<Step extends string>(sheet: SheetSteps<Step>, id: string): void {
  const step = stepOf(sheet, document.getElementById(id));
  if (step) openThen(sheet, step, () => document.getElementById(id) ?? undefined);
}

export function toAnswer(): void {
  const answer = document.getElementById('answer');
  answer?.focus({ preventScroll: true });
  answer?.scrollIntoView({ block: 'start' });
}

export function focus<Step extends string>(sheet: SheetSteps<Step>, field: HTMLElement | undefined): void {
  if (!field) return;
  const part = field.closest<HTMLDetailsElement>('.part');
  if (part) part.open = true;
  // A panel of rare questions may stand in its place.
  field.closest('[hidden]')?.removeAttribute('hidden');
  field.focus({ preventScroll: true });
  if (field instanceof HTMLInputElement && field.type === 'text') field.select();
  keepInView(sheet, field);
}

/** What is said of a field: what it names as its description, and the line that follows its row. */
function saidOf(field: Element, row: Element): Element[] {
  const named = (field.getAttribute('aria-describedby') ?? '').split(' ').map((id) => document.getElementById(id));
  const next = row.nextElementSibling;
  return [...named, next?.matches('.echo, .check') ? next : null].filter((one) => one !== null);
}

/** Brings the field, and what is said of it, between the head of the page and the bar. */
export function keepInView<Step extends string>({ isDesk }: SheetSteps<Step>, field: Element): void {
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
