/** What mistakes with the maker's table and the steps from it cost. The figures of the examples are invented. */
import { fahrenheitDegree, fromFahrenheit, lineSet, type Test, tonOfRefrigeration } from '~/calc/index.ts';
import { aloft, type Cost, example, expected, expectedOf, foot, off, share } from './example.ts';

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
  const { factor } = lineSet({
    equipment: 'split',
    metering: 'indoors',
    maker: { factor: null, maximumLength: null, maximumLift: null },
    run: {
      refrigerant: 'R-410A',
      capacity: 3 * tonOfRefrigeration,
      evaporating: fromFahrenheit(45),
      superheat: 15 * fahrenheitDegree,
      liquidTemperature: fromFahrenheit(100),
      subcooling: 10 * fahrenheitDegree,
      vaporTube: '3/4',
      ratedVaporTube: '3/4',
      liquidTube: '3/8',
      length: 100 * foot,
      ratedLength: 25 * foot,
      fittings: 0,
      lift: 0,
    },
  });
  if (!factor) throw new Error('the example has no line factor');
  return { about: 'expected', by: [1 / factor.high - 1, 1 / factor.low - 1] };
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
