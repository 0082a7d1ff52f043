/** Tables as files: letters of any program, and a table that goes out as CSV and comes in again. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdits, emptyJob } from '../../../src/job/edit.ts';
import { sheetRows } from '../../../src/job/ratingSheet.ts';
import { readJob } from '../../../src/job/schema.ts';
import { confirmedEdits } from '../../../src/job/tableImport/confirmed.ts';
import { sheetCsv } from '../../../src/job/tableImport/csv.ts';
import { textOf } from '../../../src/job/tableImport/decode.ts';
import { importTable } from '../../../src/job/tableImport/index.ts';
import { sheetTable } from '../../../src/job/tableImport/table.ts';
import type { TypedTable, UnitKey } from '../../../src/job/types.ts';
import { fromSi, toSi } from '../../../src/job/units.ts';

const text = 'Outdoor °F\tEWB\tTotal\n85\t63\t34.4';

test.each([
  ['UTF-8', new TextEncoder().encode(text)],
  ['UTF-8 with a mark', new TextEncoder().encode(`\ufeff${text}`)],
  ['UTF-16, low byte first', new Uint8Array([0xff, 0xfe, ...[...text].flatMap((one) => [one.charCodeAt(0), 0])])],
  ['UTF-16, high byte first', new Uint8Array([0xfe, 0xff, ...[...text].flatMap((one) => [0, one.charCodeAt(0)])])],
  ['old Windows', new Uint8Array([...text].map((one) => one.charCodeAt(0)))],
])('a file in %s is read', (_, bytes) => {
  expect(textOf(bytes)).toBe(text);
});

const temperature = fc.constantFrom<UnitKey>('degF', 'degC');
const capacity = fc.constantFrom<UnitKey>('mbh', 'btuh', 'kw', 'ton');
const flow = fc.constantFrom<UnitKey>('cfm', 'ls', 'm3h');
const figure = fc.double({ min: 0.9, max: 1.1, noNaN: true });
const decimals: Readonly<Partial<Record<UnitKey, number>>> = { mbh: 1, btuh: 0, kw: 2, ton: 2, cfm: 0, ls: 0, m3h: 0 };

const table = fc
  .record({
    temperature,
    capacity,
    flow,
    figures: fc.array(figure, { minLength: 24, maxLength: 24 }),
    shares: fc.boolean(),
  })
  .map(({ temperature: t, capacity: q, flow: v, figures, shares }): TypedTable => {
    const printed = (si: number, unit: UnitKey) => fromSi(si, unit).toFixed(decimals[unit] ?? 1);
    const [outdoors, wetBulbs] =
      t === 'degF'
        ? [
            [85, 95, 105],
            [63, 67],
          ]
        : [
            [30, 35, 40],
            [17, 19],
          ];
    const places = [0.47, 0.57].flatMap((airflow) =>
      wetBulbs.flatMap((wetBulb) => outdoors.map((outdoor) => ({ airflow, wetBulb, outdoor }))),
    );
    return {
      columns: [
        { key: 'outdoorDryBulb', unit: t },
        { key: 'enteringWetBulb', unit: t },
        { key: 'airflow', unit: v },
        { key: 'total', unit: q },
        { key: 'sensible', unit: shares ? 'fraction' : q },
        { key: 'power', unit: 'kw' },
      ],
      rows: places.map(({ airflow, wetBulb, outdoor }, at) => {
        const total = toSi(3, 'ton') * (figures[at] ?? 1);
        const share = 0.75 * (figures[at + 12] ?? 1);
        return [
          String(outdoor),
          String(wetBulb),
          printed(airflow, v),
          printed(total, q),
          shares ? share.toFixed(3) : printed(total * share, q),
          '2.45',
        ];
      }),
    };
  });

test('a table that goes out as CSV comes in as the same table', () => {
  fc.assert(
    fc.property(table, (out) => {
      const found = importTable(sheetCsv(out));
      if (!found.ok) throw new Error(found.code);
      const back = sheetTable(found.rows, found.proposal.meanings);
      expect(back).toEqual(out);
      expect(sheetRows(back)).toEqual(sheetRows(out));
    }),
  );
});

test('a cell that a spreadsheet would take for a formula goes out harmless and comes back as it was', () => {
  const out: TypedTable = {
    columns: [
      { key: 'outdoorDryBulb', unit: 'degF' },
      { key: 'enteringWetBulb', unit: 'degF' },
      { key: 'total', unit: 'mbh' },
    ],
    rows: [
      ['85', '63', '=HYPERLINK("x")'],
      ['95', '63', '32.7'],
      ['85', '67', '36.1'],
      ['95', '67', '34.3'],
    ],
  };
  const csv = sheetCsv(out);
  expect(csv).toContain(`"'=HYPERLINK(""x"")"`);
  const found = importTable(csv);
  expect(found.ok && found.rows[0]?.total).toBe('=HYPERLINK("x")');
});

test('a confirmed sheet is edits that a record may hold, with its factors, its page and its day', () => {
  const found = importTable(
    'EWB\t85\t95\n63\t34.4\t32.7\n67\t36.1\t34.3\n\nAirflow correction factors\nL/s\t470\t570\nTotal\t0.97\t1.00',
  );
  if (!found.ok) throw new Error(found.code);
  const at = '2026-08-12T14:32:00.000Z';
  const said = {
    basis: 'net',
    stage: 'high',
    page: 'page 14',
    at,
    indoorMatch: '0.98',
    lineLength: undefined,
  } as const;
  const job = applyEdits(emptyJob('a'), confirmedEdits(found, said));
  expect(readJob(job)).toEqual({ ok: true, job });
  expect(job.tables.ratingAirflow?.columns[0]).toEqual({ key: 'airflow', unit: 'ls' });
  expect(job.chosen).toEqual({ 'rating.from': 'sheet', 'rating.basis': 'net', 'rating.stage': 'high' });
  expect(job.notes).toEqual({ 'rating.page': 'page 14', 'rating.typedAt': at });
  expect(job.entered).toEqual({ 'rating.indoorMatch': { text: '0.98', unit: 'fraction', origin: 'from sheet', at } });
});
