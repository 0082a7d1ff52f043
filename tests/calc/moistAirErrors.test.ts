import { describe, expect, test } from 'vitest';
import {
  CalcError,
  type CalcErrorCode,
  dewPoint,
  enhancementFactor,
  enthalpy,
  humidityRatio,
  humidityRatioFromWetBulb,
  type MoistAirInput,
  moistAir,
  saturationHumidityRatio,
  saturationPressure,
  specificVolume,
  standardPressure,
  toProblem,
  wetBulb,
} from '../../src/calc/index.ts';

function thrown(run: () => unknown): CalcError {
  try {
    run();
  } catch (error) {
    if (error instanceof CalcError) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
}

const bad: readonly (readonly [string, MoistAirInput, CalcErrorCode, string])[] = [
  ['no humidity', { dryBulb: 25 }, 'oneHumidityNeeded', 'humidity'],
  ['two humidities', { dryBulb: 25, wetBulb: 18, relativeHumidity: 0.5 }, 'oneHumidityNeeded', 'humidity'],
  ['a humidity above 1', { dryBulb: 25, relativeHumidity: 1.01 }, 'outOfRange', 'relativeHumidity'],
  ['a humidity typed in percent', { dryBulb: 25, relativeHumidity: 50 }, 'outOfRange', 'relativeHumidity'],
  ['a humidity below 0', { dryBulb: 25, relativeHumidity: -0.01 }, 'outOfRange', 'relativeHumidity'],
  ['a humidity that is no number', { dryBulb: 25, relativeHumidity: Number.NaN }, 'notFinite', 'relativeHumidity'],
  ['a wet bulb above the dry bulb', { dryBulb: 25, wetBulb: 25.1 }, 'wetBulbAboveDryBulb', 'wetBulb'],
  ['a wet bulb lower than dry air has', { dryBulb: 25, wetBulb: 5 }, 'wetBulbTooLow', 'wetBulb'],
  ['a wet bulb that is no number', { dryBulb: 25, wetBulb: Number.NaN }, 'notFinite', 'wetBulb'],
  ['a wet bulb near boiling', { dryBulb: 90, wetBulb: 87, pressure: 60e3 }, 'beyondEquations', 'wetBulb'],
  ['a dew point above the dry bulb', { dryBulb: 25, dewPoint: 25.1 }, 'dewPointAboveDryBulb', 'dewPoint'],
  ['a dew point near boiling', { dryBulb: 90, dewPoint: 87, pressure: 60e3 }, 'beyondEquations', 'dewPoint'],
  ['a dew point that is infinite', { dryBulb: 25, dewPoint: -Infinity }, 'notFinite', 'dewPoint'],
  ['more water than air can hold', { dryBulb: 25, humidityRatio: 0.021 }, 'aboveSaturation', 'humidityRatio'],
  ['less than no water', { dryBulb: 25, humidityRatio: -0.001 }, 'outOfRange', 'humidityRatio'],
  ['a humidity ratio in grams', { dryBulb: 25, humidityRatio: 10 }, 'outOfRange', 'humidityRatio'],
  ['an enthalpy above saturation', { dryBulb: 25, enthalpy: 80e3 }, 'aboveSaturation', 'enthalpy'],
  ['an enthalpy below that of dry air', { dryBulb: 25, enthalpy: 25e3 }, 'enthalpyTooLow', 'enthalpy'],
  [
    'an enthalpy below that of dry air, near boiling',
    { dryBulb: 90, enthalpy: 25e3, pressure: 60e3 },
    'enthalpyTooLow',
    'enthalpy',
  ],
  ['an enthalpy that is no number', { dryBulb: 25, enthalpy: Number.NaN }, 'notFinite', 'enthalpy'],
  [
    'steam hotter than the pressure lets it be',
    { dryBulb: 90, relativeHumidity: 1, pressure: 60e3 },
    'beyondEquations',
    'relativeHumidity',
  ],
  ['no pressure', { dryBulb: 25, relativeHumidity: 0.5, pressure: 0 }, 'outOfRange', 'pressure'],
  ['a pressure in kPa', { dryBulb: 25, relativeHumidity: 0.5, pressure: 101.325 }, 'outOfRange', 'pressure'],
  ['an infinite pressure', { dryBulb: 25, relativeHumidity: 0.5, pressure: Infinity }, 'notFinite', 'pressure'],
  ['a dry bulb that is no number', { dryBulb: Number.NaN, relativeHumidity: 0.5 }, 'notFinite', 'dryBulb'],
  ['an infinite dry bulb', { dryBulb: Infinity, relativeHumidity: 0.5 }, 'notFinite', 'dryBulb'],
  ['a dry bulb below absolute zero', { dryBulb: -274, relativeHumidity: 0.5 }, 'outOfRange', 'dryBulb'],
  ['a dry bulb that is text', { dryBulb: '25' as unknown as number, relativeHumidity: 0.5 }, 'notFinite', 'dryBulb'],
  [
    'a humidity that is null',
    { dryBulb: 25, relativeHumidity: null as unknown as number },
    'notFinite',
    'relativeHumidity',
  ],
];

describe('moistAir refuses', () => {
  test.each(bad)('%s', (_, input, code, quantity) => {
    const error = thrown(() => moistAir(input));
    expect(error).toBeInstanceOf(RangeError);
    expect({ code: error.code, quantity: error.quantity }).toEqual({ code, quantity });
  });
});

describe('the limits in an error are those of what was given', () => {
  const refused = bad.filter(([, , code]) => !['notFinite', 'oneHumidityNeeded'].includes(code));
  test.each(refused)('%s', (_, input) => {
    const { code, quantity, value, min, max } = thrown(() => moistAir(input));
    expect(value < min || value > max).toBe(true);
    expect(Number.isFinite(min) && Number.isFinite(max)).toBe(true);
    // Limits that follow from the state: a value a hair inside them is taken.
    if (code === 'outOfRange') return;
    const inside = value < min ? min + 1e-6 * (max - min) : max - 1e-6 * (max - min);
    const pressure = input.pressure === undefined ? {} : { pressure: input.pressure };
    expect(() => moistAir({ dryBulb: input.dryBulb, ...pressure, [quantity]: inside })).not.toThrow();
  });
});

describe('kernels refuse what is no number or out of range', () => {
  const kernels: readonly (readonly [string, (x: number) => number])[] = [
    ['saturationPressure', (x) => saturationPressure(x)],
    ['enhancementFactor, temperature', (x) => enhancementFactor(x, 101325)],
    ['enhancementFactor, pressure', (x) => enhancementFactor(25, x)],
    ['saturationHumidityRatio, temperature', (x) => saturationHumidityRatio(x, 101325)],
    ['saturationHumidityRatio, pressure', (x) => saturationHumidityRatio(25, x)],
    ['humidityRatio, dry bulb', (x) => humidityRatio(x, 0.5, 101325)],
    ['humidityRatio, relative humidity', (x) => humidityRatio(25, x, 101325)],
    ['humidityRatio, pressure', (x) => humidityRatio(25, 0.5, x)],
    ['humidityRatioFromWetBulb, dry bulb', (x) => humidityRatioFromWetBulb(x, 18, 101325)],
    ['humidityRatioFromWetBulb, wet bulb', (x) => humidityRatioFromWetBulb(25, x, 101325)],
    ['humidityRatioFromWetBulb, pressure', (x) => humidityRatioFromWetBulb(25, 18, x)],
    ['enthalpy, dry bulb', (x) => enthalpy(x, 0.01)],
    ['enthalpy, humidity ratio', (x) => enthalpy(25, x)],
    ['specificVolume, dry bulb', (x) => specificVolume(x, 0.01, 101325)],
    ['specificVolume, humidity ratio', (x) => specificVolume(25, x, 101325)],
    ['specificVolume, pressure', (x) => specificVolume(25, 0.01, x)],
    ['wetBulb, dry bulb', (x) => wetBulb(x, 0.01, 101325)],
    ['wetBulb, humidity ratio', (x) => wetBulb(25, x, 101325)],
    ['wetBulb, pressure', (x) => wetBulb(25, 0.01, x)],
    ['dewPoint, humidity ratio', (x) => dewPoint(x, 101325)],
    ['dewPoint, pressure', (x) => dewPoint(0.01, x)],
    ['standardPressure', (x) => standardPressure(x)],
  ];
  test.each(kernels)('%s', (_, run) => {
    for (const value of [Number.NaN, Infinity, -Infinity, 1e9, -1e9]) expect(() => run(value)).toThrow(CalcError);
    expect(() => run('1' as unknown as number)).toThrow(CalcError);
    expect(() => run(undefined as unknown as number)).toThrow(CalcError);
  });

  test('wetBulb, more water than air can hold', () => {
    expect(thrown(() => wetBulb(25, 0.021, 101325)).code).toBe('aboveSaturation');
  });
});

describe('toProblem', () => {
  test('keeps what the error says, as plain data that crosses to a worker', () => {
    const error = thrown(() => moistAir({ dryBulb: 25, relativeHumidity: 1.2 }));
    const problem = toProblem(error);
    expect(structuredClone(problem)).toEqual({
      code: 'outOfRange',
      quantity: 'relativeHumidity',
      value: 1.2,
      min: 0,
      max: 1,
    });
    expect(error.message).toBe('relativeHumidity: out of range, 1.2 (allowed: 0 to 1)');
  });
});
