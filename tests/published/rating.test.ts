import { expect, test } from 'vitest';
import * as airflowCurve from './airflowCurve.ts';
import * as coolingCurves from './coolingCurves.ts';
import { californiaDry, californiaWet, eightSets, exampleCoils } from './data/otherModelRows.ts';
import * as ducts from './ducts.ts';
import * as otherModels from './otherModels.ts';
import * as thinAir from './thinAir.ts';

test('every published figure of ratings, thin air and ducts is checked or left out with a reason', () => {
  const count = ({ checks, notOurs = [] }: { checks: readonly unknown[]; notOurs?: readonly unknown[] }) => [
    checks.length,
    notOurs.length,
  ];
  // 186 of temperature, 36 of flow, and four of the eight sets at 24 points each.
  expect(count(coolingCurves)).toEqual([186 + 36 + 4 * 24, 36]);
  expect(count(otherModels)).toEqual([33 + 14 + 2 + 7, 1]);
  expect(airflowCurve.checks.filter(({ source }) => source === 'flowCurve').length).toBe(3);
  expect(count(thinAir)).toEqual([10 + 3 + 10, 10 + 3 + 10]);
  expect(count(ducts)).toEqual([12 + 8, 0]);
  for (const { what, why } of [...coolingCurves.notOurs, ...otherModels.notOurs, ...thinAir.notOurs]) {
    expect(why, what).not.toBe('');
  }
});

/** The band of the reading, and how far another source is from it. */
function within(outdoor: number, wetBulb: number, expected: number, dryBulb = 80, cfm = 400) {
  const { derates, total } = otherModels.generic(outdoor, wetBulb, dryBulb, cfm);
  const band = derates.find(({ cause }) => cause === 'temperatures')?.band ?? Number.NaN;
  const certified = otherModels.generic(95, 67).total;
  return { band, distance: Math.abs(expected / (total / certified) - 1) };
}

const others = [
  ...eightSets.flatMap(([o, w, mean, farthest]) => [
    ['the lowest of eight sets', o, w, mean - farthest] as const,
    ['the highest of eight sets', o, w, mean + farthest] as const,
  ]),
  ...exampleCoils.map(([name, o, w, expected]) => [name, o, w, expected] as const),
  ...californiaWet
    .filter(([, , cfm]) => cfm === 400)
    .map(([o, w, , expected]) => ['California', o, w, expected] as const),
];

test.each(others)(
  'the band of the published curves holds %s at %d °F outdoors, %d °F wet bulb',
  (_, o, w, expected) => {
    const { band, distance } = within(o, w, expected);
    expect(distance).toBeLessThanOrEqual(band + 0.0015);
  },
);

test.each(californiaDry)('the band of a dry coil holds California’s at %d °F', (dryBulb, expected) => {
  const { band, distance } = within(95, 55, expected, dryBulb);
  expect(distance).toBeLessThanOrEqual(band);
});
