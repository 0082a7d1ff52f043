/** Steps back through what was done to a job: each knows what its edits put in place of what. */
import { mergeTable } from './mergeTables.ts';
import { readEdits } from './schema.ts';
import type { Edit, Entered, Job, QuantityKey } from './types.ts';

export interface UndoStep {
  /** As it was before, and as it was made: the same keys in the same order. */
  readonly was: readonly Edit[];
  readonly now: readonly Edit[];
  /** When it was begun and last added to, ms since 1970. The first names the step within its job. */
  readonly begun: number;
  readonly last: number;
}

/** As far as anybody can go back. */
export const deepest = 50;

/** What a lock stamps and lists is never taken back. */
const isUndone = ({ key }: Edit) => !key.startsWith('locked.');

/** The step that edits are, made to a job as it was before; `null` when nothing of it can be taken back. */
export function stepOf(before: Job, edits: readonly Edit[], time: number): UndoStep | null {
  const own = edits.filter(
    (edit, index) => isUndone(edit) && !edits.slice(index + 1).some((later) => isAlike(edit, later)),
  );
  if (own.length === 0) return null;
  const was = own.map((edit) => ({ slot: edit.slot, key: edit.key, to: valueIn(before, edit) }) as Edit);
  // What a table was goes along in `was` already.
  const now = own.map(({ slot, key, to }) => ({ slot, key, to }) as Edit);
  return { was, now, begun: time, last: time };
}

/** A step and what followed in the same go, as one. */
export function joined(step: UndoStep, next: UndoStep): UndoStep {
  const isIn = (edits: readonly Edit[], one: Edit) => edits.some((other) => isAlike(one, other));
  const fresh = next.was.filter((one) => !isIn(step.was, one));
  const was = [...step.was, ...fresh];
  const made = (one: Edit) =>
    next.now.findLast((other) => isAlike(one, other)) ?? step.now.findLast((other) => isAlike(one, other)) ?? one;
  return { was, now: was.map(made), begun: step.begun, last: next.last };
}

/**
 * The edits that take a step back. What somebody changed since then stays: of a table only the rows of the step are put back,
 * and a figure only while it is as the step left it.
 */
export function takenBack(job: Job, { was, now }: UndoStep): readonly Edit[] {
  return was.flatMap((before, index): readonly Edit[] => {
    const made = now[index];
    const here = valueIn(job, before);
    if (!made || isSame(here, before.to)) return [];
    if (before.slot !== 'tables' || made.slot !== 'tables') return isSame(here, made.to) ? [before] : [];
    const to = mergeTable(before.key, job.tables[before.key], made.to, before.to);
    return isSame(here, to) ? [] : [{ ...before, to }];
  });
}

/** What stood in a field before it was changed last, when that was something else than what stands there now. */
export function wasIn(job: Job, steps: readonly UndoStep[], key: QuantityKey): Entered | null {
  const last = steps.findLast(({ was }) => was.some((one) => one.slot === 'entered' && one.key === key));
  const edit = last?.was.find((one) => one.slot === 'entered' && one.key === key);
  const entry = edit?.slot === 'entered' ? edit.to : undefined;
  const here = job.entered[key];
  const isOther = entry?.text !== here?.text || entry?.unit !== here?.unit;
  return entry && entry.text.trim() !== '' && isOther ? entry : null;
}

/** The steps that kept values are; what is none is left out. */
export function readSteps(values: readonly unknown[]): readonly UndoStep[] {
  return values.flatMap((value): UndoStep[] => {
    if (typeof value !== 'object' || value === null) return [];
    const { was, now, begun, last } = value as Readonly<Record<string, unknown>>;
    if (typeof begun !== 'number' || typeof last !== 'number') return [];
    const [before, after] = [readEdits(was), readEdits(now)];
    const fits = before.length > 0 && before.every((one, index) => after[index] && isAlike(one, after[index]));
    return fits && before.length === after.length ? [{ was: before, now: after, begun, last }] : [];
  });
}

const valueIn = (job: Job, { slot, key }: Edit): unknown => (job[slot] as Readonly<Record<string, unknown>>)[key];
const isAlike = (one: Edit, other: Edit) => one.slot === other.slot && one.key === other.key;
const isSame = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);
