import { describe, expect, test } from 'vitest';
import { emptyJob } from '../../../src/job/edit.ts';
import { sheetMultipliers, sheetRows } from '../../../src/job/ratingSheet.ts';
import {
  type Finding,
  type Imported,
  importTable,
  nothingSaid,
  type Said,
} from '../../../src/job/tableImport/index.ts';
import { withFix } from '../../../src/job/tableImport/said.ts';
import { airflowTable, sheetTable } from '../../../src/job/tableImport/table.ts';
import { toSi } from '../../../src/job/units.ts';

const tabs = (text: string) => text.replace(/ *\| */g, '\t');

function imported(text: string, said: Said = nothingSaid): Extract<Imported, { ok: true }> {
  const found = importTable(tabs(text), said);
  if (!found.ok) throw new Error(found.code);
  return found;
}

const findings = (text: string, said?: Said): readonly Finding[] => imported(text, said).findings;
const codes = (text: string, said?: Said) => findings(text, said).map(({ code }) => code);
const totals = (text: string, said?: Said) => {
  const { rows, proposal } = imported(text, said);
  return sheetRows(sheetTable(rows, proposal.meanings)).map(({ total }) => total && Math.round(total));
};

/** Takes up everything that is offered. */
function fixed(text: string): Said {
  return findings(text).reduce(
    (said, { fix, weight }) => (fix && weight !== 'note' ? withFix(said, fix) : said),
    nothingSaid,
  );
}

const block = `EWB °F | 75 | 85 | 95 | 105
59 | 34.4 | 32.7 | 31.1 | 29.4
63 | 36.1 | 34.4 | 32.7 | 31.0
67 | 37.9 | 36.1 | 34.3 | 32.5`;

test('nothing is said of an ordinary block', () => {
  expect(findings(block)).toEqual([]);
});

describe('what is obvious is named with its place, and put right at a tap', () => {
  test('figures in Btu/h under MBh', () => {
    const text = `Total capacity, MBh\n${block.replace(/\b(3\d|29)\.(\d)/g, '$1$200')}`;
    expect(findings(text)).toMatchObject([{ code: 'otherUnit', weight: 'doubt', text: 'kBtu/h', reading: 'Btu/h' }]);
    expect(codes(text, fixed(text))).toEqual([]);
    expect(totals(text, fixed(text))[0]).toBe(Math.round(toSi(34_400, 'btuh')));
  });

  test('thousands of Btu/h under Btu/h, which are read as such', () => {
    const text = `Total capacity, Btu/h\n${block}`;
    expect(findings(text)).toMatchObject([
      { code: 'inThousands', weight: 'note', text: '34.4', reading: '34400', count: 12 },
    ]);
    expect(totals(text)).toEqual(totals(block));
  });

  test('a °C column under °F', () => {
    const text = `Outdoor °F | Wet bulb °F | Total MBh
25 | 15 | 34.4
25 | 19 | 37.9
35 | 15 | 31.1
35 | 19 | 34.3
45 | 15 | 27.8
45 | 19 | 30.7`;
    expect(findings(text)).toMatchObject([
      { code: 'otherUnit', text: '°F', reading: '°C', spot: { row: 1, column: 0 } },
      { code: 'otherUnit', text: '°F', reading: '°C', spot: { row: 1, column: 1 } },
    ]);
    const { rows, proposal } = imported(text, fixed(text));
    const places = sheetRows(sheetTable(rows, proposal.meanings)).map((row) => [
      row.outdoorDryBulb,
      row.enteringWetBulb,
    ]);
    expect(places[0]).toEqual([25, 15]);
  });

  test('one head in °C among °F', () => {
    const text = block.replace('| 95 |', '| 35 |').replace('75', '75').replace('| 105', '| 105');
    const rising = text.replace('75 | 85 | 35 | 105', '75 | 85 | 105 | 115').replace('67 |', '19.5 |');
    expect(findings(rising)).toMatchObject([
      { code: 'cellInOtherUnit', text: '19.5', reading: '19.5 °C', spot: { row: 3, column: 0 } },
    ]);
    expect(codes(rising, fixed(rising))).toEqual([]);
  });

  test('one figure in Btu/h among MBh', () => {
    const text = `Total, MBh\n${block.replace('31.1', '31100')}`;
    expect(findings(text)).toMatchObject([
      { code: 'cellInOtherUnit', text: '31100', reading: '31100 Btu/h', spot: { row: 2, column: 3 } },
    ]);
    expect(totals(text, fixed(text))).toEqual(totals(block));
  });

  test('a word that clings to a figure', () => {
    const text = block.replace('36.1 | 34.4', '36.1 see note | 34.4').replace('32.5', '32.5 peak');
    expect(findings(text)).toMatchObject([
      { code: 'strayWord', text: '36.1 see note', reading: '36.1', count: 2, spot: { row: 2, column: 1 } },
    ]);
    expect(codes(text, fixed(text))).toEqual([]);
    expect(totals(text, fixed(text))).toEqual(totals(block));
  });

  test('thousands torn apart by the commas of the file', () => {
    const text = 'Outdoor,EWB,Total Btu/h\n85,63,34,400\n85,67,36,100\n95,63,32,700\n95,67,34,300';
    expect(findings(text)).toMatchObject([{ code: 'splitThousands', fix: { kind: 'join' } }]);
    expect(totals(text, fixed(text))).toEqual(
      [34_400, 36_100, 32_700, 34_300].map((number) => Math.round(toSi(number, 'btuh'))),
    );
  });
});

