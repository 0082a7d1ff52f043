import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CalcError, mix, moistAir } from '../../src/calc/index.ts';

const warm = moistAir({ dryBulb: 35, relativeHumidity: 0.4 });
const room = moistAir({ dryBulb: 24, relativeHumidity: 0.5 });

function code(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    return error instanceof CalcError ? error.code : String(error);
  }
  return 'nothing was thrown';
}

describe('mix', () => {
  test('keeps dry air, water and enthalpy', () => {
    const stream = fc.record({
      dryBulb: fc.double({ min: 15, max: 40, noNaN: true }),
      relativeHumidity: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
      dryAirFlow: fc.double({ min: 0.01, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(stream, stream, (one, other) => {
        const a = { air: moistAir(one), dryAirFlow: one.dryAirFlow };
        const b = { air: moistAir(other), dryAirFlow: other.dryAirFlow };
        const { air, dryAirFlow } = mix(a, b);
        const sum = (key: 'humidityRatio' | 'enthalpy') => a.dryAirFlow * a.air[key] + b.dryAirFlow * b.air[key];
        expect(dryAirFlow).toBeCloseTo(a.dryAirFlow + b.dryAirFlow, 12);
        expect((dryAirFlow * air.humidityRatio) / sum('humidityRatio')).toBeCloseTo(1, 10);
        expect((dryAirFlow * air.enthalpy) / sum('enthalpy')).toBeCloseTo(1, 10);
      }),
      { numRuns: 1000, seed: 22 },
    );
  });

  test('does not mind which stream comes first, or a stream that stands still', () => {
    const a = { air: warm, dryAirFlow: 0.2 };
    const b = { air: room, dryAirFlow: 0.8 };
    expect(mix(a, b).air.dryBulb).toBeCloseTo(mix(b, a).air.dryBulb, 10);
    expect(mix({ ...a, dryAirFlow: 0 }, b).air.dryBulb).toBeCloseTo(room.dryBulb, 10);
  });

  test('saturated air with air of the same state is no fog, however it rounds', () => {
    for (let dryBulb = -10; dryBulb <= 45; dryBulb += 0.5) {
      const stream = { air: moistAir({ dryBulb, relativeHumidity: 1 }), dryAirFlow: 0.7 };
      const { air, dryAirFlow } = mix(stream, { ...stream, dryAirFlow: 0.11 });
      expect(air.dryBulb).toBeCloseTo(dryBulb, 6);
      expect(dryAirFlow).toBeCloseTo(0.81, 12);
    }
  });

  test('shows its working: dry air, water and enthalpy, and the temperature that follows', () => {
    const ids: string[] = [];
    mix({ air: room, dryAirFlow: 0.6 }, { air: warm, dryAirFlow: 0.1 }, ({ id }) => ids.push(id));
    expect(ids).toEqual(['mix.dryAirFlow', 'mix.humidityRatio', 'mix.enthalpy', 'mix.dryBulb']);
  });

  test('says so when the mixture would be fog', () => {
    const cold = { air: moistAir({ dryBulb: -15, relativeHumidity: 0.95 }), dryAirFlow: 1 };
    const damp = { air: moistAir({ dryBulb: 28, relativeHumidity: 0.95 }), dryAirFlow: 1 };
    expect(code(() => mix(cold, damp))).toBe('fogged');
  });

  test('refuses two pressures, no flow and a flow that is no number', () => {
    const high = moistAir({ dryBulb: 24, relativeHumidity: 0.5, pressure: 85e3 });
    expect(code(() => mix({ air: room, dryAirFlow: 1 }, { air: high, dryAirFlow: 1 }))).toBe('pressuresDiffer');
    expect(code(() => mix({ air: room, dryAirFlow: 0 }, { air: warm, dryAirFlow: 0 }))).toBe('outOfRange');
    expect(code(() => mix({ air: room, dryAirFlow: Number.NaN }, { air: warm, dryAirFlow: 1 }))).toBe('notFinite');
    expect(code(() => mix({ air: room, dryAirFlow: -1 }, { air: warm, dryAirFlow: 2 }))).toBe('outOfRange');
    expect(code(() => mix({ air: room, dryAirFlow: 2 }, { air: warm, dryAirFlow: -1 }))).toBe('outOfRange');
  });
});
