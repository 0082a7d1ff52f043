/** Records of loggers: whatever wrote them, the same readings come out; what cannot be read is counted, with its line. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits } from '../../src/job/edit.ts';
import { type JudgedLog, judgeLog, type LogSaid } from '../../src/job/log/judgeLog.ts';
import { logLimits, type OpenLog, openLog } from '../../src/job/log/openLog.ts';
import { timeOf, timeStyleOf } from '../../src/job/log/times.ts';
import { meansEdits } from '../../src/job/sure/steadyMeans.ts';
import { textOf } from '../../src/job/tableImport/decode.ts';
import { toTest } from '../../src/job/toTest.ts';

const opened = (text: string): OpenLog => {
  const log = openLog(text);
  if (typeof log === 'string') throw new Error(log);
  return log;
};
const said = (log: OpenLog, more: Partial<LogSaid> = {}): LogSaid => ({
  roles: log.heads.map(({ role }) => role),
  temperatures: log.temperatures,
  pressures: log.pressures,
  humidityAs: log.humidityAs,
  pressure: 101_325,
  startedAt: null,
  changedAt: null,
  ...more,
});
const judged = (text: string, more: Partial<LogSaid> = {}): JudgedLog => {
  const log = opened(text);
  const found = judgeLog(log, said(log, more));
  if (typeof found === 'string') throw new Error(found);
  return found;
};

/** Half an hour at one reading a minute: 75 °F and 50 % in, 56 °F and 88 % out, the supply cooling down to it at first. */
const minutes = Array.from({ length: 31 }, (_, minute) => ({
  minute,
  supply: 56 + 12 * Math.exp(-minute / 3),
}));
const two = (count: number) => String(count).padStart(2, '0');

const plain = [
  'Time,Return T (°F),Return RH (%),Supply T (°F),Supply RH (%),Outdoor (°F)',
  ...minutes.map(({ minute, supply }) => `2026-08-12 14:${two(minute)}:00,75.0,50,${supply.toFixed(2)},88,91`),
].join('\n');

const layouts: readonly (readonly [string, string])[] = [
  ['a plain CSV', plain],
  [
    'semicolons, decimal commas and degrees Celsius',
    [
      'Datum;Return °C;Return %rF;Supply °C;Supply %rF',
      ...minutes.map(({ minute, supply }) =>
        [
          `12.08.2026 14:${two(minute)}`,
          '23,89',
          '50,0',
          ((supply - 32) / 1.8).toFixed(2).replace('.', ','),
          '88,0',
        ].join(';'),
      ),
    ].join('\r\n'),
  ],
  [
    'lines about the logger first, a clock with AM and PM, and tabs',
    [
      'Logger 4711',
      'Interval\t60 s',
      '',
      'No\tTime\tReturn temp F\tReturn hum %\tSupply temp F\tSupply hum %',
      ...minutes.map(({ minute, supply }) =>
        [minute + 1, `2:${two(minute)}:00 PM`, '75.0 F', '50 %', `${supply.toFixed(2)} F`, '88 %'].join('\t'),
      ),
    ].join('\n'),
  ],
  [
    'seconds since the start, and titles that say no place',
    [
      'Elapsed,T1 F,RH1,T2 F,RH2',
      ...minutes.map(({ minute, supply }) => [minute * 60, 75, 50, supply.toFixed(2), 88].join(',')),
    ].join('\n'),
  ],
  [
    'seconds since 1970',
    [
      'timestamp,return temp,return rh,supply temp,supply rh',
      ...minutes.map(({ minute, supply }) => [1_786_543_200 + minute * 60, 75, 50, supply.toFixed(2), 88].join(',')),
    ].join('\n'),
  ],
];