describe('what cannot be put right by itself is named with its place', () => {
  test.each([
    [
      'a word for a figure',
      block.replace('31.1', 'thirty'),
      { code: 'notANumber', weight: 'doubt', text: 'thirty', spot: { row: 1, column: 3 } },
    ],
    [
      'a formula',
      block.replace('31.1', '=B2*0.9'),
      { code: 'formula', weight: 'doubt', text: '=B2*0.9', spot: { row: 1, column: 3 } },
    ],
    [
      'a figure that cannot be',
      block.replace('31.1', '3110000'),
      { code: 'impossible', weight: 'doubt', text: '3110000', spot: { row: 1, column: 3 } },
    ],
    [
      'an empty cell',
      block.replace('31.1', ''),
      { code: 'holes', weight: 'note', text: '', spot: { row: 1, column: 3 } },
    ],
    [
      'a dash for a figure',
      block.replace('31.1', '—'),
      { code: 'holes', weight: 'note', text: '—', spot: { row: 1, column: 3 } },
    ],
    [
      'the same row twice',
      `${block}\n67 | 38.0 | 36.2 | 34.4 | 32.6`,
      { code: 'twice', weight: 'doubt', text: '38.0', count: 4, spot: { row: 4, column: 1 } },
    ],
    [
      'a column that is all alike',
      block.replace('36.1 | 34.4', '34.4 | 34.4').replace('37.9', '34.4').concat('\n71 | 34.4 | 37.9 | 36.0 | 34.1'),
      { code: 'flat', weight: 'doubt', text: '34.4', spot: { row: 1, column: 1 } },
    ],
    [
      'a line of prose',
      `${block}\n\nAsk the maker for wetter air.`,
      { code: 'skipped', weight: 'note', spot: { row: 5, column: 0 } },
    ],
    [
      'a first row whose figures are all words',
      block.replace('\n', '\n59 | NaN | NaN | NaN | NaN\n'),
      { code: 'skipped', weight: 'note', spot: { row: 1, column: 1 } },
    ],
  ])('%s', (_, text, found) => {
    expect(findings(text)).toMatchObject([found]);
  });

  test.each([
    ['no wet bulb', 'Outdoor | cfm | Total\n85 | 1200 | 34.4\n95 | 1200 | 32.7\n105 | 1200 | 31.0', 'noWetBulb'],
    [
      'no outdoor temperature',
      'Wet bulb | cfm | Total\n63 | 1200 | 34.4\n67 | 1200 | 36.1\n71 | 1200 | 38.0',
      'noOutdoors',
    ],
    ['no total', 'Outdoor | Wet bulb | Power\n85 | 63 | 2.1\n95 | 63 | 2.4\n105 | 63 | 2.7', 'noTotal'],
    ['an airflow on some rows only', `${block}\nAirflow 1000 cfm\n${block}`, 'airflowOnSome'],
  ])('%s stops the table', (_, text, code) => {
    expect(findings(text)[0]).toMatchObject({ code, weight: 'stop' });
  });
});

test.each([2, 5])('a column of outdoor temperatures merged over their wet bulbs is no block: %i of them', (many) => {
  const lines = [75, 85, 95, 105, 115]
    .slice(0, many)
    .flatMap((outdoors, i) =>
      [59, 63, 67].map((wetBulb, j) => `${j > 0 ? '' : outdoors}\t${wetBulb}\t${34 + 1.7 * j - 1.6 * i}`),
    );
  const found = importTable(['Outdoor °F\tEWB °F\tTotal MBh', ...lines].join('\n'));
  if (!found.ok) throw new Error(found.code);
  expect(found.rows).toHaveLength(3 * many);
  expect(found.proposal.meanings.map(({ role }) => role)).toEqual(['outdoorDryBulb', 'enteringWetBulb', 'total']);
  expect(found.findings.map(({ code }) => code)).toEqual(['filled']);
});

