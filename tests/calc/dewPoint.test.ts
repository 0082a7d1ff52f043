import { describe, expect, test } from 'vitest';
import { dewPointGuess, magnusSlope } from '../../src/calc/dewPoint.ts';
import { dewPoint, moistAir, saturationHumidityRatio, saturationPressure } from '../../src/calc/index.ts';

const pressures = [50e3, 70e3, 101325, 110e3];

describe('dew point', () => {
  test('is the temperature at which air with that much water is saturated, to 1e-6 K', () => {
    for (const p of pressures) {
      for (let t = -99.5; t < 65; t += 0.25) {
        expect(Math.abs(dewPoint(saturationHumidityRatio(t, p), p) - t), `${t} °C, ${p} Pa`).toBeLessThan(1e-6);
      }
    }
  });

  test('goes over the bend of the saturation curve at 0.01 °C without losing its way', () => {
    for (const p of pressures) {
      for (let t = -0.06; t < 0.08; t += 0.0007) {
        expect(Math.abs(dewPoint(saturationHumidityRatio(t, p), p) - t), `${t} °C, ${p} Pa`).toBeLessThan(1e-6);
      }
    }
  });

  test('is −100 °C, where the equation for ice begins, for anything drier', () => {
    expect(dewPoint(0, 101325)).toBe(-100);
    expect(dewPoint(1e-9, 101325)).toBe(-100);
    for (const p of pressures) {
      const driest = saturationHumidityRatio(-100, p);
      expect(dewPoint(0.9999 * driest, p)).toBe(-100);
      expect(dewPoint(1.001 * driest, p)).toBeGreaterThan(-100);
      // Ice at −100 °C gives 0.2 of its vapour pressure more with a kelvin.
      expect(dewPoint(1.002 * driest, p)).toBeCloseTo(-99.99, 2);
    }
  });
});

describe('the first guess', () => {
  test('is the Magnus formula over liquid and over ice, within 0.05 K from −40 to 50 °C', () => {
    for (let t = -40; t <= 50; t += 0.5) {
      const { vaporPressure } = moistAir({ dryBulb: t, relativeHumidity: 1 });
      expect(Math.abs(dewPointGuess(vaporPressure) - t), `${t} °C`).toBeLessThan(0.05);
    }
  });

  test('has the slope of the saturation curve, by a difference of 0.02 K, within 1 %', () => {
    const log = (t: number) => Math.log(saturationPressure(t));
    for (let t = -39.75; t <= 50; t += 0.5) {
      expect(Math.abs((magnusSlope(t) * 0.02) / (log(t + 0.01) - log(t - 0.01)) - 1), `${t} °C`).toBeLessThan(0.01);
    }
  });
});
