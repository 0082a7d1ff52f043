import { describe, expect, test } from 'vitest';
import { enhancement, factor, factorSlope } from '../../src/calc/enhancement.ts';
import { saturationPressure } from '../../src/calc/index.ts';
import { logCurve, logCurveSlope, triplePoint } from '../../src/calc/saturation.ts';
import { refit } from '../published/fitEnhancement.ts';

describe('saturation pressure', () => {
  test('goes from ice to liquid at 0.01 °C without a step', () => {
    const ice = saturationPressure(triplePoint - 1e-12);
    const liquid = saturationPressure(triplePoint);
    expect(Math.abs(liquid / ice - 1)).toBeLessThan(1e-7);
  });

  test('switching at 0 °C instead would leave a step, so it does not', () => {
    const [below, above] = [saturationPressure(-1e-9), saturationPressure(1e-9)];
    expect(Math.abs(above / below - 1)).toBeLessThan(1e-9);
  });

  test('rises all the way', () => {
    for (let t = -100; t < 200; t += 0.01) {
      expect(saturationPressure(Math.min(200, t + 0.01))).toBeGreaterThan(saturationPressure(t));
    }
  });

  test('has the slope that its inverses are led by', () => {
    for (const t of [-99, -40, -10, 0, 0.5, 20, 60, 150]) {
      expect(logCurveSlope(t)).toBeCloseTo((logCurve(t + 1e-3) - logCurve(t - 1e-3)) / 2e-3, 7);
    }
  });
});

describe('enhancement factor', () => {
  test('has the slope that its inverses are led by', () => {
    for (const t of [-60, 0, 30, 90]) {
      for (const p of [50e3, 101325]) {
        expect(factorSlope(t, p)).toBeCloseTo((factor(t + 0.01, p) - factor(t - 0.01, p)) / 0.02, 9);
      }
    }
  });

  test('is what the fit to two thirds of the real-gas states gives, and the third that it has not seen agrees', () => {
    const { coefficients, used, held } = refit();
    for (const [key, value] of Object.entries(enhancement)) {
      expect(coefficients[key as keyof typeof enhancement] / value, key).toBeCloseTo(1, 9);
    }
    expect(used).toBeLessThan(80);
    expect(held).toBeLessThan(80);
  });
});
