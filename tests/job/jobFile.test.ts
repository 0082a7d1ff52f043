/** Jobs in a file: all of them come back, and nothing but jobs comes in. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { emptyJob } from '../../src/job/edit.ts';
import { compared, readJobFile, writeJobFile } from '../../src/job/jobFile.ts';
import { lastTyped } from '../../src/job/jobShelf.ts';
import type { Job } from '../../src/job/types.ts';

const jobs: readonly Job[] = [demoJob, { ...demoJob, id: 'second', notes: { system: 'attic' } }, emptyJob('third')];

describe('a file of jobs', () => {
  test('gives back every job that was written to it', () => {
    expect(readJobFile(writeJobFile(jobs))).toEqual({ ok: true, jobs });
    expect(readJobFile(writeJobFile([]))).toEqual({ ok: true, jobs: [] });
  });

  test.each([
    ['', 'notAFile'],
    ['{}', 'notAFile'],
    ['[]', 'notAFile'],
    ['null', 'notAFile'],
    ['{"kind":"ton-for-ton jobs"}', 'notAFile'],
    ['{"kind":"ton-for-ton jobs","version":1,"jobs":{}}', 'notAFile'],
    ['{"kind":"ton-for-ton jobs","version":2,"jobs":[]}', 'newer'],
    ['{"kind":"ton-for-ton jobs","version":1,"jobs":[{}]}', 'broken'],
    [writeJobFile(jobs).slice(0, 500), 'notAFile'],
  ])('%s is refused: %s', (text, reason) => {
    expect(readJobFile(text)).toMatchObject({ ok: false, reason });
  });

  test('with one job that breaks the rules is refused whole, and says which', () => {
    const text = writeJobFile(jobs).replace('"id": "second"', '"id": "<b>"');
    expect(readJobFile(text)).toEqual({ ok: false, reason: 'broken', at: 2 });
  });

  test('whatever text it is, jobs or a reason come out of it', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        const found = readJobFile(text);
        expect(found.ok ? 'jobs' : found.reason).toMatch(/^(notAFile|newer|broken)$/);
      }),
    );
  });

  test('tells what is new, what is the same and what differs, whatever the order in a record', () => {
    const turned = JSON.parse(JSON.stringify(demoJob, Object.keys(demoJob).reverse())) as Job;
    const same: Job = {
      ...turned,
      entered: demoJob.entered,
      chosen: demoJob.chosen,
      tables: demoJob.tables,
      notes: demoJob.notes,
    };
    const changed: Job = { ...jobs[1]!, notes: {} };
    const found = compared([same, changed, emptyJob('fourth')], jobs);
    expect(found.same.map(({ id }) => id)).toEqual(['demo']);
    expect(found.differing.map(({ id }) => id)).toEqual(['second']);
    expect(found.fresh.map(({ id }) => id)).toEqual(['fourth']);
  });

  test('a job was typed last when its latest figure was', () => {
    expect(lastTyped(emptyJob('a'))).toBe('');
    expect(lastTyped(demoJob)).toBe('2026-08-12T14:32:00');
  });
});
