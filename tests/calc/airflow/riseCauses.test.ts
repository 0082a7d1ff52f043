/** What an airflow by a temperature rise may be wrong by, cause by cause. */
import { describe, expect, test } from 'vitest';
import { airflowFromTemperatureRise, type TemperatureRise } from '../../../src/calc/index.ts';
import { expectCauses, reaching, rectangle } from './support.ts';

describe('a temperature rise', () => {
  const rise: TemperatureRise = {
    heat: { kind: 'electric', phases: 1, voltage: 240, current: 41 },
    blower: { power: 400 },
    enteringDryBulb: 21,
    leavingDryBulb: 37,
    humidityRatio: 0.008,
    probes: 'several',
    probeLimit: 0.5,
    speed: 'cooling',
  };
  const fuel = { kind: 'fuel', input: 20e3, efficiency: 0.8, efficiencyFrom: 'measured' } as const;

  test('feels its meters by their share of the heat, each probe over the rise, and the coil that is dry', () => {
    expectCauses(airflowFromTemperatureRise(rise), {
      'heat.meters': (0.02 * 9840) / 10_240,
      'probe.entering': rectangle(0.5) / 16,
      'probe.leaving': -rectangle(0.5) / 16,
      'temperatureRise.position': 0.03,
      'temperatureRise.dryCoil': rectangle(0.03),
    });
  });

  test('feels a blower that nobody measured by half of its share', () => {
    const found = airflowFromTemperatureRise({ ...rise, blower: 'assumed' });
    const own = found.heat - 9840;
    expect(reaching(found)['heat.blower']).toBeCloseTo((rectangle(0.5) * own) / found.heat, 12);
    expect(reaching(found)['heat.meters']).toBeCloseTo((0.02 * 9840) / found.heat, 12);
  });

  test.each([
    ['measured', 0.015],
    ['annual', 0.06],
    ['guessed', 0.06],
  ] as const)('by fuel feels the watch, and an efficiency that was %s', (efficiencyFrom, limit) => {
    const found = airflowFromTemperatureRise({ ...rise, blower: 'outside', heat: { ...fuel, efficiencyFrom } });
    expect(reaching(found)['heat.clocking']).toBeCloseTo(0.02, 12);
    expect(reaching(found)['heat.efficiency']).toBeCloseTo(rectangle(limit), 12);
  });

  test.each([
    ['several', 0.03, 0.08],
    ['one', 0.08, 0.2],
    ['inSight', 0.25, 0.4],
  ] as const)('read in %s is out by %s behind a heater and by %s behind a furnace', (probes, electric, furnace) => {
    const position = (change: Partial<TemperatureRise>) =>
      reaching(airflowFromTemperatureRise({ ...rise, ...change, probes }))['temperatureRise.position'];
    expect([position({}), position({ heat: fuel })]).toEqual([electric, furnace]);
  });
});
