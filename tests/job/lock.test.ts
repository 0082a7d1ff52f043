/** A locked job: its stamp, its code, and the list of what was changed after. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, emptyJob, typed } from '../../src/job/edit.ts';
import { forLink } from '../../src/job/forLink.ts';
import { decodeJob, encodeJob } from '../../src/job/linkText.ts';
import { changesAfterLock, listChanges, lockEdits, lockedOf, sheetCode } from '../../src/job/lock.ts';
import { readJob } from '../../src/job/schema.ts';
import { hash64 } from '../../src/job/sheetCode.ts';
import type { Edit, Job, QuantityKey, UnitKey } from '../../src/job/types.ts';
import { stepOf, takenBack, type UndoStep } from '../../src/job/undoSteps.ts';

const noon = '2026-08-12T15:00:00.000Z';
const later = '2026-08-12T15:30:00.000Z';
const locked = applyEdits(demoJob, lockEdits(demoJob, noon));

/** An edit as a page makes it: what it changes in a locked job is listed. */
function edited(job: Job, ...edits: readonly Edit[]): Job {
  const after = applyEdits(job, edits);
  return applyEdits(after, listChanges(job, after, edits, later));
}
const typing = (job: Job, key: QuantityKey, text: string, unit: UnitKey) =>
  edited(job, typed(job, key, text, unit, later));

// Test vectors of draft-eastlake-fnv, appendix C, read second-hand in test suites of others.
test.each([
  ['', 0xcbf29ce484222325n],
  ['a', 0xaf63dc4c8601ec8cn],
  ['foobar', 0x85944171f73967e8n],
])('the hash of “%s” is the published one', (text, expected) => {
  expect(hash64(text)).toBe(expected);
});

describe('the code of a sheet', () => {
  test('is six letters and digits, none of which is taken for another', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const code = sheetCode(applyEdits(demoJob, [{ slot: 'notes', key: 'system', to: text }]));
        expect(code).toMatch(/^[A-Z\d]{6}$/);
        expect(code).not.toMatch(/[01258BGILOSUVZ6]/);
      }),
      { numRuns: 50 },
    );
  });

  test('is the same for the record, its link, its copy, and whoever writes the record in another order', async () => {
    const named: Job = { ...demoJob, notes: { ...demoJob.notes, address: '14 Sample Lane', tester: 'A. Tester' } };
    const code = sheetCode(named);
    const link = await decodeJob(await encodeJob(named, false));
    expect(link.ok && sheetCode(link.job)).toBe(code);
    expect(sheetCode(forLink(named))).toBe(code);
    expect(sheetCode({ ...named, id: 'copy' })).toBe(code);
    const turned = Object.fromEntries(Object.entries(named.entered).reverse());
    expect(sheetCode({ ...named, entered: turned })).toBe(code);
    expect(sheetCode(locked)).toBe(code);
  });

  test('changes with every figure, choice, table and time', () => {
    const { tables, entered } = demoJob;
    const others: readonly Job[] = [
      applyEdits(demoJob, [typed(demoJob, 'entering.dryBulb', '75.1', 'degF')]),
      { ...demoJob, entered: { ...entered, 'entering.dryBulb': { ...entered['entering.dryBulb']!, at: noon } } },
      { ...demoJob, chosen: { ...demoJob.chosen, filter: 'dirty' } },
      {
        ...demoJob,
        tables: {
          ...tables,
          rating: { ...tables.rating!, rows: tables.rating!.rows.map((row) => [...row].reverse()) },
        },
      },
      { ...demoJob, notes: { ...demoJob.notes, 'outdoor.serial': '7' } },
    ];
    const codes = [demoJob, ...others].map(sheetCode);
    expect(new Set(codes).size).toBe(codes.length);
  });

  test('of thousands of jobs hardly two are alike', () => {
    const codes = Array.from({ length: 3000 }, (_, index) =>
      sheetCode({ ...emptyJob('a'), notes: { system: String(index) } }),
    );
    // Of 21^6 codes, two of 3 000 are alike once in twenty such lists; more than two pairs would be no chance.
    expect(new Set(codes).size).toBeGreaterThanOrEqual(codes.length - 2);
  });
});

