import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apparatus, type CoilProcess, moistAir, saturationHumidityRatio } from '../../src/calc/index.ts';

const p = 101325;
const W = (dryBulb: number, relativeHumidity: number) => moistAir({ dryBulb, relativeHumidity }).humidityRatio;
const process: CoilProcess = {
  enteringDryBulb: 24,
  enteringHumidityRatio: W(24, 0.5),
  leavingDryBulb: 13,
  leavingHumidityRatio: W(13, 0.9),
  pressure: p,
};

describe('apparatus', () => {
  test('stands on saturation and on the line of the process', () => {
    const found = apparatus(process);
    const { dewPoint, bypassFactor } = found ?? { dewPoint: Number.NaN, bypassFactor: Number.NaN };
    const surface = saturationHumidityRatio(dewPoint, p);
    const { enteringHumidityRatio, leavingHumidityRatio } = process;
    expect(leavingHumidityRatio).toBeCloseTo(surface + bypassFactor * (enteringHumidityRatio - surface), 12);
    expect(13).toBeCloseTo(dewPoint + bypassFactor * (24 - dewPoint), 9);
  });

  test('gives back any surface and bypass factor that a process was made from', () => {
    const made = fc.record({
      surface: fc.double({ min: 2, max: 20, noNaN: true }),
      bypassFactor: fc.double({ min: 0, max: 0.4, noNaN: true }),
      warmer: fc.double({ min: 4, max: 25, noNaN: true }),
      humidity: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(made, ({ surface, bypassFactor, warmer, humidity }) => {
        const saturated = saturationHumidityRatio(surface, p);
        const enteringDryBulb = surface + warmer;
        // Damper than the surface by a part of what the line may rise before it crosses saturation near the surface.
        const steepest = (saturationHumidityRatio(surface + 0.01, p) - saturated) / 0.01;
        const enteringHumidityRatio = saturated + (0.05 + 0.9 * humidity) * steepest * warmer;
        const found = apparatus({
          enteringDryBulb,
          enteringHumidityRatio,
          leavingDryBulb: surface + bypassFactor * warmer,
          leavingHumidityRatio: saturated + bypassFactor * (enteringHumidityRatio - saturated),
          pressure: p,
        });
        expect(found?.dewPoint).toBeCloseTo(surface, 6);
        expect(found?.bypassFactor).toBeCloseTo(bypassFactor, 6);
      }),
    );
  });

  test.each([
    ['air that leaves as wet as it entered', { leavingHumidityRatio: process.enteringHumidityRatio }],
    ['air that leaves wetter', { enteringHumidityRatio: process.leavingHumidityRatio - 1e-4 }],
    ['air that is not cooled', { leavingDryBulb: 24 }],
    ['air that is heated', { leavingDryBulb: 26 }],
    ['air that is heated and damped', { leavingDryBulb: 26, leavingHumidityRatio: W(24, 0.5) + 1e-3 }],
    ['air beyond saturation on leaving', { leavingHumidityRatio: W(13, 1) + 1e-5 }],
    ['a line that passes above saturation', { leavingDryBulb: 23, leavingHumidityRatio: W(23, 0.2) }],
  ])('is null for %s', (_, change) => {
    expect(apparatus({ ...process, ...change })).toBeNull();
  });

  test('is the leaving state itself when that is saturated, with no air missing the surface', () => {
    const found = apparatus({ ...process, enteringHumidityRatio: W(24, 0.6), leavingHumidityRatio: W(13, 1) });
    expect(found?.dewPoint).toBeCloseTo(13, 6);
    expect(found?.bypassFactor).toBeCloseTo(0, 6);
  });

  test('is the saturated leaving state itself however steep the line is that leads there', () => {
    // From almost saturated air of 25 °C the line to saturation at 5 °C is steeper than the curve there.
    const found = apparatus({
      ...process,
      enteringDryBulb: 25,
      enteringHumidityRatio: W(25, 0.9),
      leavingDryBulb: 5,
      leavingHumidityRatio: saturationHumidityRatio(5, p),
    });
    expect(found).toEqual({ dewPoint: 5, bypassFactor: 0 });
  });

  test('is null where the line falls short of saturation down to where the equations end', () => {
    const dry = { enteringHumidityRatio: 1e-6, leavingHumidityRatio: 1e-7 };
    expect(apparatus({ ...process, ...dry, enteringDryBulb: -40, leavingDryBulb: -60 })).toBeNull();
  });

  test('is found below freezing too', () => {
    const found = apparatus({
      enteringDryBulb: 15,
      enteringHumidityRatio: W(15, 0.32),
      leavingDryBulb: 1.5,
      leavingHumidityRatio: W(1.5, 0.75),
      pressure: p,
    });
    expect(found?.dewPoint).toBeLessThan(0);
    expect(found?.dewPoint).toBeGreaterThan(-5);
    expect(found?.bypassFactor).toBeGreaterThan(0.1);
  });
});
