/**
 * A hundred thousand altered links: each is a job or a reason. What takes off the compression here is Node's own, which is quicker
 * than the platform's stream; that one is held to the same in `linkText.test.ts`.
 */
import { inflateRawSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { assess } from '../../src/calc/index.ts';
import { demoJob } from '../../src/job/demo.ts';
import { emptyJob } from '../../src/job/edit.ts';
import { decodeJob, encodeJob, linkLimits, type ReadLink } from '../../src/job/linkText.ts';
import { sheetCode } from '../../src/job/lock.ts';
import { readJob } from '../../src/job/schema.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { Job } from '../../src/job/types.ts';

const inflate = (packed: Uint8Array) => inflateRawSync(packed, { maxOutputLength: linkLimits.inflated });
const reasons = new Set(['notAJob', 'newer', 'broken', 'tooLong']);

/** Numbers from 0 to 1 without a pattern, the same each time (a linear congruence of 32 bits). */
let state = 20_250_701;
const random = () => {
  state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
  return state / 2 ** 32;
};
const upTo = (count: number) => Math.floor(random() * count);
const oneOf = <One>(list: ArrayLike<One>) => list[upTo(list.length)] as One;

/** Few figures, so that most of what is altered is more than a text. */
const small: Job = {
  ...emptyJob('small'),
  entered: {
    'entering.dryBulb': { text: '75.0', unit: 'degF', origin: 'typed', at: '2026-08-12T14:31:00' },
    outdoorDryBulb: { text: '91', unit: 'degF', origin: 'typed', limit: '2', shape: 'normal' },
  },
  chosen: { filter: 'clean' },
  tables: { 'entering.readings': { columns: [{ key: 'dryBulb', unit: 'degF' }], rows: [['75'], ['74.8']] } },
  notes: { system: 'attic' },
};

/** Looks whether what came out is sound; every so often whether a job can be worked with. */
const counts: Record<string, number> = {};
let jobs = 0;
function check(found: ReadLink): void {
  const kind = found.ok ? 'job' : found.reason;
  counts[kind] = (counts[kind] ?? 0) + 1;
  if (!found.ok) {
    if (!reasons.has(found.reason)) throw new Error(`no reason: ${String(found.reason)}`);
    return;
  }
  const { job } = found;
  if (
    [job, job.entered, job.chosen, job.tables, job.notes].some((one) => Object.getPrototypeOf(one) !== Object.prototype)
  )
    throw new Error('another prototype');
  if (jobs++ % 400 !== 0) return;
  expect(readJob(JSON.parse(JSON.stringify(job)))).toEqual({ ok: true, job });
  expect(sheetCode(job)).toMatch(/^[A-Z\d]{6}$/);
  expect(Object.keys(assess(toTest(job).test))).toContain('verdict');
}

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.~%<>"\u{1f525}';

function altered(text: string): string {
  let now = text;
  for (let changes = 1 + upTo(3); changes > 0; changes--) {
    const at = upTo(now.length);
    const put = Array.from({ length: upTo(4) }, () => oneOf(letters)).join('');
    now = now.slice(0, at) + put + now.slice(at + upTo(5));
  }
  return random() < 0.1 ? now.slice(0, upTo(now.length)) : now;
}

const nasty = [
  ...[
    'null',
    'true',
    '[]',
    '{}',
    '0',
    '-0',
    '1e999',
    '-1e308',
    '9007199254740993',
    '""',
    '"<script>alert(1)</script>"',
  ],
  ...[
    '"\\u0000"',
    '"\u{1f525}\u{1f1e9}\u{1f1ea}7\ufe0f\u20e3"',
    '"7\u0665"',
    '"__proto__"',
    '"constructor"',
    '"1e9999"',
  ],
  ...[
    '{"__proto__":{"isAdmin":true}}',
    '{"constructor":{"prototype":{}}}',
    '{"text":{"text":"75"}}',
    '{"length":4294967296}',
  ],
  `"${'9'.repeat(300)}"`,
  '['.repeat(400) + ']'.repeat(400),
  `${'{"a":'.repeat(400)}1${'}'.repeat(400)}`,
];
const names = ['__proto__', 'constructor', 'prototype', 'toString', 'entered', 'version', 'id', 'rows', 'at', ''];

/** A value, a name or a stretch of the record is put in the place of another. */
function respelt(json: string, values: readonly RegExpMatchArray[], keys: readonly RegExpMatchArray[]): string {
  const kind = random();
  const match = oneOf(kind < 0.5 ? values : keys);
  const put = kind < 0.5 ? oneOf(nasty) : kind < 0.8 ? `"${oneOf(names)}":` : match[0] + oneOf(nasty);
  const at = match.index ?? 0;
  return json.slice(0, at) + put + json.slice(at + match[0].length);
}

test('each of 100 000 altered links is a job or a reason, and nothing else', { timeout: 180_000 }, async () => {
  // Where an error came from is of no interest here, and takes most of the time.
  Error.stackTraceLimit = 0;
  const links = [await encodeJob(small, true), await encodeJob(demoJob, true)] as const;
  for (let run = 0; run < 50_000; run++) check(await decodeJob(altered(links[run % 25 === 0 ? 1 : 0]), inflate));
  const json = JSON.stringify(small);
  const keys = [...json.matchAll(/"[^"]*":/g)];
  const values = [...json.matchAll(/(?<=[:,[])("[^"]*"(?!:)|\d+)/g)];
  // The compression is left out where what is inside is altered.
  const inside = (text: string) => decodeJob('1.AAAA', () => new TextEncoder().encode(text));
  expect(await inside(json)).toEqual({ ok: true, job: small });
  for (let run = 0; run < 50_000; run++) check(await inside(respelt(json, values, keys)));
  const said = Object.entries(counts).map(([kind, count]) => `${kind} ${count}`);
  console.log(`  ${said.join(', ')}`);
  expect(Object.values(counts).reduce((sum, count) => sum + count, 0)).toBe(100_000);
  // Both sides of the gate are tried.
  expect(counts['job']).toBeGreaterThan(5000);
  expect(counts['broken']).toBeGreaterThan(20_000);
  expect(({} as Record<string, unknown>)['isAdmin']).toBeUndefined();
});
