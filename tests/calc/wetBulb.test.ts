import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { humidityRatioFromWetBulb, moistAir, saturationHumidityRatio, wetBulb } from '../../src/calc/index.ts';
import { wetBulbGuess } from '../../src/calc/wetBulb.ts';

const seaLevel = 101325;

describe('wet bulb', () => {
  test('is the dry bulb of saturated air', () => {
    for (const t of [-60, -5, 0, 0.005, 5, 25, 60]) {
      expect(wetBulb(t, saturationHumidityRatio(t, seaLevel), seaLevel)).toBeCloseTo(t, 7);
    }
  });

  test('is found to 1e-6 K over the bend of the saturation curve at 0.01 °C', () => {
    for (const p of [60e3, seaLevel]) {
      for (let tw = 0; tw < 0.05; tw += 0.0007) {
        for (const t of [0.05, 0.2, 1, 4]) {
          const found = wetBulb(t, humidityRatioFromWetBulb(t, tw, p), p);
          expect(Math.abs(found - tw), `${t}/${tw} °C`).toBeLessThan(1e-6);
        }
      }
    }
  });

  test('is found to 1e-6 K: a millionth of a kelvin to either side, the equation has passed the humidity ratio', () => {
    const inputs = fc.record({
      t: fc.double({ min: -40, max: 70, noNaN: true }),
      rh: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      p: fc.double({ min: 50e3, max: 110e3, noNaN: true }),
    });
    fc.assert(
      fc.property(inputs, ({ t, rh, p }) => {
        const { humidityRatio, wetBulb: tw } = moistAir({ dryBulb: t, relativeHumidity: rh, pressure: p });
        if (Math.abs(tw) < 2e-6 || tw > t - 2e-6) return;
        expect(humidityRatioFromWetBulb(t, tw + 1e-6, p)).toBeGreaterThan(humidityRatio);
        expect(belowOrDry(t, tw - 1e-6, p)).toBeLessThan(humidityRatio);
      }),
      { numRuns: 3000, seed: 21 },
    );
  });
});

test('the search begins within 0.1 K of what it finds, in rooms from 20 to 50 °C and from 30 % on', () => {
  for (const pressure of [70e3, seaLevel])
    for (let dryBulb = 20; dryBulb <= 50; dryBulb += 5)
      for (const relativeHumidity of [0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.97]) {
        const air = moistAir({ dryBulb, relativeHumidity, pressure });
        const off = wetBulbGuess(dryBulb, air.humidityRatio, pressure) - air.wetBulb;
        expect(Math.abs(off), `${dryBulb} °C, ${relativeHumidity}`).toBeLessThan(0.1);
      }
});

function belowOrDry(t: number, tw: number, p: number): number {
  try {
    return humidityRatioFromWetBulb(t, tw, p);
  } catch {
    return -1;
  }
}

/**
 * At 0 °C on the bulb the equations for liquid and for ice do not meet: between these two humidity ratios either fits.
 * COMPUTED outside with psychrolib: at 5 °C and sea level 0.001756 (liquid) and 0.001990 (ice).
 */
describe('where two wet bulbs fit one humidity ratio, around 0 °C', () => {
  const liquidBegins = humidityRatioFromWetBulb(5, 0, seaLevel);
  const iceEnds = humidityRatioFromWetBulb(5, -1e-9, seaLevel);

  test('the band is where the ideal-gas library has it, within the enhancement factor’s worth', () => {
    expect(liquidBegins).toBeCloseTo(0.001756, 4);
    expect(iceEnds).toBeCloseTo(0.00199, 4);
    expect(iceEnds - liquidBegins).toBeGreaterThan(0.0002);
  });

  test('the liquid one is given', () => {
    for (const share of [0, 0.01, 0.3, 0.7, 0.99]) {
      const W = liquidBegins + share * (iceEnds - liquidBegins);
      const tw = wetBulb(5, W, seaLevel);
      expect(tw).toBeGreaterThanOrEqual(0);
      expect(humidityRatioFromWetBulb(5, tw, seaLevel)).toBeCloseTo(W, 10);
    }
  });

  test('ice is given right below the band, and it jumps from there to 0 °C', () => {
    const below = wetBulb(5, liquidBegins - 1e-9, seaLevel);
    expect(below).toBeLessThan(-0.3);
    expect(below).toBeGreaterThan(-1);
    expect(wetBulb(5, liquidBegins, seaLevel)).toBeCloseTo(0, 6);
  });

  test('an ice bulb that is given stays as given, though liquid fits too', () => {
    const air = moistAir({ dryBulb: 5, wetBulb: -0.2 });
    expect(air.wetBulb).toBe(-0.2);
    expect(wetBulb(5, air.humidityRatio, seaLevel)).toBeGreaterThan(0);
  });
});
