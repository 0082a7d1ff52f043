/** The rules of what the table says of a test, and the test of the table, at their limits and with the figures that they name. */
import { describe, expect, test } from 'vitest';
import { type Facts, remarksBy } from '../../src/calc/facts.ts';
import { emptyRating, fromFahrenheit, type RatingRow, ratingTable, type Test } from '../../src/calc/index.ts';
import { ratingRules } from '../../src/calc/ratingRemarks.ts';
import { wholeTest } from './testCase.ts';

type Rating = NonNullable<Test['rating']>;
const none = { test: { ...wholeTest, nominalCapacity: null }, flow: null, rating: null, expected: null } as Facts;
const said = (facts: object) =>
  Object.fromEntries(
    remarksBy(ratingRules, { ...none, ...facts } as Facts).map(({ code, amounts }) => [
      code,
      Object.fromEntries(amounts.map(({ symbol, value }) => [symbol, value])),
    ]),
  );
const rows: readonly RatingRow[] = [30, 35].flatMap((outdoorDryBulb) =>
  [17, 20].map((enteringWetBulb) => ({ outdoorDryBulb, enteringWetBulb, dryAirFlow: 0.5, total: 10_000 })),
);
const table = ratingTable(rows, { basis: 'net', blowerPower: 300 });
const conditions = { outdoorDryBulb: 32, enteringWetBulb: 18, enteringDryBulb: 26, dryAirFlow: 0.5 };
const ratingHere = (change: object = {}) => ({
  table,
  conditions,
  installation: { blowerPower: 400, pressure: 101_325, lineSet: null },
  blowers: { here: 430, inside: 300, assumed: 'none' },
  lines: null,
  ...change,
});
const expectedHere = (change: object = {}) => ({ total: 10_000, outside: [], derates: [], coil: null, ...change });
const flow = (dryAirFlow: number) => ({ dryAirFlow, low: dryAirFlow, high: dryAirFlow });

test('an ordinary test inside its table, and one of which nothing is known, say nothing', () => {
  expect(said({})).toEqual({});
  expect(said({ rating: ratingHere(), flow: flow(0.5), expected: expectedHere() })).toEqual({});
});

describe('a reading beyond the table', () => {
  const at = (change: object, expected: object | null = null) =>
    said({ rating: ratingHere({ conditions: { ...conditions, ...change } }), expected }).outsideTable;

  test('is named with the ends of the table; at an end, give or take rounding, it is inside', () => {
    expect([30, 30 - 1e-10, 35, 35 + 1e-10].map((outdoorDryBulb) => at({ outdoorDryBulb }))).toEqual(
      [1, 2, 3, 4].map(() => undefined),
    );
    expect(at({ outdoorDryBulb: 29.9 })).toEqual({ tₒ: 29.9, tₒₗ: 30, tₒₕ: 35 });
    expect(at({ outdoorDryBulb: 35.1 })).toEqual({ tₒ: 35.1, tₒₗ: 30, tₒₕ: 35 });
    expect(Object.values(at({ enteringWetBulb: 16.9 }) ?? {})).toEqual([16.9, 17, 20]);
    expect(Object.values(at({ dryAirFlow: 0.66 }) ?? {})).toEqual([0.66, 0.35, 0.65]);
    expect(at({ enteringDryBulb: 60 })).toBeUndefined();
    expect(at({ dryAirFlow: undefined })).toBeUndefined();
  });

  test('is none where the expectation knows better: a dry coil, or an airflow of thin air', () => {
    expect(at({ enteringWetBulb: 16 }, expectedHere())).toBeUndefined();
    expect(at({ enteringWetBulb: 16 }, expectedHere({ outside: ['enteringWetBulb'] }))).toBeDefined();
    expect(at({ enteringWetBulb: 16 }, expectedHere({ outside: ['outdoorDryBulb'] }))).toBeUndefined();
  });
});

describe('a block of another airflow', () => {
  const block = (dryAirFlow: number | null, blocks: readonly number[] = [0.5]) => {
    const many = blocks.flatMap((one) => rows.map((row) => ({ ...row, dryAirFlow: one })));
    const bare = rows.map(({ dryAirFlow: _, ...row }) => row);
    const other = ratingTable(blocks.length > 0 ? many : bare, { basis: 'net', blowerPower: 300 });
    return said({ rating: ratingHere({ table: other }), flow: dryAirFlow && flow(dryAirFlow) }).blockAirflow;
  };

  test('is remarked beyond a tenth of it, with both airflows and what one is of the other', () => {
    expect([0.451, 0.5, 0.549].map((one) => block(one))).toEqual([undefined, undefined, undefined]);
    expect(block(0.625)).toEqual({ ṁ: 0.625, ṁᵣ: 0.5, f: 1.25 });
    expect(block(0.4)).toEqual({ ṁ: 0.4, ṁᵣ: 0.5, f: 0.8 });
  });

  test('is none where the table states no airflow, or several, or where none is known here', () => {
    expect(block(0.8, [])).toBeUndefined();
    expect(block(0.8, [0.5, 0.6])).toBeUndefined();
    expect(block(null)).toBeUndefined();
    expect(said({ flow: flow(0.8) })).toEqual({});
  });
});

