/**
 * Steps back through a job: each takes back one act, or all that was typed into a field in one go. They are kept with the job,
 * so that a reload loses none. It comes with the store of the device: what is done before that belongs to the first step.
 */
import { computed, effect, signal } from '@preact/signals';
import type { Edit, QuantityKey } from '~/job/types.ts';
import { dropStep, keepStep, keptSteps } from '~/job/undoShelf.ts';
import { deepest, joined, stepOf, takenBack, type UndoStep, wasIn } from '~/job/undoSteps.ts';
import { edit, job, lastEdit, loaded, source } from '../jobStore.ts';

const steps = signal<readonly UndoStep[]>([]);
export const canUndo = computed(() => steps.value.length > 0);
/** What was taken back last, until something else is done. */
export const takenBackLast = signal<readonly Edit[] | null>(null);

/** A field that is typed into again after this is another reading of it, ms. */
const oneGo = 60_000;
/** Presses of an arrow key that follow one another sooner are one step, ms. */
const together = 800;

let of = '';
let undoing = false;
/** Whether a key was used last, and not a hand. */
let byKey = false;
/** Where the last step was done, and whether the focus has stayed there since. */
let place: Element | null = null;
let stayed = false;
/** Whether the last step was made by a key. */
let wasByKey = false;
let writing = false;
/** Steps that are not kept yet, by the time at which each was begun. */
const waiting = new Map<number, UndoStep>();

const isText = (target: EventTarget | null) =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
const isKept = () => source.peek() === 'own';

/** Keeps each step as it stands, at once; what changes meanwhile is kept after that. */
async function write(): Promise<void> {
  if (writing) return;
  writing = true;
  for (let [next] = waiting.values(); next; [next] = waiting.values()) {
    waiting.delete(next.begun);
    await keepStep(of, next);
  }
  writing = false;
}

function note(step: UndoStep): void {
  const last = steps.peek().at(-1);
  const at = document.activeElement;
  const since = step.begun - (last?.last ?? 0);
  const follows =
    last && stayed && place === at && (isText(at) ? since < oneGo : byKey && wasByKey && since < together);
  const made = follows ? joined(last, step) : step;
  steps.value = [...(follows ? steps.peek().slice(0, -1) : steps.peek()), made].slice(-deepest);
  place = at;
  stayed = true;
  wasByKey = byKey;
  if (!isKept()) return;
  waiting.set(made.begun, made);
  void write();
}

/** Takes the last step back that is still there to be taken back. */
export function undo(): void {
  for (let last = steps.peek().at(-1); last; last = steps.peek().at(-1)) {
    steps.value = steps.peek().slice(0, -1);
    waiting.delete(last.begun);
    if (isKept()) void dropStep(of, last);
    const back = takenBack(job.peek(), last);
    if (back.length === 0) continue;
    undoing = true;
    edit(...back);
    undoing = false;
    takenBackLast.value = back;
    return;
  }
}

/** What stood in a field before, where that can be put back; `null` for nothing. */
export const beforeIn = (key: QuantityKey) => wasIn(job.value, steps.value, key);

/** Puts it back, which is a step like any other. */
export function putBack(key: QuantityKey): void {
  const was = beforeIn(key);
  if (was) edit({ slot: 'entered', key, to: was });
}

async function comeTo(id: string): Promise<void> {
  of = id;
  waiting.clear();
  steps.value = [];
  takenBackLast.value = null;
  const kept = isKept() ? await keptSteps(id) : [];
  if (of === id) steps.value = [...kept, ...steps.peek()].slice(-deepest);
}

function press(event: KeyboardEvent): void {
  byKey = true;
  const isUndo = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === 'z';
  if (!isUndo || isText(event.target) || !canUndo.peek()) return;
  event.preventDefault();
  undo();
}

/** Follows the job of the page from now on. */
export function followSteps(): void {
  effect(() => {
    if (loaded.value && job.value.id !== of) void comeTo(job.value.id);
  });
  effect(() => {
    const made = lastEdit.value;
    if (!made || undoing || made.after.id !== of) return;
    const step = stepOf(made.before, made.edits, Date.now());
    if (!step) return;
    takenBackLast.value = null;
    note(step);
  });
  // Before whatever is pressed hears of it itself.
  document.addEventListener('keydown', press, { capture: true });
  document.addEventListener(
    'pointerdown',
    () => {
      byKey = false;
    },
    { capture: true },
  );
  document.addEventListener('focusin', ({ target }) => {
    if (target !== place) stayed = false;
  });
  document.addEventListener('focusout', () => {
    stayed = false;
  });
}
