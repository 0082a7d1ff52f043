import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { enthalpy } from '../../src/calc/index.ts';
import { differenceUnit, displayUnit, fromSi, toSi, type UnitKey, units } from '../../src/job/units.ts';

const keys = Object.keys(units) as UnitKey[];

/**
 * NIST Special Publication 811 (2008), appendix B.8, as printed there to seven digits; the entries from the definitions have all
 * their digits. Known: memory, and each agrees with the definition it follows from.
 */
const published: readonly (readonly [UnitKey, number, number])[] = [
  ['cfm', 4.719474e-4, 1e-10],
  ['btuh', 2.930711e-1, 1e-7],
  ['mbh', 2.930711e2, 1e-4],
  ['ton', 3.516853e3, 1e-3],
  ['ft', 0.3048, 1e-16],
  ['ft2', 9.290304e-2, 1e-16],
  ['fpm', 5.08e-3, 1e-17],
  ['inHg', 3.386389e3, 1e-3],
  ['inwc', 2.490889e2, 1e-4],
  ['psi', 6.894757e3, 1e-3],
  ['hpa', 100, 0],
  ['kpa', 1000, 0],
  ['lbPerHour', 1.259979e-4, 1e-10],
  ['lbPerFt3', 1.601846e1, 1e-5],
  ['ft3PerLb', 6.242796e-2, 1e-8],
  ['btuPerLbStep', 2326, 0],
  ['btuPerLbF', 4186.8, 1e-9],
  ['degFStep', 5.555556e-1, 1e-7],
  ['m3h', 2.777778e-4, 1e-10],
  ['grainsPerLb', 1.428571e-4, 1e-10],
  ['kw', 1000, 0],
  ['ls', 1e-3, 0],
];

test.each(published)('one %s is the SI value that is published', (unit, expected, tolerance) => {
  expect(Math.abs(toSi(1, unit) - expected)).toBeLessThanOrEqual(tolerance);
});

test.each([
  [32, 0],
  [212, 100],
  [-40, -40],
  [98.6, 37],
  [0, -17.777777778],
] as const)('%d °F is %d °C', (fahrenheit, celsius) => {
  expect(toSi(fahrenheit, 'degF')).toBeCloseTo(celsius, 9);
  expect(fromSi(celsius, 'degF')).toBeCloseTo(fahrenheit, 8);
});

test('a ton is 12 000 Btu/h, and 400 cfm a ton is 53.7 L/s per kW', () => {
  expect(fromSi(toSi(1, 'ton'), 'btuh')).toBeCloseTo(12000, 8);
  // 400 × 0.4719474 L/s over 3.516853 kW.
  expect(fromSi(toSi(400, 'cfmPerTon'), 'lsPerKw')).toBeCloseTo(53.678, 3);
});

test('enthalpy of air in Btu/lb counts from 0 °F, as I-P tables do, and a difference of two does not feel it', () => {
  expect(fromSi(enthalpy(toSi(0, 'degF'), 0), 'btuPerLb')).toBeCloseTo(0, 1);
  // ASHRAE Fundamentals ch. 1 (I-P), eq. 30: h = 0.240·t + W·(1061 + 0.444·t). Known: memory.
  expect(fromSi(enthalpy(toSi(75, 'degF'), 0.0093), 'btuPerLb')).toBeCloseTo(
    0.24 * 75 + 0.0093 * (1061 + 0.444 * 75),
    1,
  );
  expect(fromSi(50000, 'btuPerLb') - fromSi(30000, 'btuPerLb')).toBeCloseTo(20000 / 2326, 9);
});

describe('every unit', () => {
  it('returns a number after the way to SI and back, to 1e-12', () => {
    const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...keys), number, (unit, typed) => {
        const scale = Math.abs(typed) + Math.abs(units[unit].offset) + 1e-9;
        expect(Math.abs(fromSi(toSi(typed, unit), unit) - typed)).toBeLessThanOrEqual(1e-12 * scale);
      }),
    );
  });

  it('has a difference that is the change of SI over one step', () => {
    for (const unit of keys) {
      expect(toSi(1, differenceUnit(unit))).toBeCloseTo(toSi(11, unit) - toSi(10, unit), 9);
    }
  });

  it('stands for the kind it is shown for', () => {
    for (const [kind, { ip, si }] of Object.entries(displayUnit)) {
      expect([units[ip].kind, units[si].kind]).toEqual([kind, kind]);
    }
  });
});
