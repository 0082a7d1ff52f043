import {
  btuPerHour,
  cubicFootPerMinute,
  emptyRating,
  emptyTest,
  fromFahrenheit,
  type RatingRow,
  type Test,
} from '../../src/calc/index.ts';

/** Rows of an invented 3-ton table: outdoor and entering wet bulb in °F, total in Btu/h. */
const figures = [
  [85, 62, 33600],
  [85, 67, 36900],
  [95, 62, 31700],
  [95, 67, 34900],
] as const;

export const rows: readonly RatingRow[] = figures.map(([outdoor, wetBulb, total]) => ({
  outdoorDryBulb: fromFahrenheit(outdoor),
  enteringWetBulb: fromFahrenheit(wetBulb),
  total: total * btuPerHour,
}));

/** An invented test with everything given: a 3-ton system at sea level in ordinary weather. */
export const wholeTest: Test = {
  ...emptyTest,
  entering: { dryBulb: fromFahrenheit(75), relativeHumidity: 0.5, wetBulb: null },
  leaving: { dryBulb: fromFahrenheit(56), relativeHumidity: 0.88, wetBulb: null },
  airflow: { volumeFlow: 1200 * cubicFootPerMinute, place: 'entering', kind: 'actual', limit: 0.07, sources: null },
  outdoorDryBulb: fromFahrenheit(91),
  fullSpeed: 'oneSpeed',
  rating: {
    ...emptyRating,
    rows,
    basis: 'net',
    blowerPower: 300,
  },
  blower: { place: 'after coil', power: 430, kind: null },
  nominalCapacity: 36000 * btuPerHour,
};
