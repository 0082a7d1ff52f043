import { expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import {
  hasTable,
  isForModels,
  keepTable,
  keptTables,
  removeTable,
  tableEdits,
  tableOf,
} from '../../src/job/keptTables.ts';
import { readJob } from '../../src/job/schema.ts';
import type { Job } from '../../src/job/types.ts';

const models = (outdoor: string, indoor: string): Job => ({
  ...emptyJob('other'),
  notes: { 'outdoor.model': outdoor, 'indoor.model': indoor },
});

test('the table of a job is the part that says what its table is, and a job of its own', () => {
  const table = tableOf({ ...demoJob, notes: { ...demoJob.notes, 'rating.page': 'page 14' } });
  expect(Object.keys(table.tables)).toEqual(['rating']);
  expect(table.notes['rating.page']).toBe('page 14');
  expect([...Object.keys(table.entered), ...Object.keys(table.chosen)].every((key) => key.startsWith('rating.'))).toBe(
    true,
  );
  expect(table.notes.address).toBeUndefined();
  expect(readJob(table)).toEqual({ ok: true, job: table });
});

test('a table put into another job reads as in its own, and models typed there stay', () => {
  const table = tableOf({ ...demoJob, notes: { 'outdoor.model': 'SAMPLE-36', 'rating.page': 'page 14' } });
  const empty: Job = { ...emptyJob('b'), entered: { 'rating.airflow': { text: '900', unit: 'cfm', origin: 'typed' } } };
  const taken = applyEdits(empty, tableEdits(empty, table));
  expect({ ...tableOf(taken), id: table.id }).toEqual(table);
  const named = models('OTHER-36', '');
  expect(applyEdits(named, tableEdits(named, table)).notes['outdoor.model']).toBe('OTHER-36');
});

test('what was there before comes back by the same edits', () => {
  const before = tableOf(demoJob);
  const other = tableOf(models('A', 'B'));
  const swapped = applyEdits(demoJob, tableEdits(demoJob, other));
  expect(swapped.tables.rating).toBeUndefined();
  expect(tableOf(applyEdits(swapped, tableEdits(swapped, before)))).toEqual(before);
});

test.each([
  ['SAMPLE-36', 'COIL 1', 'sample 36', 'coil-1', true],
  ['SAMPLE-36', '', 'SAMPLE36', 'COIL-2', true],
  ['SAMPLE-36', 'COIL-1', 'SAMPLE-36', 'COIL-2', false],
  ['SAMPLE-36', '', '', 'COIL-1', false],
  ['', '', '', '', false],
] as const)('a table for %s with %s in a job of %s with %s', (outdoor, indoor, here, beside, matches) => {
  expect(isForModels(models(outdoor, indoor), models(here, beside))).toBe(matches);
});

test('an invented job and an empty one have no table to keep', () => {
  expect(hasTable(demoJob)).toBe(false);
  expect(hasTable(emptyJob('a'))).toBe(false);
  const { invented, ...own } = demoJob;
  expect(invented).toBe(true);
  expect(hasTable(own)).toBe(true);
});

test('where there is no storage every answer says so', async () => {
  for (const done of [await keptTables(), await keepTable(demoJob), await removeTable('a')]) {
    expect(done).toEqual({ ok: false, trouble: 'refused' });
  }
});
