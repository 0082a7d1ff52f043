import { describe, expect, test } from 'vitest';
import {
  blowerHeat,
  defaultBlowerPower,
  dryAirFlow,
  type Step,
  standardVolumeFlow,
  temperatureRise,
} from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

describe('dryAirFlow', () => {
  test('counts standard air as 1.2014 kg/m³ and gives its volume back', () => {
    expect(dryAirFlow({ volumeFlow: 0.5, at: 'standard' })).toBe(0.5 * 1.2014);
    expect(standardVolumeFlow(dryAirFlow({ volumeFlow: 0.5, at: 'standard' }))).toBeCloseTo(0.5, 12);
  });

  test('takes air as it moves by its specific volume', () => {
    expect(dryAirFlow({ volumeFlow: 0.5, at: { specificVolume: 0.85 } })).toBe(0.5 / 0.85);
  });

  test.each([
    [0, 'standard' as const, 'outOfRange'],
    [-1, 'standard' as const, 'outOfRange'],
    [Number.NaN, 'standard' as const, 'notFinite'],
    [Number.POSITIVE_INFINITY, 'standard' as const, 'notFinite'],
    [0.5, { specificVolume: 0 }, 'outOfRange'],
    [0.5, { specificVolume: Number.NaN }, 'notFinite'],
  ])('refuses %s m³/s at %o', (volumeFlow, at, code) => {
    expect(codeOf(() => dryAirFlow({ volumeFlow, at }))).toBe(code);
  });

  test('says with which density it was worked out', () => {
    const steps: Step[] = [];
    dryAirFlow({ volumeFlow: 0.5, at: 'standard' }, (step) => steps.push(step));
    dryAirFlow({ volumeFlow: 0.5, at: { specificVolume: 0.85 } }, (step) => steps.push(step));
    expect(steps.map(({ id, puts }) => [id, puts.at(-1)?.value])).toEqual([
      ['dryAirFlow.standard', 1.2014],
      ['dryAirFlow.actual', 0.85],
    ]);
  });
});

describe('blowerHeat', () => {
  test('is all of the power', () => {
    expect(blowerHeat({ power: 430 })).toBe(430);
  });

  test('by default goes with the airflow', () => {
    expect(defaultBlowerPower(1.4)).toBeCloseTo(2 * defaultBlowerPower(0.7), 9);
  });

  test('warms damp air less than dry air', () => {
    expect(temperatureRise(400, 0.65, 0.01)).toBeLessThan(temperatureRise(400, 0.65, 0));
  });

  test.each([
    [-1, 'outOfRange'],
    [Number.NaN, 'notFinite'],
  ])('refuses a power of %s W', (power, code) => {
    expect(codeOf(() => blowerHeat({ power }))).toBe(code);
  });

  test('refuses an airflow that is no number', () => {
    expect(codeOf(() => defaultBlowerPower(Number.NaN))).toBe('notFinite');
  });
});
