import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdits, emptyJob, typed, withOwnUnit } from '../../src/job/edit.ts';
import type { Edit, Entered } from '../../src/job/types.ts';

const warm: Entered = { text: '75', unit: 'degF', origin: 'typed' };
const warmer: Entered = { text: '76', unit: 'degF', origin: 'typed' };
const set = (to: Entered | undefined): Edit => ({ slot: 'entered', key: 'entering.dryBulb', to });

test('an edit changes one key of a new job and leaves the old job as it was', () => {
  const before = Object.freeze(emptyJob('a'));
  Object.freeze(before.entered);
  const after = applyEdits(before, [set(warm), { slot: 'notes', key: 'address', to: 'Sample Lane' }]);
  expect(before).toEqual({ version: 1, id: 'a', entered: {}, chosen: {}, tables: {}, notes: {} });
  expect(after).toEqual({
    version: 1,
    id: 'a',
    entered: { 'entering.dryBulb': warm },
    chosen: {},
    tables: {},
    notes: { address: 'Sample Lane' },
  });
  expect(after.chosen).toBe(before.chosen);
});

test('the last edit of a key wins, and undefined clears it', () => {
  const job = emptyJob('a');
  expect(applyEdits(job, [set(warm), set(warmer)]).entered['entering.dryBulb']).toEqual(warmer);
  expect(applyEdits(job, [set(warm), set(undefined)])).toEqual(job);
  expect(applyEdits(job, [])).toBe(job);
});

test('edits of different keys give the same job in any order, so that two tabs merge', () => {
  const edits: readonly Edit[] = [
    set(warm),
    { slot: 'entered', key: 'leaving.dryBulb', to: warmer },
    { slot: 'chosen', key: 'filter', to: 'clean' },
    { slot: 'notes', key: 'tester', to: 'A' },
    { slot: 'tables', key: 'rating', to: { columns: [], rows: [] } },
  ];
  const expected = applyEdits(emptyJob('a'), edits);
  fc.assert(
    fc.property(fc.shuffledSubarray([...edits], { minLength: edits.length }), (shuffled) => {
      expect(applyEdits(emptyJob('a'), shuffled)).toEqual(expected);
    }),
  );
});

test('a typed value is kept as typed, nonsense too, and keeps the ± of its probe', () => {
  const job = applyEdits(emptyJob('a'), [set({ ...warm, limit: '0.9' })]);
  expect(typed(job, 'entering.dryBulb', '7🥵', 'degF', '2025-07-15T14:31:00Z').to).toEqual({
    text: '7🥵',
    unit: 'degF',
    origin: 'typed',
    at: '2025-07-15T14:31:00Z',
    limit: '0.9',
  });
  expect(typed(job, 'entering.dryBulb', '', 'degF').to).toEqual({
    text: '',
    unit: 'degF',
    origin: 'typed',
    limit: '0.9',
  });
  expect(typed(emptyJob('a'), 'entering.dryBulb', '', 'degF').to).toBeUndefined();
});

test('a ± means the same after its field has changed to another unit', () => {
  const job = applyEdits(emptyJob('a'), [set({ ...warm, limit: '0.9' })]);
  expect(typed(job, 'entering.dryBulb', '24', 'degC').to).toMatchObject({ unit: 'degC', limit: '0.9 °F' });
});

test.each([
  ['75', 'degF', '75 °F'],
  [' 75 ', 'degF', '75 °F'],
  ['75 °F', 'degC', '75 °F'],
  ['75F', 'degC', '75F'],
  ['50%', 'percent', '50%'],
  ['--', 'degF', '--'],
  ['', 'degF', ''],
  ['warm', 'degF', 'warm'],
] as const)('%j in %s with its own unit is %j', (text, unit, expected) => {
  expect(withOwnUnit(text, unit)).toBe(expected);
});
