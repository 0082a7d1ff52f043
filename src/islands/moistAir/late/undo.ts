/** Steps back on the air chart: each undoes one move, or all that was typed into a field in one go. */
import { computed, effect, signal } from '@preact/signals';
import type { Edit, Job } from '~/job/types.ts';
import { edit, job, lastEdit } from '../../jobStore.ts';

interface Done {
  readonly before: Job;
  readonly after: Job;
  readonly edits: readonly Edit[];
  /** Where it was done, and when: what follows there at once belongs to it. */
  readonly at: Element | null;
  readonly time: number;
  readonly byKey: boolean;
}

const done = signal<readonly Done[]>([]);
export const canUndo = computed(() => done.value.at(-1)?.after.id === job.value.id);

/** Deeper than anybody goes back. */
const deepest = 100;
/** Presses of an arrow key that follow one another sooner are one step, ms. */
const together = 800;
let undoing = false;
/** Whether a key was used last, and not a hand. */
let byKey = false;

/** Notes each edit from now on, and listens for Ctrl+Z outside of text. Returns what ends that. */
export function followEdits(): () => void {
  const stop = effect(() => {
    const made = lastEdit.value;
    if (made && !undoing) note(made.before, made.after, made.edits);
  });
  const press = (event: KeyboardEvent) => {
    byKey = true;
    const isUndo = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === 'z';
    if (!isUndo || isText(event.target)) return;
    event.preventDefault();
    void undo();
  };
  const touch = () => {
    byKey = false;
  };
  // Before the point itself hears of it.
  document.addEventListener('keydown', press, { capture: true });
  document.addEventListener('pointerdown', touch, { capture: true });
  return () => {
    stop();
    document.removeEventListener('keydown', press, { capture: true });
    document.removeEventListener('pointerdown', touch, { capture: true });
  };
}

const isText = (target: EventTarget | null) =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;

function note(before: Job, after: Job, edits: readonly Edit[]): void {
  const steps = done.peek().filter((one) => one.after.id === after.id);
  const last = steps.at(-1);
  const at = document.activeElement;
  const time = Date.now();
  const follows =
    last &&
    last.at === at &&
    last.after === before &&
    (isText(at) || (byKey && last.byKey && time - last.time < together));
  const more = edits.filter((one) => !last?.edits.some(({ key }) => key === one.key));
  const step: Done = follows
    ? { ...last, after, time, edits: [...last.edits, ...more] }
    : { before, after, edits, at, time, byKey };
  done.value = [...(follows ? steps.slice(0, -1) : steps), step].slice(-deepest);
}

/** Takes the last step back. What another page changed meanwhile stays: of a table only the rows of the step are put back. */
export async function undo(): Promise<void> {
  const last = done.value.at(-1);
  if (!last || !canUndo.value) return;
  done.value = done.value.slice(0, -1);
  const { undone } = await import('~/job/mergeTables.ts');
  const back = undone(job.value, last.before, last.after, last.edits);
  undoing = true;
  edit(...back);
  undoing = false;
}