describe('a record', () => {
  test.each(layouts)('of %s gives the readings, and the moment since which they are steady', (_, text) => {
    const { steadiness } = judged(text);
    expect(steadiness.means['entering.dryBulb']).toBeCloseTo((75 - 32) / 1.8, 1);
    expect(steadiness.means['entering.humidity']).toBeCloseTo(0.5, 6);
    expect(steadiness.means['leaving.dryBulb']).toBeCloseTo((56 - 32) / 1.8, 1);
    expect(steadiness.means['leaving.humidity']).toBeCloseTo(0.88, 6);
    expect(steadiness.isSteady).toBe(true);
    // The last window still sees the end of the cooling until it begins some minutes after the start.
    const since = ((steadiness.since ?? 0) - steadiness.window.to) / 60 + 30;
    expect(since).toBeGreaterThan(3);
    expect(since).toBeLessThan(18);
  });

  test('is not steady before fifteen minutes of full speed, whatever its readings say', () => {
    const startedAt = new Date(2026, 7, 12, 14, 10).getTime() / 1000;
    const { steadiness } = judged(plain, { startedAt });
    expect(steadiness.isSteady).toBe(false);
    expect(steadiness.notSteady.map(({ code }) => code)).toContain('tooEarly');
  });

  test('with cells that cannot be read says how many rows and on which lines, and uses the rest', () => {
    const lines = plain.split('\n');
    lines[4] = '2026-08-12 14:03:00,75.0,--,56,88,91';
    lines[9] = 'later,75,50,56,88,91';
    const { steadiness, bad } = judged(lines.join('\n'));
    expect(steadiness.counts).toMatchObject({ rows: 31, used: 29, unreadable: 2 });
    expect(bad.map(({ line, text }) => [line, text])).toEqual([
      [5, '--'],
      [10, 'later'],
    ]);
  });

  test('whose clock goes back, or stands, leaves those rows out and counts them', () => {
    const lines = plain.split('\n');
    lines.splice(12, 0, lines[11] ?? '', lines[3] ?? '');
    expect(judged(lines.join('\n')).steadiness.counts).toMatchObject({ repeated: 1, backwards: 1, used: 31 });
  });

  test.each([
    ['', 'empty'],
    ['   \n ', 'empty'],
    ['PK\u0000\u0001\u0002 binary', 'notText'],
    ['a letter to nobody\nwith no figures', 'noRows'],
  ])('that is none (%j) is refused: %s', (text, refusal) => {
    expect(openLog(text)).toBe(refusal);
  });

  test('that is longer than a browser should hold is refused before it is looked at', () => {
    expect(openLog('75,56\n'.repeat(logLimits.letters / 6 + 1))).toBe('tooLong');
  });

  test('of bytes that are no text throws nothing', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        const log = openLog(textOf(bytes));
        if (typeof log !== 'string') judgeLog(log, said(log));
      }),
      { numRuns: 100 },
    );
  });

  test('that lacks columns is judged by those that it has', () => {
    const lines = plain.split('\n').map((line) => line.split(',').slice(0, 2).join(','));
    const { steadiness, trace } = judged(lines.join('\n'), { roles: ['time', 'entering.dryBulb'] });
    expect(steadiness.means['entering.dryBulb']).toBeCloseTo((75 - 32) / 1.8, 6);
    expect(steadiness.trend).toBeNull();
    expect(steadiness.isSteady).toBe(true);
    expect(trace[0]?.capacity).toBeNull();
    // Rows that end too soon lack their last figures, and are counted.
    const short = plain.split('\n').map((line, row) => (row === 7 ? line.split(',').slice(0, 3).join(',') : line));
    expect(judged(short.join('\n')).steadiness.counts).toMatchObject({ used: 30, unreadable: 1 });
  });

  test('with columns in °F and others in °C reads each in its own unit, and a cell that says another in that', () => {
    const mixed = [
      'Time,Return T (°F),Return RH (%),Supply T (°C),Supply RH (%),Outdoor',
      ...minutes.map(({ minute, supply }) => {
        const celsius = (supply - 32) / 1.8;
        return `2026-08-12 14:${two(minute)}:00,75.0,50,${celsius.toFixed(3)},88,${minute % 2 ? '95 F' : '35.0 C'}`;
      }),
    ];
    const { means } = judged(mixed.join('\n')).steadiness;
    expect(means['entering.dryBulb']).toBeCloseTo((75 - 32) / 1.8, 6);
    expect(means['leaving.dryBulb']).toBeCloseTo((56 - 32) / 1.8, 1);
    expect(means.outdoorDryBulb).toBeCloseTo(35, 6);
    // A word of the person on the unit holds for columns that say none.
    expect(opened(plain).ownUnits).toBeNull();
    // 91 °C is no outdoor temperature.
    expect(judgeLog(opened(plain), said(opened(plain), { temperatures: 'degC' }))).toBe('noRows');
  });

  test.each([
    ['Static (in. w.c.)', '0.55', 136.97],
    ['Static pressure Pa', '137', 137],
    ['TESP', '0.55', 136.97],
  ])('with a static pressure (%s) has its mean, and is not steady while that moves', (title, text, pascals) => {
    const of = (last: string) =>
      plain
        .split('\n')
        .map((line, row) => `${line},${row === 0 ? title : row > 28 ? last : text}`)
        .join('\n');
    expect(opened(of(text)).heads.at(-1)?.role).toBe('supplyStatic');
    const { means, isSteady } = judged(of(text)).steadiness;
    expect(means.supplyStatic).toBeCloseTo(pascals, 1);
    expect(isSteady).toBe(true);
    const moved = judged(of(String(Number(text) * 1.3))).steadiness.notSteady;
    expect(moved.map(({ code, column }) => [code, column])).toEqual([['range', 'supplyStatic']]);
  });

  test('without a column for the time is asked for one', () => {
    const log = opened('Return F,Supply F\n75,56\n75,56\n75,56');
    expect(judgeLog(log, said(log))).toBe('noTime');
  });

  test('of any text at all throws nothing', () => {
    fc.assert(
      fc.property(fc.array(fc.array(fc.oneof(fc.string(), fc.double().map(String)), { maxLength: 5 })), (rows) => {
        const log = openLog(rows.map((row) => row.join(',')).join('\n'));
        if (typeof log !== 'string') judgeLog(log, said(log));
      }),
      { numRuns: 200 },
    );
  });

  test('of a hundred thousand rows is read, judged and thinned to what a plot can show', () => {
    const rows = Array.from({ length: 100_000 }, (_, second) => `${second},75,50,${56 + (second % 7) / 100},88`);
    const { trace, steadiness } = judged(['Elapsed s,Return F,Return RH,Supply F,Supply RH', ...rows].join('\n'));
    expect(steadiness.counts.used).toBe(100_000);
    expect(trace.length).toBeLessThanOrEqual(241);
    expect(steadiness.isSteady).toBe(true);
  });
});

