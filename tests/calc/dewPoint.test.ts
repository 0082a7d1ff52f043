import { describe, expect, test } from 'vitest';
import { dewPoint, saturationHumidityRatio } from '../../src/calc/index.ts';

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
  });
});
