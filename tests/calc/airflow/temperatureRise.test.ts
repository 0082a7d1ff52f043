import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airflowFromTemperatureRise,
  btu,
  btuPerHour,
  clockedInput,
  cubicFootPerMinute,
  defaultBlowerPower,
  fahrenheitDegree,
  foot,
  heatDryAir,
  heatVapor,
  type TemperatureRise,
} from '../../../src/calc/index.ts';
import { codes, errorOf, said, stepsOf } from './support.ts';

const electric = { kind: 'electric', phases: 1, voltage: 240, current: 41 } as const;
const fuel = { kind: 'fuel', input: 80000 * btuPerHour, efficiency: 0.8, efficiencyFrom: 'measured' } as const;
const rise: TemperatureRise = {
  heat: electric,
  blower: { power: 480 },
  enteringDryBulb: 21,
  leavingDryBulb: 37,
  humidityRatio: 0.008,
  probes: 'several',
  probeLimit: 0.5,
  speed: 'cooling',
};

describe('airflowFromTemperatureRise', () => {
  test('is the heat over the heat that a kilogram takes up', () => {
    const { dryAirFlow, heat, at, dryCoil } = airflowFromTemperatureRise(rise);
    expect(heat).toBe(240 * 41 + 480);
    expect(dryAirFlow).toBeCloseTo(heat / ((heatDryAir + 0.008 * heatVapor) * 16), 12);
    expect([at, dryCoil]).toEqual(['standard', true]);
  });

  test('three phases carry the root of three of it: 208 V, 41.7 A and 31 °F are 1 531 cfm (known: computed, by 1.08)', () => {
    const heat = { kind: 'electric', phases: 3, voltage: 208, current: 41.7 } as const;
    const { volumeFlow } = airflowFromTemperatureRise({
      ...rise,
      heat,
      blower: 'outside',
      humidityRatio: 0,
      leavingDryBulb: 21 + 31 * fahrenheitDegree,
    });
    // 1.08 holds c_p at 1 004.8 J/(kg·K); here it is 1 006, 0.12 % more.
    expect(Math.abs(volumeFlow / cubicFootPerMinute / 1531 - 1)).toBeLessThan(0.0016);
  });

  test('a power factor takes its share, and a measured power is taken as it is', () => {
    const half = airflowFromTemperatureRise({ ...rise, blower: 'outside', heat: { ...electric, powerFactor: 0.5 } });
    const stated = airflowFromTemperatureRise({
      ...rise,
      blower: 'outside',
      heat: { kind: 'power', power: 240 * 41 * 0.5 },
    });
    expect(half.volumeFlow).toBe(stated.volumeFlow);
  });

  test('a blower that nobody measured is taken from the very airflow that comes out', () => {
    const { dryAirFlow, heat, remarks } = airflowFromTemperatureRise({ ...rise, blower: 'assumed' });
    expect(heat).toBeCloseTo(240 * 41 + defaultBlowerPower(dryAirFlow), 6);
    expect(remarks.map(({ code }) => code)).toContain('heatBlowerAssumed');
  });

  test('two independent probes of ±0.9 °F over 29 °F are worth 2.5 % (known: computed)', () => {
    const answer = airflowFromTemperatureRise({
      ...rise,
      leavingDryBulb: 21 + 29 * fahrenheitDegree,
      probeLimit: 0.9 * fahrenheitDegree,
    });
    const probes = answer.sources.filter(({ name }) => name.startsWith('probe.')).map(({ u }) => u);
    expect(100 * Math.hypot(...probes)).toBeCloseTo(2.5, 1);
    expect(answer.perKelvin).toBeCloseTo(1 / (29 * fahrenheitDegree), 12);
  });

  test('the place of the probe outweighs everything in a furnace plenum', () => {
    const u = (change: Partial<TemperatureRise>) => airflowFromTemperatureRise({ ...rise, ...change }).u;
    expect(u({ probes: 'one' })).toBeGreaterThan(u({}));
    expect(u({ probes: 'inSight' })).toBeGreaterThan(u({ probes: 'one' }));
    expect(u({ heat: fuel, probes: 'one' })).toBeGreaterThan(2 * u({ probes: 'one' }));
  });

  test.each([
    [{}, ['dryCoilAirflow']],
    [{ speed: 'other' }, ['heatingSpeed', 'dryCoilAirflow']],
    [{ probes: 'inSight' }, ['probeSeesHeat', 'dryCoilAirflow']],
    [{ probes: 'one' }, ['oneProbePoint', 'dryCoilAirflow']],
    [{ heat: { ...fuel, efficiencyFrom: 'annual' } }, ['annualEfficiency', 'dryCoilAirflow']],
    [{ heat: { ...fuel, efficiencyFrom: 'guessed' } }, ['guessedEfficiency', 'dryCoilAirflow']],
  ] satisfies [Partial<TemperatureRise>, readonly string[]][])('%o remarks %s', (change, expected) => {
    expect(codes(airflowFromTemperatureRise({ ...rise, ...change }))).toEqual(expected);
  });

  test('the annual efficiency of the label is wider than one measured in the flue', () => {
    const measured = airflowFromTemperatureRise({ ...rise, heat: fuel });
    const annual = airflowFromTemperatureRise({ ...rise, heat: { ...fuel, efficiencyFrom: 'annual' } });
    expect(annual.u).toBeGreaterThan(measured.u);
  });

  test.each([
    ['a power factor of 3', { heat: { ...electric, powerFactor: 3 } }, ['outOfRange', 'heat.powerFactor']],
    ['a heater of nothing', { heat: { kind: 'power', power: 0 } }, ['outOfRange', 'heat.power']],
    ['fuel of nothing', { heat: { ...fuel, input: 0 } }, ['outOfRange', 'heat.input']],
    ['a return beyond the equations', { enteringDryBulb: -70, leavingDryBulb: -30 }, ['outOfRange', 'enteringDryBulb']],
    ['a supply beyond the equations', { enteringDryBulb: 80, leavingDryBulb: 95 }, ['outOfRange', 'leavingDryBulb']],
    ['no rise', { leavingDryBulb: 21 }, ['outOfRange', 'temperatureRise']],
    ['a fall', { leavingDryBulb: 12 }, ['outOfRange', 'temperatureRise']],
    [
      'a rise that the blower alone would make',
      { blower: 'assumed', leavingDryBulb: 22 },
      ['outOfRange', 'temperatureRise'],
    ],
    ['an efficiency in percent', { heat: { ...fuel, efficiency: 80 } }, ['outOfRange', 'heat.efficiency']],
    ['no current', { heat: { ...electric, current: 0 } }, ['outOfRange', 'heat.current']],
    ['a voltage that is no number', { heat: { ...electric, voltage: Number.NaN } }, ['notFinite', 'heat.voltage']],
    ['a blower below zero', { blower: { power: -1 } }, ['outOfRange', 'blower.power']],
    ['a humidity ratio in grams', { humidityRatio: 8 }, ['outOfRange', 'humidityRatio']],
  ] satisfies [string, Partial<TemperatureRise>, readonly [string, string]][])('refuses %s', (_, change, error) => {
    expect(errorOf(() => airflowFromTemperatureRise({ ...rise, ...change }))).toEqual(error);
  });

  test('says which rise the blower alone would leave too small: twice what 365 W for 1 000 cfm make', () => {
    const assumed = 365 / (1000 * cubicFootPerMinute * 1.2014);
    const small = { ...rise, blower: 'assumed', humidityRatio: 0, leavingDryBulb: 22.2 } as const;
    expect(() => airflowFromTemperatureRise(small)).toThrow(
      expect.objectContaining({
        quantity: 'temperatureRise',
        value: expect.closeTo(1.2, 9),
        min: expect.closeTo((2 * assumed) / 1006, 9),
      }),
    );
    expect(
      airflowFromTemperatureRise({ ...small, leavingDryBulb: 21 + (2.0001 * assumed) / 1006 }).volumeFlow,
    ).toBeGreaterThan(0);
  });

  test('names the study of furnaces only for a furnace', () => {
    const basis = (heat: TemperatureRise['heat']) =>
      airflowFromTemperatureRise({ ...rise, heat }).sources.find(({ name }) => name === 'temperatureRise.position')
        ?.basis;
    expect([basis(electric), basis(fuel)]).toEqual(['commonPractice', 'furnacePosition']);
  });

  test('says what its one probe may be out by, over the rise and never more than all of it', () => {
    const share = (probeLimit: number) =>
      said(airflowFromTemperatureRise({ ...rise, leavingDryBulb: 26, probes: 'one', probeLimit }))[0];
    expect(share(0.5)).toEqual(['oneProbePoint', 'doubt', ['u', 0.1]]);
    expect(share(10)).toEqual(['oneProbePoint', 'doubt', ['u', 1]]);
  });

  test.each([
    ['a measured blower', { power: 480 }, 240 * 41 + 480],
    ['a blower outside', 'outside', 240 * 41],
    ['a blower that nobody measured', 'assumed', null],
  ] as const)('with %s the heat is what the air takes up', (_, blower, stated) => {
    const { heat, dryAirFlow } = airflowFromTemperatureRise({ ...rise, blower });
    expect(dryAirFlow * (1006 + 1860 * 0.008) * 16).toBeCloseTo(heat, 6);
    if (stated !== null) expect(heat).toBeCloseTo(stated, 9);
  });

  test('goes with the heat and against the rise', () => {
    const current = fc.double({ min: 10, max: 100, noNaN: true });
    const kelvin = fc.double({ min: 5, max: 50, noNaN: true });
    fc.assert(
      fc.property(current, kelvin, (amps, rises) => {
        const of = (a: number, k: number) =>
          airflowFromTemperatureRise({
            ...rise,
            blower: 'outside',
            heat: { ...electric, current: a },
            leavingDryBulb: 21 + k,
          });
        expect(of(2 * amps, rises).volumeFlow / of(amps, rises).volumeFlow).toBeCloseTo(2, 9);
        expect(of(amps, rises / 2).volumeFlow / of(amps, rises).volumeFlow).toBeCloseTo(2, 9);
      }),
    );
  });

  test('shows heat, rise and flow', () => {
    const steps = stepsOf((t) => airflowFromTemperatureRise({ ...rise, heat: fuel }, t)).map(({ id }) => id);
    expect(steps).toEqual([
      'airflow.heat.fuel',
      'airflow.temperatureRise.rise',
      'airflow.temperatureRise.flow',
      'dryAirFlow.standard',
      'airflow.temperatureRise.uncertainty',
    ]);
  });
});

