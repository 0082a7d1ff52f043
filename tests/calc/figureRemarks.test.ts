/** Remarks on single figures of a table: at the edge, beyond it, and with the figures that they name. */
import { describe, expect, test } from 'vitest';
import { type RatingRow, ratingTable, tableRemarks } from '../../src/calc/index.ts';

const watts = (
  outdoorDryBulb: number,
  enteringWetBulb: number,
  total: number | null,
  sensible?: number,
): RatingRow => ({
  outdoorDryBulb,
  enteringWetBulb,
  total,
  ...(sensible === undefined ? {} : { sensible }),
});
const codes = ['dryCell', 'sensibleAboveTotal', 'totalFallsWithWetBulb', 'totalRisesWithOutdoor', 'hole'];
const found = (...rows: readonly RatingRow[]) =>
  tableRemarks(ratingTable(rows, { basis: 'gross', blowerPower: 0 })).filter(({ code }) => codes.includes(code));
const brief = (...rows: readonly RatingRow[]) =>
  found(...rows).map(({ code, amounts }) => [code, ...amounts.map(({ symbol, value }) => `${symbol} ${value}`)]);

describe('a figure of a table', () => {
  test.each([
    [9899, []],
    [9900, ['dryCell']],
    [10_000, ['dryCell']],
    [11_000, ['sensibleAboveTotal']],
  ])('of 10 000 W with %s W of it sensible: %s', (sensible, expected) => {
    expect(found(watts(30, 17, 10_000, sensible)).map(({ code }) => code)).toEqual(expected);
  });

  test('is named by its place, its total and its sensible capacity', () => {
    expect(brief(watts(30, 17, 10_000, 9950), watts(30, 20, 11_000, 8000))).toEqual([
      ['dryCell', 'tₒ 30', 't*₁ 17', 'Q 10000', 'Qₛ 9950'],
    ]);
  });

  test.each([
    [10_000, []],
    [9951, []],
    [9949, [['totalFallsWithWetBulb', 'tₒ 30', 't*₁ 17', 't*₁′ 20', 'Q 10000', 'Q′ 9949']]],
  ])('may fall by half a hundredth with the wet bulb, from 10 000 to %s W', (next, expected) => {
    expect(brief(watts(30, 17, 10_000), watts(30, 20, next))).toEqual(expected);
  });

  test.each([
    [10_000, []],
    [10_049, []],
    [10_051, [['totalRisesWithOutdoor', 'tₒ 30', 't*₁ 17', 'tₒ′ 35', 'Q 10000', 'Q′ 10051']]],
  ])('may rise by half a hundredth outdoors, from 10 000 to %s W', (next, expected) => {
    expect(brief(watts(30, 17, 10_000), watts(35, 17, next))).toEqual(expected);
  });

  test('is compared with the next row of its own axis alone, and with no hole', () => {
    // The next figure in the list belongs to another outdoor temperature, where less is made.
    expect(brief(watts(30, 17, 10_000), watts(30, 20, 11_000), watts(35, 17, 9000), watts(35, 20, 10_000))).toEqual([]);
    expect(brief(watts(30, 17, 10_000), watts(30, 20, null))).toEqual([['hole', 'tₒ 30', 't*₁ 20']]);
  });
});