describe('a time', () => {
  const at = new Date(2026, 7, 12, 14, 5, 30).getTime() / 1000;
  test.each([
    ['2026-08-12T14:05:30', at],
    ['2026/8/12 14:05:30', at],
    ['08/12/2026 02:05:30 PM', at],
    ['12.08.2026 14:05:30', at],
    ['13/08/26 14:05:30', at + 86_400],
    ['2026-08-12T14:05:30Z', Date.UTC(2026, 7, 12, 14, 5, 30) / 1000],
    ['2026-08-12T14:05:30+02:00', Date.UTC(2026, 7, 12, 12, 5, 30) / 1000],
    ['14:05:30', 14 * 3600 + 330],
    ['12:05 a.m.', 300],
  ])('as %s', (text, seconds) => {
    const style = timeStyleOf([text, text]);
    if (!style) throw new Error('no style');
    expect(timeOf(text, style)).toBe(seconds);
  });
});

test('the means of a steady record go into the fields of the job, and their scatter into its test until they are typed anew', () => {
  const { steadiness } = judged(plain);
  const at = '2026-08-12T14:30:00Z';
  const job = applyEdits(
    demoJob,
    meansEdits(demoJob, steadiness, { stamp: '1', at, measure: 'relativeHumidity', system: 'ip' }),
  );
  expect(job.entered['leaving.dryBulb']).toMatchObject({ unit: 'degF', origin: 'from sheet', at });
  expect(Number(job.entered['leaving.dryBulb']?.text)).toBeCloseTo(56, 1);
  const { scatter } = toTest(job).test;
  expect(scatter).toHaveLength(5);
  expect(scatter[0]?.moves['leaving.dryBulb']).toBeCloseTo(
    steadiness.scatter[0]?.moves['leaving.dryBulb'] ?? Number.NaN,
    4,
  );
  // Wet bulbs of a record are read as wet bulbs from then on.
  const wet = applyEdits(
    demoJob,
    meansEdits(demoJob, steadiness, { stamp: '1', at, measure: 'wetBulb', system: 'ip' }),
  );
  expect(wet.chosen.humidityAs).toBe('wetBulb');
  expect(job.chosen.humidityAs).toBe(demoJob.chosen.humidityAs);
  const typed = applyEdits(job, [
    { slot: 'entered', key: 'leaving.dryBulb', to: { text: '56', unit: 'degF', origin: 'typed' } },
  ]);
  expect(toTest(typed).test.scatter[0]?.moves).not.toHaveProperty('leaving.dryBulb');
});
