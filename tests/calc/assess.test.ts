import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Assessment,
  assess,
  dryAirFlow,
  fromFahrenheit,
  moistAir,
  type Outcome,
  type Step,
  standardPressure,
  type Test,
} from '../../src/calc/index.ts';
import { hostile } from './hostileTest.ts';
import { rows, wholeTest } from './testCase.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};
const waiting = (outcome: Outcome<unknown>) => (outcome.ok ? null : outcome.waiting);
const problem = (outcome: Outcome<unknown>) => (outcome.ok ? null : outcome.problem);
const codes = ({ remarks }: Assessment) => remarks.map(({ code }) => code);

const rating = wholeTest.rating as NonNullable<Test['rating']>;
const withRating = (change: Partial<typeof rating>): Test => ({ ...wholeTest, rating: { ...rating, ...change } });
const empty: Test = {
  ...wholeTest,
  entering: { dryBulb: null, relativeHumidity: null, wetBulb: null },
  leaving: { dryBulb: null, relativeHumidity: null, wetBulb: null },
  airflow: { volumeFlow: null, place: 'unsure', kind: 'unsure', limit: null, sources: null },
  outdoorDryBulb: null,
  fullSpeed: null,
  rating: null,
  blower: { place: 'after coil', power: null, kind: null },
  nominalCapacity: null,
};

describe('assess, on a whole test', () => {
  const whole = assess(wholeTest);

  test('measures, expects and compares net with net', () => {
    const ratio = value(whole.ratio);
    expect(ratio.measured).toBe(value(whole.measured).total);
    expect(ratio.expected).toBe(value(whole.expected).total);
    expect(ratio.value).toBe(ratio.measured / ratio.expected);
    expect(ratio.value).toBeGreaterThan(0.85);
    expect(ratio.value).toBeLessThan(0.95);
  });

  test('gives a verdict with the ends of the range', () => {
    const verdict = value(whole.verdict);
    expect(verdict).toMatchObject({ outcome: 'cannotTell', line: 0.9, confidence: 0.9, by: 'firstOrder' });
    expect(verdict.low).toBeLessThan(value(whole.ratio).interval.low);
    expect(verdict.high).toBeGreaterThan(value(whole.ratio).interval.high);
    expect(whole.remarks).toEqual([]);
  });

  test('is plain data: a copy through JSON is the same', () => {
    expect(JSON.parse(JSON.stringify(whole))).toEqual(whole);
  });
});

describe('assess, on a test that is not finished', () => {
  test('names every field it waits for', () => {
    const { entering, measured, expected, ratio, verdict, remarks } = assess(empty);
    expect(waiting(entering)).toEqual(['entering.dryBulb', 'entering.humidity']);
    expect(waiting(measured)).toEqual([
      'entering.dryBulb',
      'entering.humidity',
      'leaving.dryBulb',
      'leaving.humidity',
      'airflow.volumeFlow',
    ]);
    expect(waiting(expected)).toEqual(['entering.dryBulb', 'entering.humidity', 'outdoorDryBulb', 'rating']);
    expect(waiting(verdict)).toEqual([...new Set([...(waiting(ratio) ?? []), 'fullSpeed'])]);
    expect(remarks).toEqual([]);
  });

  test('measures before anything is known of the rating', () => {
    const { measured, expected } = assess({ ...wholeTest, outdoorDryBulb: null, rating: null });
    expect(measured.ok).toBe(true);
    expect(waiting(expected)).toEqual(['outdoorDryBulb', 'rating']);
  });

  test('expects before the airflow is known, where neither the table nor a blower needs it', () => {
    const airflow = { ...wholeTest.airflow, volumeFlow: null };
    expect(assess({ ...wholeTest, airflow }).expected).toEqual(assess(wholeTest).expected);
    const flows = rating.rows.map((row) => ({ ...row, dryAirFlow: 0.68 }));
    expect(waiting(assess({ ...withRating({ rows: flows }), airflow }).expected)).toEqual(['airflow.volumeFlow']);
  });

  test('waits for the figures of the cell, and only of the cell', () => {
    const hole = (i: number) => rating.rows.map((row, at) => (at === i ? { ...row, total: null } : row));
    expect(waiting(assess(withRating({ rows: hole(3) })).expected)).toEqual(['rating']);
    const onTheRow = { ...withRating({ rows: hole(0) }), outdoorDryBulb: fromFahrenheit(95) };
    expect(assess(onTheRow).expected.ok).toBe(true);
    expect(waiting(assess(withRating({ rows: [] })).expected)).toEqual(['rating']);
  });

  test('waits for a second row away from a single one, and reads it near', () => {
    const single = withRating({ rows: rows.filter(({ outdoorDryBulb }) => outdoorDryBulb > 33) });
    expect(waiting(assess(single).expected)).toEqual(['rating']);
    expect(assess({ ...single, outdoorDryBulb: fromFahrenheit(94.6) }).expected.ok).toBe(true);
  });
});