describe('a capacity at the rating point that is another machine’s', () => {
  const point = { outdoorDryBulb: fromFahrenheit(95), enteringWetBulb: fromFahrenheit(67) };
  const mismatch = (
    list: readonly (Partial<RatingRow> & { total: number | null })[],
    nominalCapacity: number | null = 10_000,
  ) => {
    const rating: Rating = { ...emptyRating, rows: list.map((row) => ({ ...point, ...row })) };
    return said({ test: { ...wholeTest, rating, nominalCapacity } }).nominalMismatch;
  };

  test('is more than 15 % from the nameplate, either way', () => {
    expect([8510, 11_490].map((total) => mismatch([{ total }]))).toEqual([undefined, undefined]);
    expect(mismatch([{ total: 8490 }])).toEqual({ Q: 8490, Qₙ: 10_000 });
    expect(mismatch([{ total: 11_510 }])).toEqual({ Q: 11_510, Qₙ: 10_000 });
  });

  test('is that of the nearest of several airflows, in whatever order', () => {
    expect(mismatch([{ total: 5000 }, { total: 10_400 }, { total: 16_000 }])).toBeUndefined();
    expect(mismatch([{ total: 16_000 }, { total: 8000 }, { total: 5000 }])).toEqual({ Q: 8000, Qₙ: 10_000 });
    expect(mismatch([{ total: null }, { total: Number.NaN }, { total: 7000 }])).toEqual({ Q: 7000, Qₙ: 10_000 });
  });

  test('is looked for within 0.3 K of the rating point alone', () => {
    const { outdoorDryBulb, enteringWetBulb } = point;
    for (const off of [-0.29, 0.29]) {
      expect(mismatch([{ total: 5000, outdoorDryBulb: outdoorDryBulb + off }])).toBeDefined();
      expect(mismatch([{ total: 5000, enteringWetBulb: enteringWetBulb + off }])).toBeDefined();
    }
    for (const off of [-0.31, 0.31, 4]) {
      expect(mismatch([{ total: 5000, outdoorDryBulb: outdoorDryBulb + off }])).toBeUndefined();
      expect(mismatch([{ total: 5000, enteringWetBulb: enteringWetBulb + off }])).toBeUndefined();
    }
  });

  test('is none without a nameplate, or with one of nothing', () => {
    for (const nameplate of [null, 0, -10_000]) expect(mismatch([{ total: 5000 }], nameplate)).toBeUndefined();
    expect(said({ test: { ...wholeTest, rating: null } }).nominalMismatch).toBeUndefined();
  });
});

describe('what is assumed of the rating', () => {
  test('a basis that nobody knows costs half of the blower heat inside, as a share of what is expected', () => {
    const unknown = (basis: Rating['basis'], expected: object | null = expectedHere()) =>
      said({ test: { ...none.test, rating: { ...emptyRating, basis } }, rating: ratingHere(), expected }).basisUnknown;
    expect(unknown('unsure')).toEqual({ Δ: 0.015 });
    expect(unknown('net')).toBeUndefined();
    expect(unknown('gross')).toBeUndefined();
    expect(unknown('unsure', null)).toBeUndefined();
  });

  test.each([
    ['here', 'blowerAssumed', { Pᵦ: 430 }],
    ['inside', 'ratingBlowerAssumed', { Pᵣ: 300 }],
    ['bothByKind', 'blowersByKind', { Pᵦ: 430, Pᵣ: 300 }],
    ['both', 'blowersTakenEqual', { Pᵦ: 430 }],
  ])('a blower power, %s, is named once the airflow is known', (assumed, code, amounts) => {
    const rating = ratingHere({ blowers: { here: 430, inside: 300, assumed } });
    expect(said({ rating, flow: flow(0.5) })).toEqual({ [code]: amounts });
    expect(said({ rating })).toEqual({});
  });

  test('published curves, with the band of their reading', () => {
    const derates = [
      { cause: 'certified', band: 0.5 },
      { cause: 'temperatures', band: 0.04 },
    ];
    const generic = ratingHere({ table: { ...table, from: 'generic' } });
    expect(said({ rating: generic, expected: expectedHere({ derates }) })).toEqual({ genericUsed: { Δ: 0.04 } });
    expect(said({ rating: generic, expected: expectedHere() })).toEqual({ genericUsed: { Δ: 0 } });
    expect(said({ rating: generic })).toEqual({});
  });
});

test('a coil that should be dry is named with the wet bulb at which it turns dry', () => {
  const coil = (dry: boolean) => expectedHere({ coil: { bypassFactor: 0.1, dryOutWetBulb: 17.5, dry } });
  expect(said({ expected: coil(true) })).toEqual({ shouldBeDry: { 't*ₒ': 17.5 } });
  expect(said({ expected: coil(false) })).toEqual({});
});

test('a band by altitude is worth a word from 1 % on', () => {
  const high = (band: number) => said({ expected: expectedHere({ derates: [{ cause: 'altitude', band }] }) });
  expect(high(0.0099)).toEqual({});
  expect(high(0.01)).toEqual({ altitudeBand: { Δ: 0.01 } });
});

test('lines longer, or higher, than the maker allows stop a verdict, and no other caution does', () => {
  const codes = (cautions: readonly string[]) => Object.keys(said({ rating: ratingHere({ lines: { cautions } }) }));
  expect(codes(['beyondMakersLength'])).toEqual(['linesBeyondMaker']);
  expect(codes(['beyondMakersLift'])).toEqual(['linesBeyondMaker']);
  expect(codes(['slowInRiser', 'beyondMakersLift'])).toEqual(['linesBeyondMaker']);
  expect(codes(['slowInRiser'])).toEqual([]);
  expect(codes([])).toEqual([]);
});

test('a table of the low stage stops a verdict where the speed is known, and an unknown speed does by itself', () => {
  const codes = (stage: Rating['stage'], fullSpeed: Test['fullSpeed']) =>
    Object.keys(said({ test: { ...none.test, rating: { ...emptyRating, stage }, fullSpeed } }));
  expect(codes('low', 'oneSpeed')).toEqual(['lowStageTable']);
  expect(codes('low', null)).toEqual([]);
  expect(codes('low', 'unsure')).toEqual(['notFullSpeed']);
  expect(codes('high', 'oneSpeed')).toEqual([]);
});
