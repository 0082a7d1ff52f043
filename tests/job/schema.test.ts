import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { allChoices as choices, allQuantities as quantities, allTables as tables } from '../../src/job/allKeys.ts';
import { demoJob } from '../../src/job/demo.ts';
import { emptyJob } from '../../src/job/edit.ts';
import { notes } from '../../src/job/notes.ts';
import { readEdits, readJob } from '../../src/job/schema.ts';
import { units } from '../../src/job/units.ts';

const empty = emptyJob('a');
const reading = { text: '75', unit: 'degF', origin: 'typed' };
const withReading = (changed: object) => ({ ...empty, entered: { 'entering.dryBulb': { ...reading, ...changed } } });
const withTable = (table: object) => ({ ...empty, tables: { rating: { columns: [], rows: [], ...table } } });
const parsed = (text: string): unknown => JSON.parse(text);

test('a job is read back as it was, the demo too', () => {
  expect(readJob(empty)).toEqual({ ok: true, job: empty });
  expect(readJob(parsed(JSON.stringify(demoJob)))).toEqual({ ok: true, job: demoJob });
  expect(readJob(structuredClone(demoJob))).toEqual({ ok: true, job: demoJob });
});

const circular: object = { ...empty };
Object.assign(circular, { entered: { 'entering.dryBulb': circular } });
const trap = new Proxy(
  {},
  {
    get() {
      throw new Error('trap');
    },
    has() {
      throw new Error('trap');
    },
  },
);

const refused: readonly (readonly [string, unknown, string])[] = [
  ['nothing', undefined, 'notAJob'],
  ['null', null, 'notAJob'],
  ['a text', '{}', 'notAJob'],
  ['a number', 1, 'notAJob'],
  ['a list', [empty], 'notAJob'],
  ['a function', () => empty, 'notAJob'],
  ['an empty record', {}, 'notAJob'],
  ['a version in words', { ...empty, version: '1' }, 'notAJob'],
  ['the next version', { ...empty, version: 2 }, 'newer'],
  ['an endless version', { ...empty, version: Infinity }, 'newer'],
  ['version 0', { ...empty, version: 0 }, 'broken'],
  ['half a version', { ...empty, version: 0.5 }, 'broken'],
  ['a version that is no number', { ...empty, version: NaN }, 'broken'],
  ['no name', { ...empty, id: '' }, 'broken'],
  ['a name with a path', { ...empty, id: '../a' }, 'broken'],
  ['a long name', { ...empty, id: 'a'.repeat(65) }, 'broken'],
  ['a missing map', { version: 1, id: 'a', entered: {}, chosen: {}, tables: {} }, 'broken'],
  ['a list for a map', { ...empty, entered: [] }, 'broken'],
  ['null for a map', { ...empty, notes: null }, 'broken'],
  ['invented: false', { ...empty, invented: false }, 'broken'],
  ['a number for an entry', { ...empty, entered: { 'entering.dryBulb': 75 } }, 'broken'],
  ['null for an entry', { ...empty, entered: { 'entering.dryBulb': null } }, 'broken'],
  ['a number for a text', withReading({ text: 75 }), 'broken'],
  ['a unit that is none', withReading({ unit: 'furlong' }), 'broken'],
  ['a unit from the prototype', withReading({ unit: 'toString' }), 'broken'],
  ['an origin that is none', withReading({ origin: 'guessed' }), 'broken'],
  ['a shape that is none', withReading({ shape: 'round' }), 'broken'],
  ['undefined for a ±', withReading({ limit: undefined }), 'broken'],
  ['a long text', withReading({ text: '7'.repeat(201) }), 'broken'],
  ['a long note', { ...empty, notes: { address: 'a'.repeat(2001) } }, 'broken'],
  ['a choice that is no text', { ...empty, chosen: { filter: true } }, 'broken'],
  ['too many columns', withTable({ columns: Array(61).fill({ key: 'a', unit: 'one' }) }), 'broken'],
  ['too many rows', withTable({ rows: Array(601).fill([]) }), 'broken'],
  ['a row too wide', withTable({ rows: [Array(61).fill('')] }), 'broken'],
  ['a number in a row', withTable({ rows: [[1]] }), 'broken'],
  ['a long cell', withTable({ rows: [['1'.repeat(201)]] }), 'broken'],
  ['a column without a unit', withTable({ columns: [{ key: 'total' }] }), 'broken'],
  [
    'a prototype',
    parsed('{"version":1,"id":"a","__proto__":{},"entered":{},"chosen":{},"tables":{},"notes":{}}'),
    'broken',
  ],
  [
    'a prototype in a map',
    parsed('{"version":1,"id":"a","entered":{"__proto__":{}},"chosen":{},"tables":{},"notes":{}}'),
    'broken',
  ],
  ['a constructor in a map', { ...empty, chosen: { constructor: 'a' } }, 'broken'],
  ['itself', circular, 'broken'],
  [
    'a trap',
    new Proxy(
      { ...empty },
      {
        get() {
          throw new Error('trap');
        },
      },
    ),
    'broken',
  ],
  ['a trap inside', { ...empty, entered: trap }, 'broken'],
];

