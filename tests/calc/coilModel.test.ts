import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coilAir } from '../../src/calc/coilModel.ts';
import { leavingAir, moistAir, ratedApparatus, saturationHumidityRatio } from '../../src/calc/index.ts';

const entering = moistAir({ dryBulb: 26.7, wetBulb: 19.4 });

describe('the air of the coil model', () => {
  test('is that of any state of moist air', () => {
    for (const [dryBulb, wetBulb] of [
      [24, 17],
      [24, 24],
      [35, 15],
      [5, -2],
    ] as const) {
      const { humidityRatio, enthalpy } = moistAir({ dryBulb, wetBulb, pressure: 90e3 });
      const air = { dryBulb, wetBulb, pressure: 90e3 };
      expect(coilAir(dryBulb, wetBulb, 90e3)).toEqual({
        ...air,
        humidityRatio: expect.closeTo(humidityRatio, 9),
        enthalpy: expect.closeTo(enthalpy, 3),
      });
    }
  });

  test('is none for a wet bulb above the dry bulb, or below that of perfectly dry air', () => {
    expect(coilAir(24, 24.1, 101325)).toBeNull();
    // Perfectly dry air of 40 °C evaporates water at some 14.5 °C.
    expect(coilAir(40, 14, 101325)).toBeNull();
    expect(coilAir(40, 15, 101325)).not.toBeNull();
  });
});

describe('apparatus dew point and bypass factor of a rating', () => {
  test('are those of any surface and share that missed it, by the enthalpies of the air before and after', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        between(22, 34),
        between(0.45, 0.7),
        between(2, 6),
        between(0, 0.3),
        (dryBulb, humidity, colder, b) => {
          const before = moistAir({ dryBulb, relativeHumidity: humidity });
          const surface = before.dewPoint - colder;
          const mixed = (through: number, missed: number) => through + b * (missed - through);
          const after = moistAir({
            dryBulb: mixed(surface, dryBulb),
            humidityRatio: mixed(saturationHumidityRatio(surface, 101325), before.humidityRatio),
          });
          const total = 0.68 * (before.enthalpy - after.enthalpy);
          const sensible = 0.68 * (1006 + 1860 * after.humidityRatio) * (dryBulb - after.dryBulb);
          const found = ratedApparatus({ entering: before, dryAirFlow: 0.68, total }, sensible);
          expect(found?.bypassFactor).toBeCloseTo(b, 6);
          expect(found?.dewPoint).toBeCloseTo(surface, 5);
        },
      ),
    );
  });

  test('are none where more water would leave the air than it holds', () => {
    expect(ratedApparatus({ entering, dryAirFlow: 0.1, total: 10000 }, 1000)).toBeNull();
  });
});

describe('the air that leaves a coil', () => {
  test('has lost exactly the total, the water’s share of it as latent heat', () => {
    for (const bypassFactor of [0.02, 0.1, 0.25]) {
      const { dryBulb, humidityRatio, sensible } = leavingAir(
        { entering, dryAirFlow: 0.68, total: 10000 },
        bypassFactor,
      )!;
      const after = moistAir({ dryBulb, humidityRatio });
      expect(0.68 * (entering.enthalpy - after.enthalpy)).toBeCloseTo(10000, 3);
      expect(10000 - sensible).toBeCloseTo(0.68 * (entering.humidityRatio - humidityRatio) * (2501e3 + 1860 * 26.7), 3);
    }
  });

  test('of a dry coil has all of its water and has lost all of the total as heat', () => {
    const dry = moistAir({ dryBulb: 30, relativeHumidity: 0.2 });
    const found = leavingAir({ entering: dry, dryAirFlow: 0.68, total: 6000 }, 0.1)!;
    expect(found.sensible).toBe(6000);
    expect(found.humidityRatio).toBe(dry.humidityRatio);
    expect(found.dryBulb).toBeCloseTo(30 - 6000 / (0.68 * (1006 + 1860 * dry.humidityRatio)), 9);
  });

  test('is not known where no surface is cold enough', () => {
    expect(leavingAir({ entering, dryAirFlow: 0.68, total: 1e6 }, 0.1)).toBeNull();
  });
});
