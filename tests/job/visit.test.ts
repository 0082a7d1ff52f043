/** The list of a visit. */
import { expect, test } from 'vitest';
import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import { sheetCode } from '../../src/job/lock.ts';
import { readJob } from '../../src/job/schema.ts';
import { notSteadyBefore, tick, tickedAt, visitItems } from '../../src/job/visit.ts';

const at = '2026-08-12T14:05:00.000Z';
const empty = emptyJob('a');

test('every item notes its time and gives it up again', () => {
  for (const item of visitItems) {
    expect(tickedAt(empty, item)).toBeNull();
    const ticked = applyEdits(empty, tick(empty, item, at));
    expect(tickedAt(ticked, item)).toBe(at);
    expect(readJob(ticked)).toEqual({ ok: true, job: ticked });
    expect(applyEdits(ticked, tick(ticked, item, at))).toEqual(empty);
  }
});

test('it is not steady before fifteen minutes after the start, or after the last change', () => {
  expect(notSteadyBefore(empty)).toBeNull();
  const running = applyEdits(empty, tick(empty, 'running', at));
  expect(notSteadyBefore(running)).toBe('2026-08-12T14:20:00.000Z');
  const changed = applyEdits(running, [{ slot: 'notes', key: 'steady.changedAt', to: '2026-08-12T14:10:00.000Z' }]);
  expect(notSteadyBefore(changed)).toBe('2026-08-12T14:25:00.000Z');
  expect(notSteadyBefore({ ...running, notes: { 'steady.startedAt': 'nonsense' } })).toBeNull();
});

test('a tick changes no code: the list stands around the figures', () => {
  expect(sheetCode(applyEdits(empty, tick(empty, 'read', at)))).toBe(sheetCode(empty));
});
