import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { byteOrderMark, csvRows, csvText } from '../../src/job/csv.ts';
import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import { namedStates } from '../../src/job/states.ts';
import { type CsvState, statesCsv } from '../../src/job/statesCsv.ts';
import { statesFromCsv } from '../../src/job/statesFromCsv.ts';
import type { Job } from '../../src/job/types.ts';
import { chartWith } from './charts.ts';

describe('csvText', () => {
  it('marks the text as UTF-8, ends rows with CRLF and quotes what needs it (RFC 4180)', () => {
    expect(
      csvText([
        ['a', 'b,c'],
        ['say "x"', 'two\nlines'],
      ]),
    ).toBe(`${byteOrderMark}a,"b,c"\r\n"say ""x""","two\nlines"\r\n`);
  });

  it.each([
    ['=1+1', "'=1+1"],
    ['+cmd', "'+cmd"],
    ['-cmd', "'-cmd"],
    ['@x', "'@x"],
    ['\tx', "'\tx"],
    ["'=x", "''=x"],
    ['-5.2', '-5.2'],
    ['\u22125.2', '-5.2'],
    ['+3', '+3'],
    ['-', "'-"],
    ['-5 x', "'-5 x"],
    ['5', '5'],
    ["it's", "it's"],
  ])('writes %j as %j', (text, written) => {
    expect(csvText([[text]])).toBe(`${byteOrderMark}${written}\r\n`);
  });

  it('is read back as it was', () => {
    const cell = fc.string({
      maxLength: 12,
      unit: fc.constantFrom('a', '1', ',', ';', '"', "'", '=', '+', '-', '@', '\n', '\r', '\t', ' ', 'é'),
    });
    const rows = fc.array(fc.tuple(fc.constant('x'), cell, cell), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(rows, (written) => {
        const headed = [['x', 'head', 'head'], ...written];
        expect(csvRows(csvText(headed))).toEqual(headed);
      }),
      { numRuns: 500 },
    );
  });
});

test('rows are parted by whatever the first line has: tabs, semicolons or commas', () => {
  expect(csvRows('a\tb\r\n1,5\t2')).toEqual([
    ['a', 'b'],
    ['1,5', '2'],
  ]);
  expect(csvRows('a;b\n1,5;2\n\n')).toEqual([
    ['a', 'b'],
    ['1,5', '2'],
  ]);
  expect(csvRows('"a;b",c\r1,2')).toEqual([
    ['a;b', 'c'],
    ['1', '2'],
  ]);
});

const listed = (job: Job): readonly CsvState[] =>
  namedStates(job).flatMap(({ key, name, air }) => (air.ok ? [{ code: key.toUpperCase(), name, air: air.value }] : []));

