import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sheetRows } from '../../../src/job/ratingSheet.ts';
import { importTable, nothingSaid } from '../../../src/job/tableImport/index.ts';
import { importLimits } from '../../../src/job/tableImport/limits.ts';
import { sheetTable } from '../../../src/job/tableImport/table.ts';
import { asText, layouts, plainPrint } from './sheets.ts';

const tidy = asText(layouts.tidy.rows(plainPrint), plainPrint);

describe('refused with a reason', () => {
  test.each([
    ['nothing', '', 'empty'],
    ['spaces and line ends', ' \t\t\n \r\n\n', 'empty'],
    ['NULs alone', '\0\0\0', 'empty'],
    ['prose', 'The maker says that it is a good machine.\nSo do we.', 'noFigures'],
    ['a web page', '<!doctype html><table><tr><td>85</td></tr></table>', 'webPage'],
    ['a table in the language of web pages', '<table><tr><td>85</td></tr></table>', 'webPage'],
    ['a workbook', 'PK\u0003\u0004\u0014\0\u0006\0', 'workbook'],
    ['an old workbook', '\u00d0\u00cf\u0011\u00e0\u00a1', 'workbook'],
    ['a PDF', '%PDF-1.7 ', 'pdf'],
    ['20 MB and a letter', 'x'.repeat(importLimits.bytes + 1), 'tooLong'],
    ['50 001 rows', '85\t63\t34.4\n'.repeat(importLimits.rows + 1), 'tooManyRows'],
    ['a million columns', '85,'.repeat(1_000_000), 'tooManyColumns'],
  ])('%s', (_, text, code) => {
    expect(importTable(text)).toMatchObject({ ok: false, code });
  });
});

test('50 000 rows are looked through and refused as too many for one table', () => {
  const rows = Array.from(
    { length: importLimits.rows },
    (_, at) => `${65 + (at % 60)}\t${50 + (((at / 60) % 30) | 0)}\t${900 + (at % 97)}\t34.4`,
  );
  const found = importTable(['Outdoor\tWet bulb\tcfm\tTotal', ...rows.slice(1)].join('\n'));
  expect(found).toMatchObject({ ok: true, findings: [{ code: 'tooManyRows', weight: 'stop' }, { code: 'flat' }] });
  if (found.ok) expect(found.rows.length).toBeLessThanOrEqual(2000);
}, 60_000);

test('a file of 20 MB of figures is answered', () => {
  const line = `${'34.4\t'.repeat(400)}\n`;
  const found = importTable(line.repeat(Math.floor(importLimits.bytes / line.length)));
  expect(typeof found.ok).toBe('boolean');
}, 60_000);

test('NULs, a mark of byte order and old line ends change nothing', () => {
  const plain = importTable(tidy);
  for (const other of [
    `\ufeff${tidy}`,
    tidy.replace(/8/g, '8\0'),
    tidy.replace(/\r\n/g, '\r'),
    tidy.replace(/\r\n/g, '\n'),
    `${tidy}\n\n\t\t\n`,
  ]) {
    expect(importTable(other)).toEqual(plain);
  }
});

test('an inch sign or a quote that never ends swallows nothing', () => {
  const found = importTable(tidy.replace('Outdoor dry bulb', '"Outdoor dry bulb, 3/4"'));
  const open = importTable(`"An open quote\n${tidy}`);
  for (const one of [found, open]) expect(one.ok && one.rows.length).toBe(80);
});

test('cells that hold markup or formulas stay text', () => {
  const found = importTable(tidy.replace('34.4', '<img src=x onerror=alert(1)>').replace('33.5', '=HYPERLINK("x")'));
  if (!found.ok) throw new Error(found.code);
  expect(found.findings.map(({ code }) => code)).toEqual(expect.arrayContaining(['formula', 'notANumber']));
  for (const { total } of sheetRows(sheetTable(found.rows, found.proposal.meanings))) {
    expect(total === null || total > 0).toBe(true);
  }
});

const cell = fc.oneof(
  fc.constantFrom(
    '',
    '75',
    '85',
    '95',
    '59',
    '63',
    '34.4',
    '36,1',
    '1,200',
    '1.200',
    'Total',
    'EWB',
    'cfm',
    '0.76',
    '-',
    '=1',
    '°F',
    'High stage',
  ),
  fc.string({ maxLength: 12 }),
  fc.double().map(String),
);
const grid = fc.array(fc.array(cell, { maxLength: 9 }), { maxLength: 14 });

test('whatever is pasted, an answer comes that is plain data, and its rows can be read', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        grid.map((rows) => rows.map((row) => row.join('\t')).join('\n')),
        fc.string({ maxLength: 300 }),
      ),
      (text) => {
        const found = importTable(text);
        expect(structuredClone(found)).toEqual(found);
        if (!found.ok) return;
        for (const row of sheetRows(sheetTable(found.rows, found.proposal.meanings))) {
          expect(Number.isFinite(row.outdoorDryBulb + row.enteringWetBulb)).toBe(true);
          expect(row.total === null || row.total > 0).toBe(true);
        }
      },
    ),
    { numRuns: 400 },
  );
});

test('what is said of cells and meanings that the sheet does not have changes nothing', () => {
  const said = {
    ...nothingSaid,
    meanings: { nowhere: { role: 'total', unit: 'kw' } },
    cells: { '999/999': '5' },
  } as const;
  expect(importTable(tidy, said)).toEqual(importTable(tidy));
});