test('merged cells are read from above, and that is said', () => {
  const text = `cfm | EWB | 85 | 95
1200 | 63 | 34.4 | 32.7
 | 67 | 36.1 | 34.3
1000 | 63 | 33.0 | 31.4
 | 67 | 34.7 | 32.9`;
  expect(findings(text)).toMatchObject([
    { code: 'filled', weight: 'note', reading: '1200', count: 2, spot: { row: 2, column: 0 } },
  ]);
  expect(imported(text).rows.map(({ airflow }) => airflow)).toEqual([
    '1200',
    '1200',
    '1200',
    '1200',
    '1000',
    '1000',
    '1000',
    '1000',
  ]);
});

test('a sheet of two stages asks which is wanted, and takes that one', () => {
  const text = `Low stage\n${block}\n\nHigh stage\n${block.replace(/\b3(\d)\.(\d)/g, '4$1.$2')}`;
  expect(findings(text)[0]).toMatchObject({ code: 'whichStage', weight: 'stop', reading: 'low, high' });
  expect(totals(text, { ...nothingSaid, stage: 'low' })).toEqual(totals(block));
  expect(totals(text, { ...nothingSaid, stage: 'high' })[0]).toBe(Math.round(toSi(44.4, 'mbh')));
});

test('net and gross are taken from the words of the sheet, where they say one of them', () => {
  expect(imported(`Net capacities\n${block}`).proposal.basis).toBe('net');
  expect(imported(`Gross capacities, add fan heat for net\n${block}`).proposal.basis).toBeNull();
  expect(imported(block).proposal.basis).toBeNull();
});

test('what a column is taken for can be said otherwise', () => {
  const text = 'A | B | C\n63 | 85 | 34.4\n67 | 85 | 36.1\n63 | 95 | 32.7\n67 | 95 | 34.3';
  const { proposal } = imported(text);
  expect(proposal.meanings.map(({ role }) => role)).toEqual(['enteringWetBulb', 'outdoorDryBulb', 'total']);
  const other = { ...nothingSaid, meanings: { 'column:2': { role: 'sensible', unit: 'mbh' } } } as const;
  expect(codes(text, other)).toEqual(['noTotal']);
});

describe('factors beside a base block', () => {
  const across = `${block}\n\nAirflow correction factors\ncfm | 1000 | 1200 | 1400\nTotal | 0.97 | 1.00 | 1.02\nSensible | 0.92 | 1.00 | 1.06`;

  test('across, for other airflows', () => {
    const { proposal, rows, findings: said } = imported(across);
    expect(said).toEqual([]);
    expect(rows).toHaveLength(12);
    expect(proposal.factors).toMatchObject([
      {
        cause: 'airflow',
        lines: [
          { of: '1000', total: '0.97', sensible: '0.92' },
          { of: '1200', total: '1.00', sensible: '1.00' },
          { of: '1400', total: '1.02', sensible: '1.06' },
        ],
      },
    ]);
    const job = { ...emptyJob('a'), tables: { ratingAirflow: airflowTable(proposal.factors[0]!, 'cfm') } };
    const [first] = sheetMultipliers(job);
    expect(first).toMatchObject({ total: 0.97, sensible: 0.92 });
    expect((first?.dryAirFlow ?? 0) / (toSi(1000, 'cfm') * 1.2014)).toBeCloseTo(1, 9);
  });

  test.each([
    [
      'indoorMatch',
      'Indoor coil multipliers\nModel | Sensible | Total\nSample coil A | 0.98 | 0.99\nSample coil B | 1.02 | 1.01',
      'Sample coil A',
      '0.99',
    ],
    ['lineLength', 'Capacity factors for line length\nft | 25 | 50 | 75\nTotal | 1.00 | 0.99 | 0.98', '25', '1.00'],
    ['airflow', 'Correction\ncfm | Total factor\n1000 | 0.97\n1200 | 1.00', '1000', '0.97'],
  ])('%s', (cause, text, of, total) => {
    const { proposal, rows } = imported(`${block}\n\n${text}`);
    expect(rows).toHaveLength(12);
    expect(proposal.factors[0]).toMatchObject({ cause });
    expect(proposal.factors[0]?.lines[0]).toMatchObject({ of, total });
  });
});
