/** Steps back: what each took the place of, and what somebody did since. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, emptyJob, typed } from '../../src/job/edit.ts';
import { addState, setState } from '../../src/job/stateEdits.ts';
import { namedStates } from '../../src/job/states.ts';
import type { Edit, Job, QuantityKey } from '../../src/job/types.ts';
import { joined, readSteps, stepOf, takenBack, type UndoStep, wasIn } from '../../src/job/undoSteps.ts';

const typing = (job: Job, key: QuantityKey, text: string) => typed(job, key, text, 'degF', '2026-08-12T14:31:00Z');
const step = (job: Job, ...edits: readonly Edit[]) => stepOf(job, edits, 7) as UndoStep;
const back = (job: Job, one: UndoStep) => applyEdits(job, takenBack(job, one));

describe('a step taken back', () => {
  test('gives a field its text and time of before, also where there was none', () => {
    const start = emptyJob('a');
    const edit = typing(start, 'entering.dryBulb', '75');
    expect(back(applyEdits(start, [edit]), step(start, edit))).toEqual(start);
    const other = typing(demoJob, 'entering.dryBulb', '80');
    expect(back(applyEdits(demoJob, [other]), step(demoJob, other))).toEqual(demoJob);
  });

  test('leaves a figure that somebody changed since, and says that there is nothing to do', () => {
    const first = typing(demoJob, 'entering.dryBulb', '80');
    const after = applyEdits(demoJob, [first]);
    const since = applyEdits(after, [typing(after, 'entering.dryBulb', '81')]);
    expect(takenBack(since, step(demoJob, first))).toEqual([]);
    expect(takenBack(demoJob, step(demoJob, first))).toEqual([]);
  });

  test('puts back the rows of a table that it changed, and leaves those that another page changed since', () => {
    const empty = emptyJob('a');
    const one = applyEdits(empty, addState(empty, 'ip', { name: 'Roof', dryBulb: '95' }));
    const start = applyEdits(one, addState(one, 'ip', { name: 'Room' }));
    const edits = setState(start, 'a', { dryBulb: '96' }, 'ip');
    const after = applyEdits(start, edits);
    const since = applyEdits(after, setState(after, 'b', { name: 'Hall' }, 'ip'));
    expect(namedStates(back(since, step(start, ...edits))).map(({ name, dryBulb }) => [name, dryBulb.text])).toEqual([
      ['Roof', '95'],
      ['Hall', ''],
    ]);
  });

  test('all steps one after another lead back to where they began, whatever they were', () => {
    const acts = fc.record({
      key: fc.constantFrom<QuantityKey>('entering.dryBulb', 'leaving.dryBulb', 'outdoorDryBulb'),
      text: fc.string({ maxLength: 6 }),
      joins: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(acts, { maxLength: 12 }), (all) => {
        let job: Job = demoJob;
        let steps: readonly UndoStep[] = [];
        for (const { key, text, joins } of all) {
          const made = step(job, typing(job, key, text));
          const last = joins ? steps.at(-1) : undefined;
          steps = last ? [...steps.slice(0, -1), joined(last, made)] : [...steps, made];
          job = applyEdits(job, [typing(job, key, text)]);
        }
        for (const one of [...steps].reverse()) job = back(job, one);
        expect(job).toEqual(demoJob);
      }),
    );
  });
});

test('several keys of one go are one step back, to what stood there before the first', () => {
  const first = step(demoJob, typing(demoJob, 'entering.dryBulb', '8'));
  const middle = applyEdits(demoJob, [typing(demoJob, 'entering.dryBulb', '8')]);
  const both = joined(first, step(middle, typing(middle, 'entering.dryBulb', '80')));
  expect(both.was).toHaveLength(1);
  const after = applyEdits(middle, [typing(middle, 'entering.dryBulb', '80')]);
  expect(back(after, both)).toEqual(demoJob);
  expect(wasIn(after, [both], 'entering.dryBulb')?.text).toBe('75.0');
});

test('a field says what it was only where that was something else', () => {
  const edit = typing(demoJob, 'entering.dryBulb', '80');
  const after = applyEdits(demoJob, [edit]);
  const steps = [step(demoJob, edit)];
  expect(wasIn(after, steps, 'leaving.dryBulb')).toBeNull();
  expect(wasIn(demoJob, steps, 'entering.dryBulb')).toBeNull();
  const start = emptyJob('a');
  const first = typing(start, 'entering.dryBulb', '75');
  expect(wasIn(applyEdits(start, [first]), [step(start, first)], 'entering.dryBulb')).toBeNull();
});

test('the stamp of a lock and its list are no step', () => {
  expect(stepOf(demoJob, [{ slot: 'notes', key: 'locked.at', to: '2026' }], 7)).toBeNull();
  const both = step(
    demoJob,
    { slot: 'notes', key: 'locked.at', to: '2026' },
    { slot: 'notes', key: 'system', to: 'a' },
  );
  expect(both.now.map(({ key }) => key)).toEqual(['system']);
});

test('steps that were kept are read back, and what is none is left out', () => {
  const one = step(demoJob, typing(demoJob, 'entering.dryBulb', '80'), {
    slot: 'tables',
    key: 'rating',
    to: undefined,
  });
  expect(readSteps([structuredClone(one)])).toEqual([one]);
  const spoilt = [
    null,
    7,
    {},
    { ...one, begun: 'then' },
    { ...one, was: [] },
    { ...one, now: one.now.slice(1) },
    { ...one, now: [...one.now].reverse() },
    { ...one, was: [{ slot: 'entered', key: 'entering.dryBulb', to: { text: 75 } }, one.was[1]] },
    { ...one, was: [{ slot: 'notes', key: '__proto__', to: 'a' }, one.was[1]] },
  ];
  expect(readSteps(spoilt)).toEqual([]);
});
