/** What a test expects of its rating: which table, whose blower, which line, and what it still waits for. */
import { describe, expect, test } from 'vitest';
import { tableOfRating } from '../../src/calc/expectedHere.ts';
import {
  assess,
  type BlowerKind,
  btuPerHour,
  type Expectation,
  fromFahrenheit,
  standardAirDensity,
  type Test,
} from '../../src/calc/index.ts';
import { rows, wholeTest } from './testCase.ts';

const rating = wholeTest.rating as NonNullable<Test['rating']>;
const withRating = (change: Partial<typeof rating>, more: Partial<Test> = {}): Test => ({
  ...wholeTest,
  ...more,
  rating: { ...rating, ...change },
});
const outcome = (test: Test) => assess(test).expected;
function expected(test: Test): Expectation {
  const found = outcome(test);
  if (!found.ok) throw new Error(JSON.stringify(found));
  return found.value;
}
const waits = (test: Test) => {
  const found = outcome(test);
  return found.ok ? [] : found.waiting;
};

describe('the airflow', () => {
  const airflow = { ...wholeTest.airflow, volumeFlow: null };
  const era: BlowerKind = 'ratedWithBlower';

  // A blower of unknown power is taken by its airflow. Two of which nothing is known are taken alike: in a net table what is put
  // back is taken off again. Half of one, where nobody knows the basis, does not cancel. A gross table has no blower inside.
  test.each<[typeof rating.basis, number | null, BlowerKind | null, number | null, BlowerKind | null, boolean]>([
    ['net', 300, null, 430, null, false],
    ['net', 300, null, null, null, true],
    ['net', null, null, 430, null, true],
    ['net', null, null, null, null, false],
    ['net', null, era, null, null, true],
    ['net', null, null, null, 'electronic', true],
    ['net', null, era, 430, null, true],
    ['unsure', 300, null, 430, null, false],
    ['unsure', 300, null, null, null, true],
    ['unsure', null, null, 430, null, true],
    ['unsure', null, null, null, null, true],
    ['gross', null, null, 430, null, false],
    ['gross', 300, null, null, null, true],
    ['gross', null, null, null, null, true],
  ])('of a %s table with %s W (%s) inside and %s W (%s) here is waited for: %s', (...row) => {
    const [basis, blowerPower, blowerKind, power, kind, isWaitedFor] = row;
    const blower = { ...wholeTest.blower, power, kind };
    const found = waits(withRating({ basis, blowerPower, blowerKind }, { airflow, blower }));
    expect(found).toEqual(isWaitedFor ? ['airflow.volumeFlow'] : []);
  });
});

describe('published curves', () => {
  // At 95 °F outdoors and 80/67 °F indoors, at sea level and at the airflow of the rating, a rating is what is certified.
  const certified = 36_000 * btuPerHour;
  const volumeFlow = 0.6;
  const atRating = {
    entering: { dryBulb: fromFahrenheit(80), relativeHumidity: null, wetBulb: fromFahrenheit(67) },
    outdoorDryBulb: fromFahrenheit(95),
    airflow: { ...wholeTest.airflow, volumeFlow, kind: 'standard' as const },
  };
  const generic = { unit: 'heatPump', stage: 'one', dryAirFlow: volumeFlow * standardAirDensity } as const;
  const byCurves = { from: 'generic', certified, generic, rows: [] } as const;

  test.each([
    ['net', certified + 300 - 430],
    ['unsure', certified + 300 - 430],
    ['gross', certified - 430],
  ] as const)('give the certified capacity back where it was certified, taken as %s', (basis, total) => {
    expect(expected(withRating({ ...byCurves, basis }, atRating)).total).toBeCloseTo(total, 6);
  });

  test('take the airflow of published machines where that of the rating is not known: 394.2 cfm a ton', () => {
    // 0.6 m³/s is 424 cfm for each of 3 tons, more than those had, and more air makes a little more.
    const unknown = withRating({ ...byCurves, generic: { ...generic, dryAirFlow: null }, basis: 'gross' }, atRating);
    expect(expected(unknown).total).toBeGreaterThan(certified - 430 + 30);
    expect(expected(unknown).total).toBeLessThan(1.03 * certified);
  });

  test.each([
    [{ certified: null }, ['rating.certified']],
    [{ generic: null }, ['rating.generic']],
  ])('wait for %o', (change, fields) => {
    expect(waits(withRating({ ...byCurves, ...change }, atRating))).toEqual(fields);
  });

  test('wait for the airflow, which they are for', () => {
    const airflow = { ...wholeTest.airflow, volumeFlow: null };
    expect(waits(withRating(byCurves, { ...atRating, airflow }))).toEqual(['airflow.volumeFlow']);
  });

  test('are not read where the maker’s table stands, whatever was said for them', () => {
    expect(expected(withRating({ certified, generic })).total).toBe(expected(wholeTest).total);
  });
});