test.each(refused)('%s is refused', (_, value, reason) => {
  expect(readJob(value)).toEqual({ ok: false, reason });
});

test('texts, notes and tables of the largest size are read', () => {
  const job = {
    ...withReading({ text: '7'.repeat(200), limit: '0.9', shape: 'normal', at: '2025-07-15T14:31:00Z' }),
    notes: { address: 'a'.repeat(2000) },
    tables: {
      rating: { columns: Array(60).fill({ key: 'a', unit: 'one' }), rows: Array(600).fill(Array(60).fill('1')) },
    },
  };
  expect(readJob(job)).toEqual({ ok: true, job });
});

test('keys and choices of no meaning here are dropped, and the rest is kept', () => {
  const job = {
    ...withReading({ color: 'red' }),
    chosen: { filter: 'clean', coil: 'purple', weather: 'fine' },
    notes: { address: 'Sample Lane', toString: 'a', hobby: 'b' },
    theme: 'dark',
  };
  expect(readJob(job)).toEqual({
    ok: true,
    job: {
      ...empty,
      entered: { 'entering.dryBulb': reading },
      chosen: { filter: 'clean' },
      notes: { address: 'Sample Lane' },
    },
  });
});

describe('readJob', () => {
  const text = fc.string({ maxLength: 200 });
  const unit = fc.constantFrom(...Object.keys(units));
  const some = <Value>(keys: readonly string[], value: fc.Arbitrary<Value>) =>
    fc.dictionary(fc.constantFrom(...keys), value, { noNullPrototype: true });
  const entry = fc.record(
    { text, unit, origin: fc.constantFrom('typed', 'from sheet', 'assumed'), at: text, limit: text },
    { requiredKeys: ['text', 'unit', 'origin'], noNullPrototype: true },
  );
  const table = fc.record(
    {
      columns: fc.array(fc.record({ key: text, unit }, { noNullPrototype: true }), { maxLength: 6 }),
      rows: fc.array(fc.array(text, { maxLength: 6 }), { maxLength: 6 }),
    },
    { noNullPrototype: true },
  );
  const choice = fc
    .constantFrom(...Object.entries(choices))
    .chain(([key, { values }]) => fc.constantFrom(...values).map((value) => ({ [key]: value })));
  const job = fc.record(
    {
      version: fc.constant(1),
      id: fc.uuid(),
      entered: some(Object.keys(quantities), entry),
      chosen: fc.array(choice, { maxLength: 5 }).map((chosen) => Object.assign({}, ...chosen)),
      tables: some(Object.keys(tables), table),
      notes: some(notes, text),
    },
    { noNullPrototype: true },
  );

  it('reads back every job that was written as JSON', () => {
    fc.assert(
      fc.property(job, (written) => {
        expect(readJob(parsed(JSON.stringify(written)))).toEqual({ ok: true, job: written });
      }),
    );
  });

  it('never throws, whatever it is given', () => {
    const wild = fc.anything({ withNullPrototype: true, withBigInt: true, withDate: true, withMap: true });
    fc.assert(
      fc.property(wild, fc.constantFrom('entered', 'chosen', 'tables', 'notes', 'id', 'version'), (value, key) => {
        expect(readJob(value).ok).toBe(false);
        const { ok } = readJob({ ...empty, [key]: value });
        expect(typeof ok).toBe('boolean');
      }),
      { numRuns: 500 },
    );
  });
});

test('edits from another tab are taken when all of them are sound', () => {
  const sound = [
    { slot: 'entered', key: 'entering.dryBulb', to: reading },
    { slot: 'notes', key: 'address', to: undefined },
  ];
  expect(readEdits(sound)).toEqual(sound);
  expect(readEdits([...sound, { slot: 'notes', key: 'hobby', to: 'a' }])).toEqual(sound);
  expect(readEdits([...sound, { slot: 'notes', key: 'tester', to: 7 }])).toEqual([]);
  expect(readEdits([...sound, { slot: 'elsewhere', key: 'a', to: 'b' }])).toEqual([]);
  expect(readEdits([{ slot: 'notes', key: '__proto__', to: 'a' }])).toEqual([]);
  for (const other of [undefined, null, 7, 'edits', {}, [null], [7], [[]]]) expect(readEdits(other)).toEqual([]);
});
