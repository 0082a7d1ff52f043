/** What the explorer draws of a job: its own table whichever way it came in, where it stands on it, and what was measured. */
import { describe, expect, test } from 'vitest';
import { assess } from '../../src/calc/index.ts';
import { readTable } from '../../src/charts/surface/reading.ts';
import { airOf, measuredOf, ownConditions, type Shown, shouldOf, shownOf } from '../../src/islands/expected/shown.ts';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits } from '../../src/job/edit.ts';
import { readSheet } from '../../src/job/ratingSheet.ts';
import { importTable } from '../../src/job/tableImport/index.ts';
import { sheetTable } from '../../src/job/tableImport/table.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { Edit, Job } from '../../src/job/types.ts';
import { asText, layouts, plainPrint } from '../job/tableImport/sheets.ts';

const typed = (key: string, text: string, unit: string) =>
  ({ slot: 'entered', key, to: { text, unit, origin: 'typed' } }) as Edit;
const say = (key: string, to: string | undefined) => ({ slot: 'chosen', key, to }) as Edit;

function sheet(): Edit[] {
  const found = importTable(asText(layouts.tidy.rows(plainPrint), plainPrint));
  if (!found.ok) throw new Error(found.code);
  return [
    { slot: 'tables', key: 'ratingSheet', to: sheetTable(found.rows, found.proposal.meanings) },
    say('rating.from', 'sheet'),
  ];
}
const generic = [
  say('rating.from', 'generic'),
  say('equipment.stages', 'one'),
  typed('rating.certified', '34000', 'btuh'),
];

const testOf = (job: Job) => toTest(job, null, readSheet).test;
function shown(...edits: readonly Edit[]): Shown {
  const job = applyEdits(demoJob, edits);
  const found = shownOf(job, testOf(job));
  if (!found) throw new Error('nothing is drawn');
  return found;
}
const bare = (job: Job): Job => ({ ...job, entered: { 'rating.certified': job.entered['rating.certified']! } });

/** What the explorer reads at the job's own place. */
function readingOf(of: Shown) {
  const { outdoorDryBulb, enteringWetBulb, dryAirFlow, enteringDryBulb } = ownConditions(of);
  return readTable(of.table, { outdoorDryBulb, enteringWetBulb }, airOf(dryAirFlow, enteringDryBulb));
}

describe('the table that is drawn', () => {
  test('is all that was typed for the blocks that count, not only what the readings touch', () => {
    const { rows } = demoJob.tables.rating!;
    expect(shown(say('rating.blocks', 'two')).figures).toBe(2 * rows.length);
    expect(shown().figures).toBe(2 * rows.filter((row) => row[2] === '1').length);
  });

  test('is all of a whole table, with and without readings', () => {
    const of = shown(...sheet());
    expect(of.table.axes.outdoorDryBulb).toHaveLength(5);
    expect(of.table.axes.enteringDryBulb).toHaveLength(2);
    expect(of.figures).toBe(240);
    const job = { ...of.job, entered: {} };
    expect(shownOf(job, testOf(job))?.figures).toBe(240);
  });

  test('waits for what reads a whole table', () => {
    const job = applyEdits(demoJob, sheet());
    expect(shownOf(job, toTest(job).test)).toBeNull();
  });

  test('is the published curves where there is no more than a certified capacity, with and without readings', () => {
    const of = shown(...generic);
    expect(of.table.from).toBe('generic');
    const without = shownOf(bare(of.job), testOf(bare(of.job)));
    expect(without?.table.from).toBe('generic');
    expect(without?.table.axes).toEqual(expect.objectContaining({ enteringWetBulb: of.table.axes.enteringWetBulb }));
  });

  test('is none while the curves lack their stage or capacity, and none for variable speed', () => {
    for (const edit of [typed('rating.certified', '', 'btuh'), say('equipment.stages', 'variable')]) {
      const job = applyEdits(demoJob, [...generic, edit]);
      expect(shownOf(bare(job), testOf(bare(job)))).toBeNull();
    }
  });
});

describe('at the job’s own place', () => {
  test.each([
    ['the typed cells', []],
    ['the typed cells of both airflows', [say('rating.blocks', 'two')]],
    ['a whole table', sheet()],
    ['a whole table and a return air cooler than it prints', [...sheet(), typed('entering.dryBulb', '71', 'degF')]],
    ['published curves', generic],
  ])('%s give what the sheet expects, but for the lines and this blower’s own heat', (_, edits) => {
    const of = shown(...edits);
    const expected = assess(of.test).expected;
    if (!expected.ok) throw new Error('nothing is expected');
    const steps = expected.value.derates;
    // Behind it come the lines, the height and this blower, which are no part of the table.
    const gross = steps.find(({ cause }) => cause === 'blowerInside')!.after;
    expect(shouldOf(of, 'total')).toBe(expected.value.total);
    expect(readingOf(of)!.total).toBeCloseTo(gross - of.table.blowerPower, 3);
    expect(readingOf(of)!.outside).toEqual([]);
  });

  test('what was measured is the sheet’s, with its range', () => {
    const of = shown(...sheet());
    const { measured, ranges } = assess(of.test);
    if (!measured.ok) throw new Error('nothing is measured');
    for (const [quantity, key] of [
      ['total', 'total'],
      ['sensible', 'sensible'],
      ['ratio', 'sensibleHeatRatio'],
    ] as const) {
      const found = measuredOf(of, quantity, ranges)!;
      expect(found.value).toBeCloseTo(measured.value[key], 9);
      expect(found.range![0]).toBeCloseTo(ranges[key]!.interval.low, 9);
      expect(found.range![1]).toBeCloseTo(Math.min(quantity === 'ratio' ? 1 : Infinity, ranges[key]!.interval.high), 9);
      expect(measuredOf(of, quantity, null)!.range).toBeNull();
    }
    expect(measuredOf(of, 'power', ranges)).toBeNull();
  });

  test('a load measured without its blower is net with its range', () => {
    const of = shown(say('blower.place', 'outside probes'));
    const { measured, ranges } = assess(of.test);
    if (!measured.ok) throw new Error('nothing is measured');
    expect(measured.value.basis).toBe('gross');
    const found = measuredOf(of, 'total', ranges)!;
    expect(found.value).toBeCloseTo(measured.value.total - 430, 6);
    expect(found.range![0]).toBeCloseTo(ranges.total!.interval.low - 430, 6);
  });
});
