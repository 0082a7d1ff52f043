import { describe, expect, test } from 'vitest';
import { type MoistAirInput, moistAir, type Step, saturationPressure, sources } from '../../src/calc/index.ts';

function working(input: MoistAirInput): Step[] {
  const steps: Step[] = [];
  moistAir(input, (step) => steps.push(step));
  return steps;
}

/** Works the right side of a step's equation out from its symbols alone. */
function workedOut({ equation, puts }: Step): number {
  const symbols = [...puts].sort((a, b) => b.symbol.length - a.symbol.length);
  const side = equation.slice(equation.indexOf('=') + 1);
  const figures: number[] = [];
  const marked = symbols.reduce((text, { symbol, value }) => {
    figures.push(value);
    return text.replaceAll(symbol, `§${figures.length - 1}§`);
  }, side);
  const code = marked
    .replaceAll('²', '**2')
    .replaceAll('·', '*')
    .replaceAll('−', '-')
    .replace(/§(\d+)§/g, '(v[$1])');
  return new Function('v', `return ${code}`)(figures) as number;
}

const inputs: readonly (readonly [string, MoistAirInput])[] = [
  ['relative humidity', { dryBulb: 26.7, relativeHumidity: 0.51, pressure: 95e3 }],
  ['wet bulb', { dryBulb: 26.7, wetBulb: 19.4, pressure: 95e3 }],
  ['wet bulb with ice', { dryBulb: 3, wetBulb: -1.5, pressure: 95e3 }],
  ['dew point', { dryBulb: 26.7, dewPoint: 14.2, pressure: 95e3 }],
  ['humidity ratio', { dryBulb: 26.7, humidityRatio: 0.0112, pressure: 95e3 }],
  ['enthalpy', { dryBulb: 26.7, enthalpy: 55e3, pressure: 95e3 }],
];

describe.each(inputs)('working from %s', (_, input) => {
  const steps = working(input);
  const air = moistAir(input);

  test('every equation gives its result from its own amounts, with nothing left unsaid', () => {
    for (const step of steps) {
      if (step.id === 'moistAir.saturationPressure') {
        expect(step.gives.value).toBe(saturationPressure(step.puts[0]!.value));
      } else if (step.id === 'moistAir.wetBulb') {
        // An inverse: the equation gives the humidity ratio that the wet bulb was found for.
        const star = { symbol: 't*', kind: 'temperature', value: step.gives.value } as const;
        const W = workedOut({ ...step, puts: [...step.puts.slice(1), star] });
        expect(W).toBeCloseTo(air.humidityRatio, 9);
      } else {
        expect(workedOut(step) / step.gives.value, step.id).toBeCloseTo(1, 9);
      }
    }
  });

  test('its results are those of the state, and each has a source', () => {
    const results = new Map(steps.map(({ gives }) => [gives.symbol, gives.value]));
    expect(results.get('v')).toBe(air.specificVolume);
    if (input.enthalpy === undefined) expect(results.get('h')).toBe(air.enthalpy);
    if (input.humidityRatio === undefined) expect(results.get('W')).toBe(air.humidityRatio);
    if (input.wetBulb === undefined) expect(results.get('t*')).toBe(air.wetBulb);
    for (const { source } of steps) expect(sources[source]).toBeDefined();
  });
});

test('without a trace the state is the same', () => {
  for (const [, input] of inputs) expect(moistAir(input, () => {})).toEqual(moistAir(input));
});
