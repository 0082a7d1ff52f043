/** The rules of what two states of the air say, at their thresholds: at a limit nothing is remarked, beyond it with what figures. */
import { describe, expect, test } from 'vitest';
import { airRules } from '../../src/calc/airRemarks.ts';
import { type Facts, remarksBy } from '../../src/calc/facts.ts';
import { fromFahrenheit, type MoistAir } from '../../src/calc/index.ts';

const air = (dryBulb: number, relativeHumidity: number, humidityRatio: number) =>
  ({ dryBulb, relativeHumidity, humidityRatio }) as MoistAir;
const entering = air(24, 0.5, 0.0093);
const leaving = air(13, 0.9, 0.0084);
const spread = { dryBulb: 0.5, humidityRatio: 0.0004 };
const none = { entering: null, leaving: null, spread: null, load: null } as Facts;
/** Remarks as their code and the figures they name, by their letters. */
const said = (facts: Partial<Facts>) =>
  Object.fromEntries(
    remarksBy(airRules, { ...none, entering, leaving, spread, ...facts }).map(({ code, amounts }) => [
      code,
      Object.fromEntries(amounts.map(({ symbol, value }) => [symbol, value])),
    ]),
  );

test('ordinary air, and readings that are not there, say nothing', () => {
  expect(said({})).toEqual({});
  expect(said({ entering: null })).toEqual({});
  expect(said({ leaving: null })).toEqual({});
});

describe('two dry bulbs', () => {
  test('are told apart beyond a kelvin, and beyond what the probes can err', () => {
    const drop = (kelvin: number, dryBulb: number | null) =>
      Object.keys(
        said({ leaving: air(24 - kelvin, 0.5, 0.0093), spread: dryBulb === null ? null : { ...spread, dryBulb } }),
      ).filter((code) => code === 'swapped' || code === 'noTemperatureDrop');
    expect([1, 1.25, -1, -1.25].map((kelvin) => drop(kelvin, null))).toEqual([
      ['noTemperatureDrop'],
      [],
      ['noTemperatureDrop'],
      ['swapped'],
    ]);
    expect(drop(1.25, 0.5)).toEqual([]);
    expect([2, 2.25, -2, -2.25].map((kelvin) => drop(kelvin, 2))).toEqual([
      ['noTemperatureDrop'],
      [],
      ['noTemperatureDrop'],
      ['swapped'],
    ]);
  });

  test('are both named', () => {
    expect(said({ leaving: air(26, 0.5, 0.0093) }).swapped).toEqual({ 't₁': 24, 't₂': 26 });
    expect(said({ leaving: air(23.5, 0.5, 0.0093) }).noTemperatureDrop).toEqual({ 't₁': 24, 't₂': 23.5 });
  });
});

describe('the water that was taken out', () => {
  const removed = (grams: number, change: Partial<Facts> = {}) =>
    said({
      entering: air(24, 0.5, 0.0078125),
      leaving: air(13, 0.9, 0.0078125 - grams / 1024),
      spread: { dryBulb: 0.5, humidityRatio: 0.5 / 1024 },
      ...change,
    });

  test('is seen beyond what the probes can err', () => {
    expect(removed(0.75)).toEqual({});
    expect(removed(0.5)).toEqual({ latentUnseen: { 'W₁ − W₂': 0.5 / 1024, k·u: 0.5 / 1024 } });
    expect(removed(-0.5)).toEqual({ latentUnseen: { 'W₁ − W₂': -0.5 / 1024, k·u: 0.5 / 1024 } });
    expect(removed(-0.75)).toEqual({ leavingWetter: { 'W₂ − W₁': 0.75 / 1024, k·u: 0.5 / 1024 } });
  });

  test('is not looked for where nothing is known of the probes, or nothing is cooled', () => {
    expect(removed(0, { spread: null })).toEqual({});
    expect(Object.keys(removed(0, { leaving: air(23.5, 0.5, 0.0078125) }))).toEqual(['noTemperatureDrop']);
  });

  test('makes a dry coil where none is seen and the supply air is below four fifths of saturation', () => {
    const dry = (relativeHumidity: number, grams: number) =>
      removed(grams, { leaving: air(13, relativeHumidity, 0.0078125 - grams / 1024) }).dryCoil;
    expect(dry(0.8, 0)).toBeUndefined();
    expect(dry(0.79, 0)).toEqual({ 'φ₂': 0.79 });
    expect(dry(0.79, 0.5)).toEqual({ 'φ₂': 0.79 });
    expect(dry(0.79, 0.75)).toBeUndefined();
  });
});

test('supply air is dry below four fifths of saturation and its probe wet from 98 % on, while the system cools', () => {
  const supply = (relativeHumidity: number, dryBulb = 13) => said({ leaving: air(dryBulb, relativeHumidity, 0.0084) });
  expect(supply(0.8)).toEqual({});
  expect(supply(0.79)).toEqual({ supplyDry: { 'φ₂': 0.79, φ: 0.8 } });
  expect(supply(0.97)).toEqual({});
  expect(supply(0.98)).toEqual({ supplyWetProbe: { 'φ₂': 0.98, φ: 0.98 } });
  for (const humidity of [0.5, 0.99]) expect(Object.keys(supply(humidity, 26))).toEqual(['swapped']);
});

describe('frost', () => {
  const limit = fromFahrenheit(36);
  const frost = (dryBulb: number, dewPoint: number | null, humidityRatio = 0.005) => {
    const load = { apparatus: dewPoint === null ? null : { dewPoint, bypassFactor: 0.1 } } as Facts['load'];
    return said({ leaving: air(dryBulb, 0.9, humidityRatio), load }).frost;
  };

  test('is to be feared below a surface of 36 °F, or else below air of 36 °F', () => {
    expect(frost(5, limit)).toBeUndefined();
    expect(frost(5, limit - 0.1)).toEqual({ tₐ: limit - 0.1, t: limit });
    expect(frost(5, 0)).toEqual({ tₐ: 0, t: limit });
    expect(frost(limit, null)).toBeUndefined();
    expect(frost(limit - 0.1, null)).toEqual({ 't₂': limit - 0.1, t: limit });
    expect(frost(1, -1)).toEqual({ tₐ: -1, t: limit });
  });

  test('is not read from the surface where no water is seen, nor from air that nothing cools', () => {
    expect(frost(5, -1, 0.0093)).toBeUndefined();
    expect(said({ entering: air(1, 0.5, 0.002), leaving: air(1, 0.5, 0.002) }).frost).toBeUndefined();
    expect(said({ load: null, leaving: air(1, 0.9, 0.004) }).frost).toEqual({ 't₂': 1, t: limit });
  });
});
