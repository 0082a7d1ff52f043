/** A file of jobs from anybody: it is read whole or refused, and what it says stays text. */
import { expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { fileKind, longestFile, readJobFile, writeJobFile } from '../../src/job/jobFile.ts';

const fileOf = (jobs: string) => `{"kind":"${fileKind}","version":1,"jobs":${jobs}}`;
const record = JSON.stringify(demoJob);
/** The demo with something put before what it holds, as text: a parser would tidy some of it away. */
const withMore = (slot: string, more: string) => fileOf(`[${record.replace(`"${slot}":{`, `"${slot}":{${more},`)}]`);
const nested = (levels: number) => `${'['.repeat(levels)}${']'.repeat(levels)}`;
const figure = '{"text":"1","unit":"degF","origin":"typed"}';

test.each([
  ['a name that reaches for the prototype of a map', withMore('entered', `"__proto__":${figure}`), 'broken'],
  ['a name that reaches for a constructor', withMore('notes', '"constructor":"x"'), 'broken'],
  ['a prototype for the whole job', fileOf(`[{"__proto__":{"version":1},${record.slice(1)}]`), 'broken'],
  ['lists a million deep in place of the jobs', fileOf(nested(1_000_000)), /broken|notAFile/],
  ['lists a thousand deep in place of a figure', withMore('entered', `"entering.wetBulb":${nested(1000)}`), 'broken'],
  ['more jobs than anybody keeps', fileOf(`[${Array(5001).fill('{}').join(',')}]`), 'tooLong'],
  ['more letters than anybody has', `${fileOf('[]')}${' '.repeat(longestFile)}`, 'tooLong'],
  ['a number too large to be one', withMore('entered', '"entering.wetBulb":{"text":1e999,"unit":"degF"}'), 'broken'],
  ['a version that is no number', fileOf('[]').replace(':1,', ':"1",'), 'notAFile'],
])('%s is refused', (_, text, reason) => {
  const found = readJobFile(text);
  expect(found.ok ? 'read' : found.reason).toMatch(reason);
  expect(({} as Record<string, unknown>)['version']).toBeUndefined();
});

test('markup, formulas and marks that turn text around come in as the text that they are', () => {
  const system = '<img src=x onerror=alert(1)> =cmd()|A1 \u202e\u0000 </script><script>';
  const found = readJobFile(writeJobFile([{ ...demoJob, notes: { system } }]));
  expect(found.ok && found.jobs[0]?.notes.system).toBe(system);
});

test('keys that this version does not know are left out, and the rest of the job is read', () => {
  const found = readJobFile(withMore('entered', `"somebody.elses":${figure}`));
  expect(found.ok && found.jobs[0]).toEqual(demoJob);
});
