/** A job in a link comes back as it went, and nothing else does. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assess } from '../../src/calc/index.ts';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, typed } from '../../src/job/edit.ts';
import { forLink } from '../../src/job/forLink.ts';
import { decodeJob, encodeJob, linkLimits } from '../../src/job/linkText.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { Job } from '../../src/job/types.ts';

const named: Job = {
  ...demoJob,
  notes: { ...demoJob.notes, address: '14 Sample Lane', tester: 'A. Tester', system: 'attic' },
};
const packed = async (text: string) => {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return Buffer.from(await new Response(stream).arrayBuffer()).toString('base64url');
};

describe('a job in a link', () => {
  test('comes back as what a link carries of it, and gives every figure again', async () => {
    const text = await encodeJob(named, true);
    const found = await decodeJob(text);
    expect(found).toEqual({ ok: true, job: forLink(named) });
    expect(found.ok && assess(toTest(found.job).test)).toEqual(assess(toTest(named).test));
    console.log(`  the demo in a link: ${text.length} characters`);
    expect(text.length).toBeLessThan(1500);
  });

  test('leaves out who and where, and keeps what else was noted, unless it is asked to', async () => {
    const found = await decodeJob(await encodeJob(named, false));
    expect(found.ok && found.job.notes).toEqual({
      ...demoJob.notes,
      system: 'attic',
      address: undefined,
      tester: undefined,
    });
    expect(found.ok && 'address' in found.job.notes).toBe(false);
  });

  test('keeps any text that a person may type', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 60 }), async (text) => {
        const job: Job = { ...demoJob, notes: { system: text } };
        expect(await decodeJob(await encodeJob(job, true))).toEqual({ ok: true, job: forLink(job) });
      }),
      { numRuns: 50 },
    );
  });
});

test('a link that was made when records travelled as JSON is still read', async () => {
  const old = `1.${await packed(JSON.stringify(forLink(named)))}`;
  expect(await decodeJob(old)).toEqual({ ok: true, job: forLink(named) });
  expect((await encodeJob(named, true)).length).toBeLessThan(0.85 * old.length);
});

test('lines, tabs and what is empty or absent come through a link as they are', async () => {
  const odd = ['', '\t', '\n', '\\', '\\-', '\\n', 'a\tb\nc\\d', '\r'];
  for (const text of odd) {
    const entered: Job['entered'] = {
      line: { text, unit: 'percent', origin: 'assumed', limit: text },
      outdoorDryBulb: { text, unit: 'degF', origin: 'from sheet', at: text },
    };
    const job: Job = {
      ...demoJob,
      entered,
      notes: { system: text },
      tables: { states: { columns: [], rows: [[text, '']] } },
    };
    expect(await decodeJob(await encodeJob(job, true))).toEqual({ ok: true, job: forLink(job) });
  }
});

test('of the maker’s cells a link carries those that are read and their neighbours, and every figure stays the same', () => {
  const of = (job: Job) => assess(toTest(job).test);
  fc.assert(
    fc.property(fc.integer({ min: 60, max: 120 }), fc.integer({ min: 20, max: 80 }), (outdoors, humidity) => {
      const job = applyEdits(demoJob, [
        typed(demoJob, 'outdoorDryBulb', String(outdoors), 'degF'),
        typed(demoJob, 'entering.relativeHumidity', String(humidity), 'percent'),
      ]);
      const carried = forLink(job);
      expect(of(carried)).toEqual(of(job));
      expect(carried.tables.rating!.rows.length).toBeLessThan(demoJob.tables.rating!.rows.length);
    }),
  );
});

describe('what is no job', () => {
  const reason = async (text: string) => {
    const found = await decodeJob(text);
    return found.ok ? 'a job' : found.reason;
  };

  test('is refused with its reason', async () => {
    expect(await reason('')).toBe('notAJob');
    expect(await reason('hello')).toBe('notAJob');
    expect(await reason('2.abc')).toBe('newer');
    expect(await reason('1.abc')).toBe('broken');
    expect(await reason(`1.${'a'.repeat(linkLimits.characters)}`)).toBe('tooLong');
    expect(await reason(`1.${await packed('[]')}`)).toBe('notAJob');
    expect(await reason(`1.${await packed('{"version":1}')}`)).toBe('broken');
    expect(
      await reason(
        `1.${await packed(`{"version":1,"id":"a","entered":{},"chosen":{},"tables":{},"notes":{},"__proto__":{}}`)}`,
      ),
    ).toBe('broken');
  });

  test('is given up while it inflates: a small link may stand for a very large text', async () => {
    const bomb = await packed(' '.repeat(20_000_000));
    const text = `1.${bomb.slice(0, linkLimits.characters - 2)}`;
    expect(text.length).toBeLessThanOrEqual(linkLimits.characters);
    expect(await reason(text)).toBe('tooLong');
  });

  test('is no job either when a link was altered: a job or a reason comes out of any string', async () => {
    const text = await encodeJob(demoJob, true);
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.~%<';
    const change = fc.record({
      at: fc.integer({ min: 0, max: text.length - 1 }),
      cut: fc.integer({ min: 0, max: 4 }),
      put: fc.string({ unit: fc.constantFrom(...letters), maxLength: 4 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 3 }), async (changes) => {
        const altered = changes.reduce((now, { at, cut, put }) => now.slice(0, at) + put + now.slice(at + cut), text);
        const found = await decodeJob(altered);
        expect(found.ok ? typeof found.job.id : found.reason).toMatch(/^(string|notAJob|newer|broken|tooLong)$/);
      }),
      { numRuns: 2000 },
    );
  });
});