describe('assess, on bad values', () => {
  test.each([
    [
      'humidity in percent',
      { entering: { dryBulb: 24, relativeHumidity: 50, wetBulb: null } },
      'entering',
      'outOfRange',
      'entering.relativeHumidity',
    ],
    [
      'a wet bulb above the dry bulb',
      { leaving: { dryBulb: 13, relativeHumidity: null, wetBulb: 14 } },
      'leaving',
      'wetBulbAboveDryBulb',
      'leaving.wetBulb',
    ],
    [
      'two humidities',
      { leaving: { dryBulb: 13, relativeHumidity: 0.9, wetBulb: 12 } },
      'leaving',
      'oneHumidityNeeded',
      'leaving.humidity',
    ],
    ['a pressure of the moon', { barometer: 100 }, 'entering', 'outOfRange', 'barometer'],
    ['a height that is no number', { altitude: Number.NaN }, 'leaving', 'notFinite', 'altitude'],
    [
      'an airflow below zero',
      { airflow: { ...wholeTest.airflow, volumeFlow: -1 } },
      'measured',
      'outOfRange',
      'airflow.volumeFlow',
    ],
    [
      'a blower power below zero',
      { blower: { place: 'after coil', power: -1, kind: null } },
      'measured',
      'outOfRange',
      'blower.power',
    ],
    [
      'an outdoor temperature that is no number',
      { outdoorDryBulb: Number.NaN },
      'expected',
      'notFinite',
      'outdoorDryBulb',
    ],
    ['outdoors beyond the table', { outdoorDryBulb: 45 }, 'expected', 'outsideTable', 'outdoorDryBulb'],
    ['a size below zero', { nominalCapacity: -3 }, 'expected', 'notPositive', 'nominalCapacity'],
    [
      'a rated total of zero',
      { rating: { ...rating, rows: rating.rows.map((row) => ({ ...row, total: 0 })) } },
      'expected',
      'notPositive',
      'rating.total',
    ],
    [
      'a blower power in the rating below zero',
      { rating: { ...rating, blowerPower: -1 } },
      'expected',
      'outOfRange',
      'rating.blowerPower',
    ],
  ] as readonly [string, Partial<Test>, 'entering' | 'leaving' | 'measured' | 'expected', string, string][])(
    'has a problem with %s and names its field',
    (_, change, part, code, quantity) => {
      expect(problem(assess({ ...wholeTest, ...change })[part])).toMatchObject({ code, quantity });
    },
  );

  test('keeps every problem whole in JSON, whatever the value was', () => {
    const found = problem(assess({ ...wholeTest, altitude: Number.NaN }).entering);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });
});

/** Whether every number anywhere inside is finite. */
function allFinite(inside: unknown): boolean {
  if (typeof inside === 'number') return Number.isFinite(inside);
  return typeof inside !== 'object' || inside === null || Object.values(inside).every(allFinite);
}

describe('assess, on hostile tests', () => {
  test('never throws, and every number that comes out is finite', () => {
    fc.assert(
      fc.property(hostile, (input) => {
        const steps: Step[] = [];
        const out = assess(input as Test, (step) => steps.push(step));
        expect(allFinite(out)).toBe(true);
        expect(allFinite(steps)).toBe(true);
        expect(out.checks.length).toBe(6);
      }),
      { numRuns: 2000 },
    );
  });

  test('never throws on what is no test at all', () => {
    fc.assert(
      fc.property(fc.anything(), (input) => {
        expect(problem(assess(input as Test).measured)?.code).toBe('unreadable');
      }),
    );
  });
});

describe('net and gross', () => {
  const blowerHeat = fc.double({ min: 0, max: 900, noNaN: true });

  test('give the same ratio when the same blower heat is stated, on the side of the table', () => {
    fc.assert(
      fc.property(blowerHeat, blowerHeat, (inside, here) => {
        const blower = { ...wholeTest.blower, power: here };
        const gross = rows.map((row) => ({ ...row, total: (row.total as number) + inside }));
        const byNet = assess({ ...withRating({ blowerPower: inside }), blower });
        const byGross = assess({ ...withRating({ basis: 'gross', rows: gross }), blower });
        expect(value(byGross.ratio).value).toBeCloseTo(value(byNet.ratio).value, 9);
      }),
    );
  });

  test('take the own blower off a load measured without it', () => {
    const { measured, ratio } = assess({ ...wholeTest, blower: { place: 'outside probes', power: 430, kind: null } });
    expect(value(measured).basis).toBe('gross');
    expect(value(ratio).measured).toBeCloseTo(value(measured).total - 430, 9);
  });

  test('are not corrected in a net table when nobody knows a blower', () => {
    const { expected, remarks } = assess({
      ...withRating({ blowerPower: null }),
      blower: { place: 'after coil', power: null, kind: null },
    });
    const printed = value(
      assess({ ...withRating({ blowerPower: 0 }), blower: { place: 'after coil', power: 0, kind: null } }).expected,
    );
    expect(value(expected).total).toBeCloseTo(printed.total, 9);
    expect(remarks.map(({ code }) => code)).toEqual(['blowersTakenEqual']);
  });

  test('are met in the middle when nobody knows the basis, and the remark says the price', () => {
    const total = (basis: 'net' | 'gross' | 'unsure') => value(assess(withRating({ basis })).expected).total;
    expect(total('unsure')).toBeCloseTo((total('net') + total('gross')) / 2, 9);
    const [remark] = assess(withRating({ basis: 'unsure' })).remarks;
    expect(remark).toMatchObject({ code: 'basisUnknown', weight: 'doubt', about: 'rating' });
    expect(remark?.amounts[0]?.value).toBeCloseTo((total('net') - total('gross')) / 2 / total('unsure'), 9);
  });
});