test.each([
  [1, 'airflow.heat.singlePhase', 1],
  [3, 'airflow.heat.threePhase', Math.sqrt(3)],
] as const)('electric heat of %s phases is worked out as %s', (phases, id, times) => {
  const [first] = stepsOf((t) => airflowFromTemperatureRise({ ...rise, heat: { ...electric, phases } }, t));
  expect([first?.id, first?.gives.value]).toEqual([id, expect.closeTo(times * 240 * 41, 6)]);
});

describe('clockedInput', () => {
  test('2 ft³ in 90 s of gas of 1 000 Btu/ft³ are 80 000 Btu/h', () => {
    const input = clockedInput({ volume: 2 * foot ** 3, time: 90, heatingValue: (1000 * btu) / foot ** 3 });
    expect(input / btuPerHour).toBeCloseTo(80000, 6);
  });

  test.each([
    [{ volume: 0 }, 'gas.volume'],
    [{ time: 0 }, 'gas.time'],
    [{ heatingValue: 1000 }, 'gas.heatingValue'],
  ])('refuses %o', (change, quantity) => {
    const clocked = { volume: 0.0566, time: 90, heatingValue: 3.7e7, ...change };
    expect(errorOf(() => clockedInput(clocked))).toEqual(['outOfRange', quantity]);
  });
});
