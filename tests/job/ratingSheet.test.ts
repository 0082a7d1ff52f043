import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assess, type RatingRow } from '../../src/calc/index.ts';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, typed } from '../../src/job/edit.ts';
import { forLink } from '../../src/job/forLink.ts';
import { readSheet, sheetRows, sheetRowsHere } from '../../src/job/ratingSheet.ts';
import { readJob } from '../../src/job/schema.ts';
import { importTable } from '../../src/job/tableImport/index.ts';
import { sheetTable } from '../../src/job/tableImport/table.ts';
import { tableLimits } from '../../src/job/tables.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { Job, TypedTable, UnitKey } from '../../src/job/types.ts';
import { toSi } from '../../src/job/units.ts';
import { usesSheet } from '../../src/job/usesSheet.ts';
import { asText, layouts, plainPrint } from './tableImport/sheets.ts';

const table = (columns: Readonly<Record<string, UnitKey>>, rows: readonly (readonly string[])[]): TypedTable => ({
  columns: Object.entries(columns).map(([key, unit]) => ({ key, unit })),
  rows,
});
const plain = { outdoorDryBulb: 'degF', enteringWetBulb: 'degF', total: 'mbh', sensible: 'mbh' } as const;

function pasted(): TypedTable {
  const found = importTable(asText(layouts.tidy.rows(plainPrint), plainPrint));
  if (!found.ok) throw new Error(found.code);
  return sheetTable(found.rows, found.proposal.meanings);
}

/** The demo with a whole table in place of its cells. */
const withSheet = (sheet: TypedTable): Job =>
  applyEdits(demoJob, [
    { slot: 'tables', key: 'ratingSheet', to: sheet },
    { slot: 'chosen', key: 'rating.from', to: 'sheet' },
    { slot: 'chosen', key: 'rating.beyond', to: undefined },
  ]);

const values = (rows: readonly RatingRow[], axis: 'outdoorDryBulb' | 'enteringWetBulb') =>
  [...new Set(rows.map((row) => Math.round(row[axis] * 1.8 + 32)))].sort((a, b) => a - b);

