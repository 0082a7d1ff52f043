/** The rules of what the airflow and the pressure say, at their limits. */
import { describe, expect, test } from 'vitest';
import { airflowRules } from '../../src/calc/airflowRemarks.ts';
import { type Facts, remarksBy } from '../../src/calc/facts.ts';
import {
  cubicFootPerMinute,
  standardAirDensity,
  standardPressure,
  type Test,
  tonOfRefrigeration,
} from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';

const flow = { dryAirFlow: 0.6, low: 0.57, high: 0.63 };
const said = (change: Partial<Test>, other: Partial<Facts> = {}) =>
  Object.fromEntries(
    remarksBy(airflowRules, { flow: null, test: { ...wholeTest, ...change }, ...other } as Facts).map(
      ({ code, amounts }) => [code, amounts.map(({ value }) => value)],
    ),
  );

describe('an airflow whose place or kind nobody knows', () => {
  const airflow = (place: Test['airflow']['place'], kind: Test['airflow']['kind']) => ({
    airflow: { ...wholeTest.airflow, place, kind },
  });
  const open = (place: Test['airflow']['place'], kind: Test['airflow']['kind'], other: Partial<Facts> = { flow }) =>
    said({ ...airflow(place, kind), nominalCapacity: null }, other);

  test('is remarked by what is open, with half of what knowing would settle', () => {
    const worth = [expect.closeTo(0.05, 12)];
    expect(open('unsure', 'actual')).toEqual({ airflowPlaceUnsure: worth });
    expect(open('entering', 'unsure')).toEqual({ airflowKindUnsure: worth });
    expect(open('leaving', 'unsure')).toEqual({ airflowKindUnsure: worth });
    expect(open('unsure', 'unsure')).toEqual({ airflowPlaceAndKindUnsure: worth });
  });

  test('leaves nothing open where both are known, and no place for standard air', () => {
    for (const place of ['entering', 'leaving'] as const) expect(open(place, 'actual')).toEqual({});
    for (const place of ['entering', 'leaving', 'unsure'] as const) expect(open(place, 'standard')).toEqual({});
  });

  test('is not remarked where it is not there, or where knowing is worth nothing', () => {
    expect(open('unsure', 'unsure', { flow: null })).toEqual({});
    expect(open('unsure', 'unsure', { flow: { dryAirFlow: 0.6, low: 0.6, high: 0.6 } })).toEqual({});
  });
});

describe('cfm per ton', () => {
  const known = { dryAirFlow: 0.6, low: 0.6, high: 0.6 };
  const perTon = (cfm: number, tons: number | null = 3) => {
    const dryAirFlow = cfm * 3 * cubicFootPerMinute * standardAirDensity;
    const nominalCapacity = tons && tons * tonOfRefrigeration;
    return said({ nominalCapacity }, { flow: { ...known, dryAirFlow } }).airflowPerTon;
  };

  test('are remarked below 250 and above 500, with both limits', () => {
    expect([251, 400, 499].map((cfm) => perTon(cfm))).toEqual([undefined, undefined, undefined]);
    const limits = [250, 500].map((cfm) => expect.closeTo(cfm * cubicFootPerMinute, 12));
    expect(perTon(249)).toEqual([expect.closeTo(249 * cubicFootPerMinute, 9), ...limits]);
    expect(perTon(501)).toEqual([expect.closeTo(501 * cubicFootPerMinute, 9), ...limits]);
  });

  test('are not there without a size above nothing, or without an airflow', () => {
    expect([null, 0, -3].map((tons) => perTon(900, tons))).toEqual([undefined, undefined, undefined]);
    expect(said({}, { flow: null })).toEqual({});
  });
});

describe('a barometer that was corrected to sea level', () => {
  const pressure = (altitude: number | null, barometer: number | null) =>
    said({ altitude, barometer }).seaLevelPressure;

  test('stands more than 3 % from the standard atmosphere of the place', () => {
    for (const altitude of [0, 1600]) {
      const standard = standardPressure(altitude);
      expect([0.971, 1.029].map((share) => pressure(altitude, share * standard))).toEqual([undefined, undefined]);
      for (const share of [0.969, 1.031])
        expect(pressure(altitude, share * standard)).toEqual([share * standard, standard]);
    }
  });

  test('cannot be told where one of the two is not given', () => {
    expect(pressure(null, 80e3)).toBeUndefined();
    expect(pressure(1600, null)).toBeUndefined();
  });

  test('is not remarked where height or pressure is out of range: that is the problem of its field', () => {
    // At each limit, and a little beyond it; the other figure is far from what would go with it.
    expect([-650, -651].map((altitude) => pressure(altitude, 80e3) === undefined)).toEqual([false, true]);
    expect([5500, 5501].map((altitude) => pressure(altitude, 101e3) === undefined)).toEqual([false, true]);
    expect([50e3, 49_999].map((barometer) => pressure(0, barometer) === undefined)).toEqual([false, true]);
    expect([110e3, 110_001].map((barometer) => pressure(0, barometer) === undefined)).toEqual([false, true]);
    expect([Number.NaN, -1e9, 1e9].map((altitude) => pressure(altitude, 80e3))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});
