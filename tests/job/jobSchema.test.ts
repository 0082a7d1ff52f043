/** The published JSON Schema, held by another validator to every job that this site writes. */
import { Ajv } from 'ajv';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allChoices, allQuantities, allTables } from '../../src/job/allKeys.ts';
import { demoJob } from '../../src/job/demo.ts';
import { airflowDemo } from '../../src/job/demoAirflow.ts';
import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import { readJobFile, writeJobFile } from '../../src/job/jobFile.ts';
import { lockEdits } from '../../src/job/lock.ts';
import { notes } from '../../src/job/notes.ts';
import { units } from '../../src/job/units.ts';
import { GET } from '../../src/pages/job.schema.json.ts';

const schema = await GET().json();
const validate = new Ajv({ allErrors: true }).compile(schema);
const problems = (file: unknown) => (validate(file) ? [] : (validate.errors ?? []));

test('the demo, its airflow and a locked job are what the schema says', () => {
  const locked = applyEdits(demoJob, lockEdits(demoJob, '2026-08-12T15:00:00Z'));
  const file = JSON.parse(writeJobFile([demoJob, airflowDemo, locked, emptyJob('a')]));
  expect(problems(file)).toEqual([]);
});

const text = fc.string({ maxLength: 200 });
const unit = fc.constantFrom(...Object.keys(units));
const some = <Value>(keys: readonly string[], one: fc.Arbitrary<Value>) =>
  fc.dictionary(fc.constantFrom(...keys), one, { maxKeys: 6, noNullPrototype: true });
const entry = fc.record(
  { text, unit, origin: fc.constantFrom('typed', 'from sheet', 'assumed'), at: text, limit: text },
  { requiredKeys: ['text', 'unit', 'origin'], noNullPrototype: true },
);
const table = fc.record({
  columns: fc.array(fc.record({ key: text, unit }), { maxLength: 6 }),
  rows: fc.array(fc.array(text, { maxLength: 6 }), { maxLength: 6 }),
});
const job = fc.record({
  version: fc.constant(1),
  id: fc.uuid(),
  entered: some(Object.keys(allQuantities), entry),
  chosen: some(Object.keys(allChoices), text),
  tables: some(Object.keys(allTables), table),
  notes: some(notes, text),
});

test('every job that is read from a file is what the schema says', () => {
  fc.assert(
    fc.property(fc.array(job, { maxLength: 3 }), (jobs) => {
      const file = { kind: schema.properties.kind.const, version: 1, jobs };
      expect(readJobFile(JSON.stringify(file)).ok).toBe(true);
      expect(problems(file)).toEqual([]);
    }),
  );
});

test('what the schema refuses in a job is refused where a file is read', () => {
  const spoilt = fc.record({
    at: fc.constantFrom('version', 'id', 'entered', 'chosen', 'tables', 'notes'),
    by: fc.oneof(fc.jsonValue(), some(['entering.dryBulb', 'rating', 'address', 'filter'], fc.jsonValue())),
  });
  let refused = 0;
  fc.assert(
    fc.property(job, spoilt, (sound, { at, by }) => {
      const file = { kind: schema.properties.kind.const, version: 1, jobs: [{ ...sound, [at]: by }] };
      if (validate(JSON.parse(JSON.stringify(file)))) return;
      refused += 1;
      expect(readJobFile(JSON.stringify(file)).ok).toBe(false);
    }),
    { numRuns: 500 },
  );
  expect(refused).toBeGreaterThan(100);
});
