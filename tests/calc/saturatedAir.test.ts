/** Saturated air: its slope against differences of itself, and the way back from an enthalpy. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saturatedVapor } from '../../src/calc/humidityRatio.ts';
import { enthalpy } from '../../src/calc/index.ts';
import { saturatedRatio, saturationTemperature, slopeOfVapor } from '../../src/calc/saturatedAir.ts';

const anyPressure = fc.double({ min: 70_000, max: 105_000, noNaN: true });

test('the humidity ratio of saturated air rises as steeply as its difference over a thousandth of a kelvin says', () => {
  fc.assert(
    fc.property(fc.double({ min: -15, max: 45, noNaN: true }), anyPressure, (t, p) => {
      // The equations over ice and over water meet in a bend at 0.01 °C.
      fc.pre(Math.abs(t - 0.01) > 2e-3);
      const step = 1e-3;
      const difference = (saturatedRatio(t + step, p) - saturatedRatio(t - step, p)) / (2 * step);
      expect(slopeOfVapor(saturatedVapor(t, p), t, p) / difference - 1).toBeLessThan(1e-6);
      expect(slopeOfVapor(saturatedVapor(t, p), t, p) / difference - 1).toBeGreaterThan(-1e-6);
    }),
    { numRuns: 60 },
  );
});

describe('the temperature of saturated air with an enthalpy', () => {
  test('is the one that the enthalpy was worked out at, from however far above it is looked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        anyPressure,
        (t, above, p) => {
          const h = enthalpy(t, saturatedRatio(t, p));
          expect(Math.abs((saturationTemperature(h, p, t + above) as number) - t)).toBeLessThan(1e-7);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('is found in a handful of looks at the curve, as Newton’s method does from above a convex one', () => {
    // Five at the most from forty kelvin above; one that took no true slope would need more than the sixty it is given.
    const h = enthalpy(10, saturatedRatio(10, 101_325));
    expect(Math.abs((saturationTemperature(h, 101_325, 80) as number) - 10)).toBeLessThan(1e-9);
  });

  test('is none where the equations end, at −100 °C', () => {
    // So cold there is next to no vapour: 1.006 kJ/(kg·K) of dry air alone.
    const dry = (t: number) => saturationTemperature(1006 * t, 101_325, 20);
    expect(dry(-101)).toBeNull();
    expect(dry(-1e6)).toBeNull();
    expect(dry(-99)).toBeCloseTo(-99, 1);
  });
});