describe('the table of states', () => {
  it('holds every property with its unit, and goes back into the chart', () => {
    const states = fc.array(
      fc.record({
        name: fc
          .string({ maxLength: 10, unit: fc.constantFrom('a', 'B', ' ', ',', '"', '=', '1', 'é') })
          .map((text) => text.trim()),
        dryBulb: fc.integer({ min: 200, max: 1200 }).map((tenths) => (tenths / 10).toFixed(1)),
        relativeHumidity: fc.integer({ min: 20, max: 100 }).map(String),
      }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(states, fc.constantFrom('ip' as const, 'si' as const), (typed, system) => {
        const job = chartWith(typed);
        const read = statesFromCsv(emptyJob('other'), statesCsv(listed(job), system, 101325), system);
        if (!read.ok) throw new Error(JSON.stringify(read));
        const back = listed(applyEdits(emptyJob('other'), read.edits));
        expect(back.map(({ name }) => name)).toEqual(typed.map(({ name }) => name));
        for (const [index, { air }] of listed(job).entries()) {
          expect(Math.abs(back[index]!.air.dryBulb - air.dryBulb)).toBeLessThan(0.006);
          expect(Math.abs(back[index]!.air.relativeHumidity - air.relativeHumidity)).toBeLessThan(6e-5);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('writes a temperature below zero as a number', () => {
    const text = statesCsv(listed(chartWith([{ dryBulb: '-5', relativeHumidity: '80' }], [], 'si')), 'si', 101325);
    expect(text.split('\r\n')[1]).toMatch(/^A,,-5\.00,-/);
    expect(text.split('\r\n')[0]).toContain('Dry bulb (°C)');
  });
});

const taken = (text: string, system: 'ip' | 'si' = 'ip') => {
  const read = statesFromCsv(emptyJob('t'), text, system);
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  return namedStates(applyEdits(emptyJob('t'), read.edits)).map(({ name, dryBulb, measure, humidity }) => [
    name,
    dryBulb.text,
    measure,
    humidity.text,
  ]);
};

test('a table may come with or without heads, with its name first or last, in the units that its heads name', () => {
  expect(taken('75,50')).toEqual([['', '75', 'relativeHumidity', '50']]);
  expect(taken('75,50,Room')).toEqual([['Room', '75', 'relativeHumidity', '50']]);
  expect(taken('Room;75;50')).toEqual([['Room', '75', 'relativeHumidity', '50']]);
  expect(taken('Name\tDry bulb (°C)\tWet bulb (°C)\nRoom\t24\t17')).toEqual([['Room', '24 °C', 'wetBulb', '17 °C']]);
  expect(taken('Humidity ratio (g/kg),Dry bulb (°C)\n9.3,24', 'si')).toEqual([['', '24', 'humidityRatio', '9.3']]);
  expect(taken('Dry bulb;Dew point\n24,5;12,3', 'si')).toEqual([['', '24,5', 'dewPoint', '12,3']]);
});

test('the return and supply air of the job are left out: they are its own', () => {
  const read = statesFromCsv(
    emptyJob('t'),
    'Point,Name,Dry bulb (°F),Relative humidity (%)\nR,Return air,75,50\nA,Out,95,40',
    'ip',
  );
  expect(read).toMatchObject({ ok: true, count: 1, leftOut: 1 });
});

test.each([
  ['', { code: 'empty' }],
  ['\r\n\r\n', { code: 'empty' }],
  ['Dry bulb (°F),Wet bulb (°F)\n', { code: 'empty' }],
  ['75', { code: 'noHumidity' }],
  ['Name,Wet bulb\nx,60', { code: 'noTemperature' }],
  ['75,50\n80,damp', { code: 'notANumber', line: 2, column: 'relativeHumidity', text: 'damp' }],
  ['Out,warm,50', { code: 'notANumber', line: 1, column: 'dryBulb', text: 'warm' }],
  ['once,upon,a,time', { code: 'notANumber', line: 1, column: 'dryBulb', text: 'upon' }],
  ['75,50\n,50', { code: 'missing', line: 2, column: 'dryBulb', text: '' }],
  ['75,500', { code: 'above', line: 1, column: 'relativeHumidity', text: '500' }],
  ['900,50', { code: 'above', line: 1, column: 'dryBulb', text: '900' }],
  ['Dry bulb,Wet bulb\n60,75', { code: 'cannotBe', line: 2, column: 'wetBulb', text: '60 75' }],
  ['75,50\n'.repeat(9), { code: 'tooMany', count: 9, room: 8 }],
  ['7'.repeat(20_001), { code: 'tooLong' }],
])('%j is refused whole, with what is wrong and where', (text, problem) => {
  expect(statesFromCsv(chartWith([{ dryBulb: '70', relativeHumidity: '40' }]), text, 'ip')).toEqual({
    ok: false,
    problem,
  });
});

test('no text makes it throw, and what it takes can be drawn', () => {
  const wild = fc.oneof(
    fc.string({ maxLength: 80 }),
    fc.string({
      maxLength: 80,
      unit: fc.constantFrom('7', '5', ',', ';', '\n', '"', 'a', '.', '-', '%', '°', 'C', '\t'),
    }),
  );
  fc.assert(
    fc.property(wild, (text) => {
      const read = statesFromCsv(emptyJob('t'), text, 'ip');
      if (read.ok) for (const { air } of namedStates(applyEdits(emptyJob('t'), read.edits))) expect(air.ok).toBe(true);
    }),
    { numRuns: 1000 },
  );
});
