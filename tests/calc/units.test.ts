import { expect, test } from 'vitest';
import * as calc from '../../src/calc/index.ts';

/** Conversion factors as published, each with the digits that the source prints. */
const known: readonly (readonly [string, number, number, number])[] = [
  // NIST SP 811 (2008), appendix B.
  ['foot', calc.foot, 0.3048, 0],
  ['pound', calc.pound, 0.45359237, 0],
  ['grain', calc.grain, 6.479891e-5, 1e-15],
  ['Btu (IT)', calc.btu, 1055.05585262, 1e-9],
  ['Btu per hour', calc.btuPerHour, 0.2930711, 5e-8],
  ['ton of refrigeration', calc.tonOfRefrigeration, 3516.853, 5e-4],
  ['cubic foot per minute', calc.cubicFootPerMinute, 4.719474e-4, 5e-11],
  ['pound per cubic foot', calc.poundPerCubicFoot, 16.01846, 5e-6],
  ['pound per square inch', calc.poundPerSquareInch, 6894.757, 5e-4],
  ['inch of water, conventional', calc.inchOfWater, 249.0889, 5e-5],
  ['inch of mercury, conventional', calc.inchOfMercury, 3386.389, 5e-4],
  ['Btu per pound and degree Fahrenheit', calc.btuPerPoundFahrenheit, 4186.8, 1e-9],
  ['cubic foot per pound', calc.cubicFootPerPound, 1 / 16.01846, 5e-8],
];

test.each(known)('%s', (_, ours, published, rounding) => {
  expect(Math.abs(ours - published)).toBeLessThanOrEqual(rounding + 1e-15);
});

test('Fahrenheit and Celsius turn into each other', () => {
  for (const [fahrenheit, celsius] of [
    [-40, -40],
    [32, 0],
    [50, 10],
    [77, 25],
    [212, 100],
  ] as const) {
    expect(calc.fromFahrenheit(fahrenheit)).toBeCloseTo(celsius, 12);
    expect(calc.toFahrenheit(celsius)).toBeCloseTo(fahrenheit, 12);
  }
});

test('standard air is 0.075 lb/ft³ to four digits', () => {
  expect(calc.standardAirDensity / (0.075 * calc.poundPerCubicFoot)).toBeCloseTo(1, 4);
});

test('the altitudes that are taken have pressures that are taken', () => {
  const [low, high] = calc.limits.altitude;
  expect(calc.standardPressure(low)).toBeLessThan(calc.limits.pressure[1]);
  expect(calc.standardPressure(high)).toBeGreaterThan(calc.limits.pressure[0]);
});
