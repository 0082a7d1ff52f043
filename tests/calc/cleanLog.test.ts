/** Which rows of a record can be used, and what air a probe has met. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ratioFrom } from '../../src/calc/confidence/airAt.ts';
import { cleanLog } from '../../src/calc/confidence/cleanLog.ts';
import { CalcError, type Log, moistAir, steady } from '../../src/calc/index.ts';

const record = (time: readonly number[], columns: Log['columns'], change: Partial<Log> = {}): Log => {
  return { time, columns, measure: 'relativeHumidity', startedAt: null, ...change };
};
/** Rows a minute apart of an outdoor temperature. */
const minutes = (count: number) => Array.from({ length: count }, (_, i) => 60 * i);

describe('the air that a probe has met', () => {
  const readings = fc.record({
    measure: fc.constantFrom('relativeHumidity' as const, 'wetBulb' as const),
    dryBulb: fc.oneof(
      fc.double({ min: -70, max: 100, noNaN: true }),
      fc.constantFrom(-60, -60.001, 90, 90.001, 0, Number.NaN),
    ),
    /** For a wet bulb as a step down from the dry bulb, so that it is often one. */
    humidity: fc.oneof(
      fc.double({ min: -0.2, max: 1.2, noNaN: true }),
      fc.constantFrom(0, -1e-9, 1, 1 + 1e-9, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
    ),
    depression: fc.double({ min: 0, max: 40, noNaN: true }),
    pressure: fc.oneof(
      fc.double({ min: 45e3, max: 115e3, noNaN: true }),
      fc.constantFrom(50e3, 50e3 - 1e-6, 110e3, 110e3 + 1e-6, Number.NaN),
    ),
  });

  test('is that of a whole state, and no air at all where there is no such state', () => {
    fc.assert(
      fc.property(readings, ({ measure, dryBulb, humidity, depression, pressure }) => {
        const read = measure === 'wetBulb' ? dryBulb - depression * humidity : humidity;
        let expected = Number.NaN;
        try {
          expected = moistAir({ dryBulb, pressure, [measure]: read }).humidityRatio;
        } catch (error) {
          expect(error).toBeInstanceOf(CalcError);
        }
        expect(ratioFrom(measure, dryBulb, read, pressure)).toEqual(
          Number.isNaN(expected) ? Number.NaN : expect.closeTo(expected, 12),
        );
      }),
      { numRuns: 1000 },
    );
  });

  test.each([
    ['relativeHumidity', -60, 1, true],
    ['relativeHumidity', -60.001, 0.5, false],
    ['relativeHumidity', 80, 1, true],
    ['relativeHumidity', 90, 0.5, true],
    ['relativeHumidity', 90.001, 0.5, false],
    ['relativeHumidity', 90, 1, false],
    ['relativeHumidity', 24, 0, true],
    ['relativeHumidity', 24, -0.001, false],
    ['relativeHumidity', 24, 1, true],
    ['relativeHumidity', 24, 1.001, false],
    ['wetBulb', 24, 24, true],
    ['wetBulb', 24, 24.001, false],
    ['wetBulb', 24, 8, true],
    ['wetBulb', 24, 6, false],
    ['wetBulb', 24, -300, false],
    ['wetBulb', 90, 90, false],
  ] as const)('with %s at %d °C and %d: there is some? %s', (measure, dryBulb, humidity, isAir) => {
    // Perfectly dry air of 24 °C has its wet bulb between 7 and 8 °C at sea level; at 90 °C saturated air holds more than its own mass of water.
    expect(Number.isFinite(ratioFrom(measure, dryBulb, humidity, 101_325))).toBe(isAir);
  });

  test.each([
    [49_999, false],
    [50e3, true],
    [110e3, true],
    [110_001, false],
  ])('at %d Pa: there is some? %s', (pressure, isAir) => {
    for (const measure of ['relativeHumidity', 'wetBulb'] as const)
      expect(Number.isFinite(ratioFrom(measure, 24, measure === 'wetBulb' ? 18 : 0.5, pressure))).toBe(isAir);
  });
});

describe('a row of a record', () => {
  test.each([
    ['outdoorDryBulb', [-60, 90], [-60.1, 90.1]],
    ['entering.dryBulb', [-60, 90], [-60.1, 90.1]],
    ['leaving.dryBulb', [-60, 90], [-60.1, 90.1]],
    ['entering.humidity', [0, 1], [-0.001, 1.001]],
    ['leaving.humidity', [0, 1], [-0.001, 1.001]],
    ['supplyStatic', [-1e5, 1e5], [-100_001, 100_001]],
  ] as const)('with %s at its limits is read, beyond them it is not', (column, at, beyond) => {
    const { counts } = cleanLog(record(minutes(5), { [column]: [...at, ...beyond, Number.NaN] }), 180);
    expect([counts.used, counts.unreadable]).toEqual([2, 3]);
  });

  test('with a wet bulb has the limits of a wet bulb', () => {
    const log = record(minutes(4), { 'entering.humidity': [-61, 90, -61.1, 90.1] }, { measure: 'wetBulb' });
    expect(cleanLog(log, 180).counts).toMatchObject({ used: 2, unreadable: 2 });
  });

  test('without a time that a clock can show is not read, nor is one of which one figure is missing', () => {
    const time = [-1e11 - 1, -1e11, 0, 1e11, 1e11 + 1, Number.NaN];
    expect(cleanLog(record(time, { outdoorDryBulb: time.map(() => 30) }), 180)).toMatchObject({
      time: Float64Array.of(-1e11, 0, 1e11),
      counts: { rows: 6, used: 3, unreadable: 3 },
    });
    const holed = { outdoorDryBulb: [30, Number.NaN, 30], supplyStatic: [10, 10, Number.NaN] };
    expect(cleanLog(record(minutes(3), holed), 180).counts).toMatchObject({ used: 1, unreadable: 2 });
  });

  test('whose humidity no air has at the one side is not read, whatever the other side says', () => {
    const columns = {
      'entering.dryBulb': [24, 90, 24],
      'entering.humidity': [0.5, 1, 0.5],
      'leaving.dryBulb': [13, 13, 90],
      'leaving.humidity': [0.9, 0.9, 1],
    };
    const clean = cleanLog(record(minutes(3), columns), 180);
    expect(clean.counts).toMatchObject({ used: 1, unreadable: 2 });
    expect(clean.columns['leaving.dryBulb']).toEqual(Float64Array.of(13));
    expect(clean.humidityRatios.entering?.[0]).toBeCloseTo(
      moistAir({ dryBulb: 24, relativeHumidity: 0.5 }).humidityRatio,
      12,
    );
  });

  test('may have temperatures alone, at both sides or at one', () => {
    const dry = cleanLog(record(minutes(2), { 'entering.dryBulb': [24, 24] }), 180);
    expect([dry.counts.used, dry.humidityRatios]).toEqual([2, {}]);
    const damp = cleanLog(record(minutes(2), { 'leaving.humidity': [0.9, 0.9] }), 180);
    expect([damp.counts.used, damp.humidityRatios]).toEqual([2, {}]);
    const found = steady(record(minutes(20), { 'entering.dryBulb': minutes(20).map(() => 24) }));
    expect([found.isSteady, found.trend, found.means]).toEqual([true, null, { 'entering.dryBulb': 24 }]);
  });

  test('is not missed in a column that was left out as "not there"', () => {
    const columns = { outdoorDryBulb: [30, 31], supplyStatic: undefined } as unknown as Log['columns'];
    const clean = cleanLog(record([0, 60], columns), 180);
    expect([clean.counts.used, Object.keys(clean.columns)]).toEqual([2, ['outdoorDryBulb']]);
  });

  test('counts as repeated at the same time, as gone back before it, until the clock has caught up', () => {
    const time = [0, 60, 60, 30, 60, 59, 120];
    const clean = cleanLog(record(time, { outdoorDryBulb: [1, 2, 3, 4, 5, 6, 7] }), 180);
    expect(clean.counts).toEqual({ rows: 7, used: 3, unreadable: 0, repeated: 2, backwards: 2, gaps: 0 });
    expect(clean.columns.outdoorDryBulb).toEqual(Float64Array.of(1, 2, 7));
  });
});

describe('a gap', () => {
  const every = (time: readonly number[]) => cleanLog(record(time, { outdoorDryBulb: time.map(() => 30) }), 180);

  test('is longer than the rule allows, not as long; and there is none before the first row', () => {
    expect(every([5000, 5180, 5360]).counts.gaps).toBe(0);
    expect(every([5000, 5181, 5362, 5400]).counts.gaps).toBe(2);
  });

  test('is found as the longest between two rows, and none before the first of them', () => {
    const { longestGap } = every([0, 400, 460, 760, 960, 1020]);
    expect(longestGap(0, 5)).toBe(400);
    expect(longestGap(1, 5)).toBe(300);
    expect(longestGap(3, 4)).toBe(200);
    expect(longestGap(4, 5)).toBe(0);
    expect(longestGap(1, 2)).toBe(0);
    expect(longestGap(2, 3)).toBe(300);
  });

  test('a window begins with the first row that is not older than its width', () => {
    const { windowStart } = every([0, 60, 120, 180, 240]);
    expect([
      windowStart(4, 120),
      windowStart(4, 119),
      windowStart(4, 121),
      windowStart(4, 1e6),
      windowStart(0, 60),
    ]).toEqual([2, 3, 2, 0, 0]);
  });
});
