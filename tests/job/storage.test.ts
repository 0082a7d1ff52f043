import { expect, test } from 'vitest';
import { otherVersion, troubleOf } from '../../src/job/database.ts';
import { emptyJob } from '../../src/job/edit.ts';
import { newId } from '../../src/job/newId.ts';
import { readJob } from '../../src/job/schema.ts';
import { keepJob, openJob, readTold, saveEdits } from '../../src/job/storage.ts';

test.each([
  [new DOMException('no room', 'QuotaExceededError'), 'full'],
  [new DOMException('held', 'VersionError'), 'otherVersion'],
  [otherVersion(), 'otherVersion'],
  [new DOMException('private window', 'InvalidStateError'), 'refused'],
  [new DOMException('switched off', 'SecurityError'), 'refused'],
  [new ReferenceError('indexedDB is not defined'), 'refused'],
  [undefined, 'refused'],
  ['text', 'refused'],
] as const)('%s means: %s', (error, expected) => {
  expect(troubleOf(error)).toBe(expected);
});

test('where there is no storage a new job opens, and saving says that it did not', async () => {
  expect(typeof indexedDB).toBe('undefined');
  const opened = await openJob();
  expect(opened).toEqual({ job: emptyJob(opened.job.id), trouble: 'refused', unread: null });
  const edits = [{ slot: 'notes', key: 'address', to: 'Sample Lane' }] as const;
  expect(await saveEdits(opened.job.id, edits)).toEqual({ saved: false, trouble: 'refused' });
  expect(await keepJob(opened.job)).toEqual({ saved: false, trouble: 'refused' });
});

test('every new job has a name of its own that a record may have', () => {
  const names = Array.from({ length: 50 }, newId);
  expect(new Set(names).size).toBe(50);
  for (const name of names) expect(readJob(emptyJob(name)).ok).toBe(true);
});

test('what another tab tells is heard when it is understood', () => {
  const edits = [{ slot: 'chosen', key: 'filter', to: 'clean' }];
  expect(readTold({ id: 'a', edits })).toEqual({ id: 'a', edits });
  for (const other of [null, 7, {}, { id: 'a' }, { id: 7, edits }, { id: 'a', edits: [] }, { id: 'a', edits: 'all' }]) {
    expect(readTold(other)).toBeNull();
  }
});