describe('the airflow of a test', () => {
  const flow = (place: Test['airflow']['place'], kind: Test['airflow']['kind']) =>
    value(assess({ ...wholeTest, airflow: { volumeFlow: 0.55, place, kind, limit: null, sources: null } }).measured)
      .dryAirFlow;
  const air = (reading: Test['entering']) =>
    moistAir({ dryBulb: reading.dryBulb as number, relativeHumidity: reading.relativeHumidity as number });
  const entering = 0.55 / air(wholeTest.entering).specificVolume;
  const leaving = 0.55 / air(wholeTest.leaving).specificVolume;
  const standard = dryAirFlow({ volumeFlow: 0.55, at: 'standard' });

  test.each([
    ['entering', 'actual', entering],
    ['leaving', 'actual', leaving],
    ['unsure', 'actual', (entering + leaving) / 2],
    ['entering', 'standard', standard],
    ['unsure', 'standard', standard],
    ['entering', 'unsure', (entering + standard) / 2],
    ['leaving', 'unsure', (leaving + standard) / 2],
    ['unsure', 'unsure', (entering + leaving) / 2],
  ] as const)('measured at %s, %s air', (place, kind, expected) => {
    expect(flow(place, kind)).toBeCloseTo(expected, 12);
  });

  test.each([
    ['unsure', 'actual', 'airflowPlaceUnsure'],
    ['entering', 'unsure', 'airflowKindUnsure'],
    ['unsure', 'unsure', 'airflowPlaceAndKindUnsure'],
  ] as const)('%s and %s: says what knowing is worth', (place, kind, code) => {
    const { remarks } = assess({ ...wholeTest, airflow: { ...wholeTest.airflow, place, kind } });
    const [remark] = remarks.filter((found) => found.code === code);
    expect(remark).toMatchObject({ weight: 'note', about: 'airflow' });
    expect(remark?.amounts[0]?.value).toBeGreaterThan(0.01);
    expect(remark?.amounts[0]?.value).toBeLessThan(0.03);
  });

  test('is not asked about the place of standard air', () => {
    expect(
      codes(assess({ ...wholeTest, airflow: { ...wholeTest.airflow, place: 'unsure', kind: 'standard' } })),
    ).toEqual([]);
  });
});

test('a barometer on the spot outranks the height', () => {
  expect(assess({ ...wholeTest, altitude: 1500 }).pressure).toBe(standardPressure(1500));
  expect(assess({ ...wholeTest, altitude: 1500, barometer: 84e3 }).pressure).toBe(84e3);
});

test('every result opens into steps that end in it, and the two states can be told apart', () => {
  const steps: Step[] = [];
  const out = assess(
    { ...wholeTest, altitude: 500, blower: { place: 'outside probes', power: null, kind: null } },
    (step) => steps.push(step),
  );
  const given = new Map(steps.map(({ id, gives }) => [id, gives.value]));
  const own = steps.map(({ id }) => id).filter((id) => !id.includes('moistAir'));
  expect(new Set(own).size).toBe(own.length);
  expect(given.get('standardPressure')).toBe(out.pressure);
  expect(given.get('entering.moistAir.humidityRatio')).toBe(value(out.entering).humidityRatio);
  expect(given.get('leaving.moistAir.enthalpy')).toBe(value(out.leaving).enthalpy);
  expect(given.get('dryAirFlow.actual')).toBe(value(out.measured).dryAirFlow);
  expect(given.get('coilLoad.total')).toBe(value(out.measured).total);
  expect(given.get('expectation.net')).toBe(value(out.expected).total);
  expect(given.get('ratio.measured')).toBe(value(out.ratio).measured);
  expect(given.get('ratio')).toBe(value(out.ratio).value);
  expect(given.get('blowerHeat.default')).toBe(given.get('blowerHeat'));
});