test('a gross table stays gross, whatever blower somebody names beside it', () => {
  const { basis, total } = tableOfRating({ ...rating, basis: 'gross' }, 300);
  expect([basis, total]).toEqual(['gross', rows.map((row) => row.total)]);
});

describe('beyond the table', () => {
  const hot = { outdoorDryBulb: fromFahrenheit(100) };

  test('nothing is expected unless it was asked for, and then the line of the last rows runs on', () => {
    expect(outcome(withRating({}, hot))).toMatchObject({ ok: false, problem: { code: 'outsideTable' } });
    const found = expected(withRating({ beyond: 'extend' }, hot));
    expect(found.outside).toEqual(['outdoorDryBulb']);
    const at = (degrees: number) => expected({ ...wholeTest, outdoorDryBulb: fromFahrenheit(degrees) }).total;
    expect(found.total).toBeCloseTo(at(95) + (at(95) - at(90)), 6);
  });
});

describe('a single printed row', () => {
  const hot = rows.filter(({ outdoorDryBulb }) => outdoorDryBulb > 33);
  const damp = rows.filter(({ enteringWetBulb }) => enteringWetBulb > 18);
  const outdoors = (degrees: number) => withRating({ rows: hot }, { outdoorDryBulb: fromFahrenheit(degrees) });
  const indoors = (degrees: number) =>
    withRating(
      { rows: damp },
      { entering: { dryBulb: fromFahrenheit(78), relativeHumidity: null, wetBulb: fromFahrenheit(degrees) } },
    );

  test.each([
    [outdoors, 94.5, []],
    [outdoors, 95.5, []],
    [outdoors, 94.49, ['rating']],
    [outdoors, 95.51, ['rating']],
    [indoors, 66.8, []],
    [indoors, 67.2, []],
    [indoors, 66.79, ['rating']],
    [indoors, 67.21, ['rating']],
  ] as const)('stands for half a degree outdoors and a fifth of the wet bulb, in °F: %#', (from, degrees, fields) => {
    expect(waits(from(degrees))).toEqual(fields);
  });
});

describe('a line set', () => {
  const lineSet = (factor: number) => ({
    equipment: 'split' as const,
    metering: 'indoors' as const,
    maker: { factor, maximumLength: null, maximumLift: null },
    run: null,
  });

  test('leaves the maker’s share of the gross capacity', () => {
    const gross = expected(wholeTest).total + 430;
    expect(expected({ ...wholeTest, lineSet: lineSet(0.95) }).total).toBeCloseTo(0.95 * gross - 430, 6);
  });

  test('that cannot be is a problem of its own field', () => {
    expect(outcome({ ...wholeTest, lineSet: lineSet(4) })).toMatchObject({
      problem: { code: 'outOfRange', quantity: 'lineSet.maker.factor' },
    });
  });
});

test('a blower power that cannot be is a problem of its field in the expectation too', () => {
  expect(outcome({ ...wholeTest, blower: { ...wholeTest.blower, power: -1 } })).toMatchObject({
    problem: { code: 'outOfRange', quantity: 'blower.power' },
  });
});
