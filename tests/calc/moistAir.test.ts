import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CalcError, limits, type MoistAir, moistAir, saturationHumidityRatio } from '../../src/calc/index.ts';

/** Every state that the limits allow: air that water could not stay in is left out. */
const anyState = fc
  .record({
    dryBulb: fc.double({ min: limits.dryBulb[0], max: limits.dryBulb[1], noNaN: true }),
    relativeHumidity: fc.double({ min: 0, max: 1, noNaN: true }),
    pressure: fc.double({ min: limits.pressure[0], max: limits.pressure[1], noNaN: true }),
  })
  .map((input): MoistAir | null => {
    try {
      return moistAir(input);
    } catch (error) {
      if (error instanceof CalcError && error.code === 'beyondEquations') return null;
      throw error;
    }
  })
  .filter((air) => air !== null);

const runs = { numRuns: 3000, seed: 20 };

describe('moistAir', () => {
  test('takes sea level when no pressure is given', () => {
    expect(moistAir({ dryBulb: 25, relativeHumidity: 0.5 })).toEqual(
      moistAir({ dryBulb: 25, relativeHumidity: 0.5, pressure: 101325 }),
    );
  });

  test('returns what was given as it was given', () => {
    expect(moistAir({ dryBulb: 26.7, wetBulb: 19.4 }).wetBulb).toBe(19.4);
    expect(moistAir({ dryBulb: 26.7, dewPoint: 12.3 }).dewPoint).toBe(12.3);
    expect(moistAir({ dryBulb: 26.7, relativeHumidity: 0.37 }).relativeHumidity).toBe(0.37);
    expect(moistAir({ dryBulb: 26.7, humidityRatio: 0.0101 }).humidityRatio).toBe(0.0101);
  });

  test('gives the same state back from each of its five measures of humidity', () => {
    fc.assert(
      fc.property(anyState, (air) => {
        const { dryBulb, pressure } = air;
        for (const key of ['relativeHumidity', 'humidityRatio', 'enthalpy', 'dewPoint', 'wetBulb'] as const) {
          // There the wet bulb has two answers, and below −100 °C the dew point has none: both are tested on their own.
          if (key === 'wetBulb' && air.wetBulb < 0 && air.wetBulb > -3) continue;
          if (key === 'dewPoint' && air.dewPoint <= limits.dewPoint[0]) continue;
          const back = moistAir({ dryBulb, pressure, [key]: air[key] });
          expect(back.humidityRatio).toBeGreaterThanOrEqual(0);
          const distance = Math.abs(back.humidityRatio - air.humidityRatio);
          expect(distance, `${key} of ${JSON.stringify(air)}`).toBeLessThan(2e-9 + 1e-7 * air.humidityRatio);
        }
      }),
      runs,
    );
  });

  test('keeps dew point, wet bulb and dry bulb in order, and humidity between nothing and saturation', () => {
    fc.assert(
      fc.property(anyState, (air) => {
        expect(air.humidityRatio).toBeGreaterThanOrEqual(0);
        expect(air.relativeHumidity).toBeGreaterThanOrEqual(0);
        expect(air.relativeHumidity).toBeLessThanOrEqual(1);
        expect(air.wetBulb).toBeLessThanOrEqual(air.dryBulb);
        expect(air.dewPoint).toBeLessThanOrEqual(air.wetBulb + 1e-6);
        expect(air.vaporPressure).toBeLessThan(air.pressure);
        expect(air.density * air.specificVolume).toBeCloseTo(1 + air.humidityRatio, 12);
      }),
      runs,
    );
  });

  test('never gives a number that is not finite', () => {
    fc.assert(
      fc.property(anyState, (air) => {
        expect(Object.values(air).filter((value) => !Number.isFinite(value))).toEqual([]);
      }),
      runs,
    );
  });

  test('rises with relative humidity in every measure of humidity', () => {
    fc.assert(
      fc.property(anyState, fc.double({ min: 0, max: 1, noNaN: true }), ({ dryBulb, pressure, ...air }, share) => {
        const less = moistAir({ dryBulb, pressure, relativeHumidity: share * air.relativeHumidity });
        expect(less.humidityRatio).toBeLessThanOrEqual(air.humidityRatio);
        expect(less.enthalpy).toBeLessThanOrEqual(air.enthalpy + 1e-9);
        expect(less.dewPoint).toBeLessThanOrEqual(air.dewPoint + 1e-6);
        // At 0 °C on the bulb the two equations do not meet, and the wet bulb jumps by less than this.
        expect(less.wetBulb).toBeLessThanOrEqual(air.wetBulb + 1e-6);
      }),
      runs,
    );
  });

  test('takes what rounding leaves above saturation, and no more', () => {
    const W = saturationHumidityRatio(25, 101325);
    const air = moistAir({ dryBulb: 25, humidityRatio: W * (1 + 5e-10) });
    expect(air.relativeHumidity).toBe(1);
    expect(air.dewPoint).toBeLessThanOrEqual(25);
    expect(() => moistAir({ dryBulb: 25, humidityRatio: W * (1 + 1e-7) })).toThrow(CalcError);
  });

  test('says −100 °C for the dew point of air without water', () => {
    expect(moistAir({ dryBulb: 20, humidityRatio: 0 }).dewPoint).toBe(-100);
  });
});