describe('a whole table', () => {
  test('is the rating of the test once it is chosen, and not before', () => {
    const job = withSheet(pasted());
    expect(usesSheet(job)).toBe(true);
    expect(usesSheet({ ...job, chosen: {} })).toBe(false);
    const { test: given, problems } = toTest(job, null, readSheet);
    expect(problems).toEqual([]);
    expect(given.rating?.rows).toEqual(sheetRowsHere(job));
    expect(assess(given).expected.ok).toBe(true);
    expect(toTest(job).test.rating).toBeNull();
  });

  test('tells the test which stage it is for, which typed cells do not', () => {
    const low = applyEdits(withSheet(pasted()), [{ slot: 'chosen', key: 'rating.stage', to: 'low' }]);
    expect(toTest(low, null, readSheet).test.rating?.stage).toBe('low');
    expect(assess(toTest(low, null, readSheet).test).remarks).toContainEqual(
      expect.objectContaining({ code: 'lowStageTable', weight: 'stop' }),
    );
    const cells = applyEdits(low, [{ slot: 'chosen', key: 'rating.from', to: 'cells' }]);
    expect(toTest(cells, null, readSheet).test.rating?.stage).toBeNull();
  });

  test('gives a test the rows on either side of its conditions, and all the airflows and dry bulbs', () => {
    const job = withSheet(pasted());
    const rows = sheetRowsHere(job);
    expect(values(rows, 'outdoorDryBulb')).toEqual([85, 95]);
    expect(values(rows, 'enteringWetBulb')).toEqual([59, 63]);
    expect(rows).toHaveLength(2 * 2 * 2 * 2);
  });

  test('gives its ends too where the conditions lie beyond it', () => {
    const hot = applyEdits(withSheet(pasted()), [
      { slot: 'entered', key: 'outdoorDryBulb', to: { text: '121', unit: 'degF', origin: 'typed' } },
    ]);
    expect(values(sheetRowsHere(hot), 'outdoorDryBulb')).toEqual([75, 105, 115]);
    const [remark] = assess(toTest(hot, null, readSheet).test).remarks;
    expect(remark?.code).toBe('outsideTable');
    expect(remark?.amounts.map(({ value }) => Math.round(value * 1.8 + 32))).toEqual([121, 75, 115]);
  });

  test('gives the nearest dry bulb alone where the return air lies beyond the printed ones', () => {
    const cool = applyEdits(withSheet(pasted()), [
      { slot: 'entered', key: 'entering.dryBulb', to: { text: '72', unit: 'degF', origin: 'typed' } },
    ]);
    const rows = sheetRowsHere(cool);
    expect(new Set(rows.map(({ enteringDryBulb }) => Math.round((enteringDryBulb ?? 0) * 1.8 + 32)))).toEqual(
      new Set([75]),
    );
    expect(assess(toTest(cool, null, readSheet).test).expected.ok).toBe(true);
  });

  test('is given whole while the conditions are not known', () => {
    expect(sheetRowsHere({ ...withSheet(pasted()), entered: {} })).toHaveLength(80);
  });

  test('keeps a cell that cannot be read as a hole, and a place that is not printed too', () => {
    const rows = sheetRows(
      table(plain, [
        ['85', '63', '34.4', '26.0'],
        ['95', '63', 'thirty', '=A1'],
        ['85', '67', '36.1', ''],
      ]),
    );
    expect(rows).toHaveLength(4);
    expect(rows.map(({ total }) => total !== null)).toEqual([true, true, false, false]);
    expect(rows.filter(({ sensible }) => sensible !== null)).toHaveLength(1);
  });

  test('reads the sensible as a share, in its column’s unit or by its size', () => {
    const rows = (unit: UnitKey, text: string) =>
      sheetRows(table({ ...plain, sensible: unit }, [['85', '63', '34.4', text]]));
    for (const [unit, text] of [
      ['fraction', '0.75'],
      ['fraction', '0,75'],
      ['percent', '75'],
      ['mbh', '0.75'],
      ['mbh', '75 %'],
    ] as const) {
      expect(rows(unit, text)[0]?.sensible).toBeCloseTo(0.75 * toSi(34.4, 'mbh'), 6);
    }
  });

  test('is no table when its heads make a grid that no machine has', () => {
    const wild = Array.from({ length: 200 }, (_, at) => [String(60 + at / 4), String(50 + at / 10), '34.4', '']);
    expect(sheetRows(table(plain, wild))).toEqual([]);
  });

  test('takes the airflow and the dry bulb of the step where it states none', () => {
    const { airflow, enteringDryBulb } = { airflow: '1200', enteringDryBulb: '80' };
    const job = applyEdits(withSheet(table(plain, [['85', '63', '34.4', '']])), [
      { slot: 'entered', key: 'rating.airflow', to: { text: airflow, unit: 'cfm', origin: 'typed' } },
      { slot: 'entered', key: 'rating.enteringDryBulb', to: { text: enteringDryBulb, unit: 'degF', origin: 'typed' } },
    ]);
    const [row] = sheetRowsHere(job);
    expect(row?.dryAirFlow).toBeCloseTo(toSi(1200, 'cfm') * 1.2014, 9);
    expect(row?.enteringDryBulb).toBeCloseTo(toSi(80, 'degF'), 9);
  });

  test('of the largest size is read back from a record, and a larger one is not', () => {
    const rows = (count: number) => withSheet(table(plain, Array(count).fill(['85', '63', '34.4', ''])));
    expect(readJob(rows(tableLimits.sheetRows)).ok).toBe(true);
    expect(readJob(rows(tableLimits.sheetRows + 1)).ok).toBe(false);
  });
});

describe('for a link', () => {
  const of = (job: Job) => assess(toTest(job, null, readSheet).test);
  const conditions = fc.record({
    outdoors: fc.integer({ min: 60, max: 120 }),
    humidity: fc.integer({ min: 20, max: 80 }),
  });

  test('a whole table keeps the rows that are read and the next ones beside them, and every figure stays the same', () => {
    fc.assert(
      fc.property(conditions, ({ outdoors, humidity }) => {
        const job = applyEdits(withSheet(pasted()), [
          typed(demoJob, 'outdoorDryBulb', String(outdoors), 'degF'),
          typed(demoJob, 'entering.relativeHumidity', String(humidity), 'percent'),
        ]);
        const carried = forLink(job);
        expect(of(carried)).toEqual(of(job));
        expect(forLink(carried)).toEqual(carried);
        const rows = sheetRows(carried.tables.ratingSheet!);
        for (const axis of ['outdoorDryBulb', 'enteringWetBulb'] as const) {
          const read = values(sheetRowsHere(job), axis);
          expect(values(rows, axis).length).toBeLessThanOrEqual(3 * read.length);
          expect(values(rows, axis)).toEqual(expect.arrayContaining(read));
        }
      }),
    );
  });

  test('a table that nothing is read from stays behind', () => {
    const unused = { ...withSheet(pasted()), chosen: demoJob.chosen };
    expect(Object.keys(forLink(unused).tables)).toEqual(Object.keys(demoJob.tables));
    expect(of(forLink(unused))).toEqual(of(unused));
  });

  test('while the conditions are not known the whole of it goes along', () => {
    const job = applyEdits(withSheet(pasted()), [{ slot: 'entered', key: 'outdoorDryBulb', to: undefined }]);
    expect(forLink(job)).toEqual(job);
  });
});
