import { describe, expect, test } from 'vitest';
import { type MoistAirInput, moistAir, type Step, saturationPressure, sources } from '../../src/calc/index.ts';
import { equationSides } from './equationValue.ts';

function working(input: MoistAirInput): Step[] {
  const steps: Step[] = [];
  moistAir(input, (step) => steps.push(step));
  return steps;
}

const saturated = ['saturationPressure', 'enhancementFactor'];
const ofWetBulb = [...saturated, 'saturatedHumidityRatio'];

/** What is given, and the steps from there: saturation, the humidity ratio, what follows from it, and the wet bulb last. */
const inputs: readonly (readonly [string, MoistAirInput, readonly string[]])[] = [
  [
    'relative humidity',
    { dryBulb: 26.7, relativeHumidity: 0.51, pressure: 95e3 },
    [...saturated, 'humidityRatio', 'enthalpy', 'specificVolume', ...ofWetBulb, 'wetBulb'],
  ],
  [
    'wet bulb',
    { dryBulb: 26.7, wetBulb: 19.4, pressure: 95e3 },
    [...saturated, ...ofWetBulb, 'humidityRatio', 'relativeHumidity', 'enthalpy', 'specificVolume'],
  ],
  [
    'wet bulb with ice',
    { dryBulb: 3, wetBulb: -1.5, pressure: 95e3 },
    [...saturated, ...ofWetBulb, 'humidityRatio', 'relativeHumidity', 'enthalpy', 'specificVolume'],
  ],
  [
    'wet bulb at which water freezes',
    { dryBulb: 5, wetBulb: 0, pressure: 95e3 },
    [...saturated, ...ofWetBulb, 'humidityRatio', 'relativeHumidity', 'enthalpy', 'specificVolume'],
  ],
  [
    'dew point',
    { dryBulb: 26.7, dewPoint: 14.2, pressure: 95e3 },
    [
      ...saturated,
      ...saturated,
      'humidityRatio',
      'relativeHumidity',
      'enthalpy',
      'specificVolume',
      ...ofWetBulb,
      'wetBulb',
    ],
  ],
  [
    'humidity ratio',
    { dryBulb: 26.7, humidityRatio: 0.0112, pressure: 95e3 },
    [...saturated, 'relativeHumidity', 'enthalpy', 'specificVolume', ...ofWetBulb, 'wetBulb'],
  ],
  [
    'enthalpy',
    { dryBulb: 26.7, enthalpy: 55e3, pressure: 95e3 },
    [...saturated, 'humidityRatio', 'relativeHumidity', 'specificVolume', ...ofWetBulb, 'wetBulb'],
  ],
];

describe.each(inputs)('working from %s', (_, input, names) => {
  test('has every step that is needed once, and works nothing out that was given', () => {
    expect(working(input).map(({ id }) => id)).toEqual(names.map((name) => `moistAir.${name}`));
  });

  test('every equation gives its result from its own amounts, with nothing left unsaid', () => {
    for (const step of working(input)) {
      if (step.id === 'moistAir.saturationPressure') {
        expect(step.gives.value).toBe(saturationPressure(step.puts[0]!.value));
        continue;
      }
      const [left, right] = equationSides(step)!;
      expect(left / right, step.id).toBeCloseTo(1, 9);
    }
  });

  test('its results are those of the state, and each has a source', () => {
    const steps = working(input);
    const air = moistAir(input);
    const results = new Map(steps.map(({ gives }) => [gives.symbol, gives.value]));
    expect(results.get('v')).toBe(air.specificVolume);
    if (input.enthalpy === undefined) expect(results.get('h')).toBe(air.enthalpy);
    if (input.humidityRatio === undefined) expect(results.get('W')).toBe(air.humidityRatio);
    if (input.wetBulb === undefined) expect(results.get('t*')).toBe(air.wetBulb);
    if (input.relativeHumidity === undefined) expect(results.get('φ')).toBe(air.relativeHumidity);
    for (const { source } of steps) expect(sources[source]).toBeDefined();
  });
});

test('without a trace the state is the same', () => {
  for (const [, input] of inputs) expect(moistAir(input, () => {})).toEqual(moistAir(input));
});