describe('a locked job', () => {
  test('says when it was locked, under the code that it had, and is locked once', () => {
    expect(lockedOf(demoJob)).toBeNull();
    expect(lockedOf(locked)).toEqual({ at: noon, code: sheetCode(demoJob) });
    expect(lockEdits(locked, later)).toEqual([]);
    expect(changesAfterLock(locked)).toEqual([]);
    expect(readJob(JSON.parse(JSON.stringify(locked)))).toEqual({ ok: true, job: locked });
  });

  test('lists what is typed after: what it was when locked, what it is now, however many keys it took', () => {
    const keys = ['7', '77', '77.', '77.5'].reduce(
      (job, text) => typing(job, 'entering.dryBulb', text, 'degF'),
      locked,
    );
    expect(changesAfterLock(keys)).toEqual([
      { slot: 'entered', key: 'entering.dryBulb', row: '', was: '75.0 °F', now: '77.5 °F', at: later },
    ]);
    expect(sheetCode(keys)).not.toBe(lockedOf(keys)?.code);
    expect(readJob(JSON.parse(JSON.stringify(keys)))).toEqual({ ok: true, job: keys });
  });

  test('lists choices, notes on the system and single cells, and nothing that stands around the figures', () => {
    const rating = demoJob.tables.rating!;
    const [first, ...others] = rating.rows;
    const changed = edited(
      locked,
      { slot: 'chosen', key: 'filter', to: 'dirty' },
      { slot: 'notes', key: 'address', to: 'Elsewhere' },
      { slot: 'notes', key: 'outdoor.serial', to: '7' },
      { slot: 'tables', key: 'rating', to: { ...rating, rows: [first!.with(3, '40'), ...others] } },
    );
    const list = changesAfterLock(changed);
    expect(list.map(({ slot, key }) => `${slot} ${key}`)).toEqual([
      'chosen filter',
      'notes outdoor.serial',
      'tables rating',
    ]);
    expect(list.at(-1)).toMatchObject({ row: first!.slice(0, 3).join('/'), now: expect.stringMatching(/^40/) });
  });

  test('a table that was brought in anew is one change, told by its rows', () => {
    const rows = Array.from({ length: 40 }, (_, index) => [String(70 + index), '67', '', '', '30']);
    const columns = demoJob.tables.rating!.columns.slice(0, 5);
    const changed = edited(locked, { slot: 'tables', key: 'ratingSheet', to: { columns, rows } });
    expect(changesAfterLock(changed)).toEqual([
      { slot: 'tables', key: 'ratingSheet', row: '', was: '0', now: '40', at: later },
    ]);
  });

  test('keeps its list in a link and in a file', async () => {
    const changed = typing(locked, 'entering.dryBulb', '77', 'degF');
    const link = await decodeJob(await encodeJob(changed, true));
    expect(link.ok && changesAfterLock(link.job)).toEqual(changesAfterLock(changed));
    expect(link.ok && lockedOf(link.job)).toEqual(lockedOf(changed));
  });

  test('a figure that is typed anew counts though it says the same: it was read later', () => {
    const again = typing(locked, 'entering.dryBulb', '75.0', 'degF');
    expect(changesAfterLock(again)).toHaveLength(1);
  });

  test('has nothing on its list once everything is taken back, and its code again, whatever was done', () => {
    const figures = fc.record({
      key: fc.constantFrom<QuantityKey>('entering.dryBulb', 'leaving.dryBulb', 'airflow.volumeFlow', 'altitude'),
      text: fc.string({ maxLength: 8 }),
    });
    const choice = fc.constantFrom<Edit>(
      { slot: 'chosen', key: 'filter', to: 'dirty' },
      { slot: 'chosen', key: 'coil', to: undefined },
      { slot: 'tables', key: 'rating', to: undefined },
      { slot: 'notes', key: 'system', to: 'attic' },
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(figures, choice), { minLength: 1, maxLength: 8 }), (acts) => {
        const steps: UndoStep[] = [];
        let job = locked;
        for (const act of acts) {
          const made = 'slot' in act ? act : typed(job, act.key, act.text, 'degF', later);
          const after = edited(job, made);
          steps.push(stepOf(job, [made], 0)!);
          job = after;
        }
        for (const step of steps.reverse()) job = edited(job, ...takenBack(job, step));
        expect(changesAfterLock(job)).toEqual([]);
        expect(sheetCode(job)).toBe(lockedOf(job)?.code);
      }),
    );
  });

  test('an open job lists nothing', () => {
    expect(listChanges(demoJob, locked, lockEdits(demoJob, noon), noon)).toEqual([]);
  });
});

test('what a link carries of a job is what a link of that carries again', () => {
  fc.assert(
    fc.property(fc.integer({ min: 60, max: 120 }), fc.integer({ min: 20, max: 80 }), (outdoors, humidity) => {
      const job = applyEdits(demoJob, [
        typed(demoJob, 'outdoorDryBulb', String(outdoors), 'degF'),
        typed(demoJob, 'entering.relativeHumidity', String(humidity), 'percent'),
      ]);
      expect(forLink(forLink(job))).toEqual(forLink(job));
      expect(sheetCode(forLink(job))).toBe(sheetCode(job));
    }),
  );
});
