import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CalcError, type CoilReadings, coilLoad, coilProcess, moistAir, type Step } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const entering = moistAir({ dryBulb: 24, relativeHumidity: 0.5 });
const leaving = moistAir({ dryBulb: 13, relativeHumidity: 0.9 });
const readings: CoilReadings = { entering, leaving, dryAirFlow: 0.65 };

const air = fc
  .record({
    dryBulb: fc.double({ min: -10, max: 50, noNaN: true }),
    relativeHumidity: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map((input) => moistAir(input));
const anyReadings = fc.record({
  entering: air,
  leaving: air,
  dryAirFlow: fc.double({ min: 1e-3, max: 10, noNaN: true }),
  blower: fc.record({
    heat: fc.double({ min: 0, max: 5000, noNaN: true }),
    place: fc.constantFrom('before coil' as const, 'after coil' as const, 'outside probes' as const),
  }),
});

describe('coilLoad', () => {
  test('sensible and latent add up to the total, whatever the states', () => {
    fc.assert(
      fc.property(anyReadings, (input) => {
        const { total, sensible, latent } = coilLoad(input);
        expect(sensible + latent).toBeCloseTo(total, 6);
      }),
    );
  });

  test('every number is finite and the condensate is never negative, whatever the states', () => {
    fc.assert(
      fc.property(anyReadings, (input) => {
        const load = coilLoad(input);
        expect(load.condensate).toBeGreaterThanOrEqual(0);
        const numbers = [...Object.values(load), ...Object.values(load.apparatus ?? {})];
        for (const value of numbers) if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      }),
    );
  });

  test('the latent part is the removed water as vapour at the entering dry bulb', () => {
    const { latent, condensate } = coilLoad(readings);
    expect(latent).toBeCloseTo(condensate * (2501e3 + 1860 * 24), 6);
  });

  test('goes with the airflow', () => {
    expect(coilLoad({ ...readings, dryAirFlow: 1.3 }).total).toBeCloseTo(2 * coilLoad(readings).total, 6);
  });

  test('is gross only with the blower outside the probes, and the same total either way', () => {
    const loads = (['before coil', 'after coil', 'outside probes'] as const).map((place) =>
      coilLoad({ ...readings, blower: { heat: 400, place } }),
    );
    expect(loads.map(({ basis }) => basis)).toEqual(['net', 'net', 'gross']);
    expect(new Set(loads.map(({ total }) => total)).size).toBe(1);
  });

  test('shares out nothing where there is no cooling', () => {
    expect(coilLoad({ ...readings, leaving: entering })).toMatchObject({
      total: 0,
      sensible: 0,
      latent: 0,
      sensibleHeatRatio: 0,
      apparatus: null,
    });
  });

  test.each([
    ['two pressures', { leaving: moistAir({ dryBulb: 13, relativeHumidity: 0.9, pressure: 90e3 }) }, 'pressuresDiffer'],
    ['no airflow', { dryAirFlow: 0 }, 'outOfRange'],
    ['an airflow that is no number', { dryAirFlow: Number.NaN }, 'notFinite'],
    ['blower heat below zero', { blower: { heat: -1, place: 'after coil' as const } }, 'outOfRange'],
    ['an enthalpy that is no number', { entering: { ...entering, enthalpy: Number.NaN } }, 'notFinite'],
    ['a leaving one that is none', { leaving: { ...leaving, enthalpy: Number.NEGATIVE_INFINITY } }, 'notFinite'],
  ])('refuses %s', (_, change, code) => {
    expect(codeOf(() => coilLoad({ ...readings, ...change }))).toBe(code);
    expect(() => coilLoad({ ...readings, ...change })).toThrow(CalcError);
  });

  test('takes two pressures that differ by rounding alone for one', () => {
    expect(
      codeOf(() => coilLoad({ ...readings, leaving: { ...leaving, pressure: leaving.pressure + 0.05 } })),
    ).toBeNull();
  });

  test('takes the heat of a blower out of the coil’s own process, on the side on which it stands', () => {
    const process = (place: 'before coil' | 'after coil' | 'outside probes') =>
      coilProcess({ ...readings, blower: { heat: 400, place } });
    const rise = 400 / (0.65 * (1006 + 1860 * entering.humidityRatio));
    expect(process('before coil')).toMatchObject({ enteringDryBulb: expect.closeTo(24 + rise, 9), leavingDryBulb: 13 });
    expect(process('after coil')).toMatchObject({ enteringDryBulb: 24, leavingDryBulb: expect.closeTo(13 - rise, 2) });
    expect(process('outside probes')).toMatchObject({ enteringDryBulb: 24, leavingDryBulb: 13 });
  });

  test('shows the working of the blower’s heat only where a blower stands between the probes', () => {
    const shown = (blower?: CoilReadings['blower']) => {
      const ids: string[] = [];
      coilLoad(blower ? { ...readings, blower } : readings, ({ id }) => ids.push(id));
      return ids.filter((id) => /Coil$/.test(id));
    };
    expect(shown()).toEqual([]);
    expect(shown({ heat: 400, place: 'outside probes' })).toEqual([]);
    expect(shown({ heat: 400, place: 'before coil' })).toEqual(['apparatus.enteringCoil']);
    expect(shown({ heat: 400, place: 'after coil' })).toEqual(['apparatus.leavingCoil']);
  });

  test('opens into steps whose results are the ones it returns', () => {
    const steps: Step[] = [];
    const load = coilLoad({ ...readings, blower: { heat: 400, place: 'after coil' } }, (step) => steps.push(step));
    const given = Object.fromEntries(steps.map(({ id, gives }) => [id, gives.value]));
    expect(given).toEqual({
      'coilLoad.total': load.total,
      'coilLoad.sensible': load.sensible,
      'coilLoad.latent': load.latent,
      'coilLoad.sensibleHeatRatio': load.sensibleHeatRatio,
      'coilLoad.condensate': load.condensate,
      'coilLoad.condensateEnthalpy': load.condensateEnthalpy,
      'apparatus.leavingCoil': expect.closeTo(13 - 400 / (0.65 * (1006 + 1860 * 0.0084)), 3),
      'apparatus.dewPoint': load.apparatus?.dewPoint,
      'apparatus.bypassFactor': load.apparatus?.bypassFactor,
    });
  });
});
