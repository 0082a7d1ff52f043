/** What mistakes with the maker's table and the steps from it cost. The figures of the examples are invented. */
import { foot, fromFahrenheit, type Test } from '~/calc/index.ts';
import { lineOf, vaporTubes } from '../tryIt/lines.ts';
import { aloft, type Cost, example, expected, expectedOf, off, share } from './example.ts';

const outdoors =
  (degrees: number) =>
  (test: Test): Test => ({ ...test, outdoorDryBulb: fromFahrenheit(degrees) });
const rating =
  (change: Partial<NonNullable<Test['rating']>>) =>
  (test: Test): Test => ({
    ...test,
    rating: test.rating && { ...test.rating, ...change },
  });
const inLaboratory = (test: Test): Test => ({
  ...outdoors(95)(test),
  entering: { dryBulb: fromFahrenheit(80), relativeHumidity: null, wetBulb: fromFahrenheit(67) },
});
const outside = (test: Test): Test => ({ ...test, blower: { ...test.blower, place: 'outside probes' } });

/** A hundred feet of 3/4 in suction line on three tons of R-410A, where the rating had 25 ft of it. */
function longLine(): Cost {
  const [low, high] = lineOf(100 * foot, 0, vaporTubes.indexOf('3/4'));
  return { about: 'expected', by: [1 / high - 1, 1 / low - 1] };
}

export const expectedCosts = {
  nameForTable: { about: 'expected', by: off(example.nominalCapacity ?? 0, expectedOf(example).total) },
  certifiedForToday: expected(inLaboratory),
  nearestColumn: expected(outdoors(95)),
  shadeForUnit: expected(outdoors(87)),
  grossForNet: expected(rating({ basis: 'net' }), rating({ basis: 'gross' })(example)),
  blowersTakenEqual: expected((test) => ({ ...test, blower: { ...test.blower, power: 300 } })),
  blowerBetween: share(outside, { ...example, blower: { ...example.blower, place: 'after coil' } }),
  longLine: longLine(),
  thinAirForgotten: expected((test) => ({ ...test, altitude: null }), aloft),
} as const satisfies Record<string, Cost>;
