import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airflowPerTon,
  airflowWays,
  cubicFootPerMinute,
  dryAirFlow,
  foot,
  middleOfWays,
  moistAir,
  standardPressure,
  tonOfRefrigeration,
} from '../../../src/calc/index.ts';
import { errorOf } from './support.ts';

const states = (feet: number) => {
  const pressure = standardPressure(feet * foot);
  return {
    entering: moistAir({ dryBulb: 23.9, relativeHumidity: 0.5, pressure }),
    leaving: moistAir({ dryBulb: 13.3, relativeHumidity: 0.88, pressure }),
  };
};

describe('airflowWays', () => {
  /** Return taken for supply: 4 %. Actual taken for standard: 3 % at sea level, 10 % at 2 000 ft, 24 % at 5 000 ft (known: computed). */
  test.each([
    [0, 0.03],
    [2000, 0.1],
    [5000, 0.24],
  ])('at %d ft an actual return airflow taken for standard air is wrong by %d', (feet, error) => {
    const { entering, leaving } = states(feet);
    const airflow = { volumeFlow: 0.5, at: { specificVolume: entering.specificVolume } };
    const [standard, back, supply] = airflowWays(airflow, { entering, leaving });
    expect(Math.abs((standard?.mistaken ?? 0) - error)).toBeLessThan(0.006);
    expect(back).toMatchObject({ name: 'entering', volumeFlow: expect.closeTo(0.5, 12), mistaken: 0 });
    expect(Math.abs((supply?.mistaken ?? 0) - 0.04)).toBeLessThan(0.004);
  });

  test('every way counts the same air', () => {
    const volume = fc.double({ min: 0.01, max: 5, noNaN: true });
    fc.assert(
      fc.property(volume, fc.integer({ min: 0, max: 9000 }), (volumeFlow, feet) => {
        const flow = dryAirFlow({ volumeFlow, at: 'standard' });
        for (const way of airflowWays({ volumeFlow, at: 'standard' }, states(feet))) {
          expect(dryAirFlow(way)).toBeCloseTo(flow, 9);
        }
      }),
    );
  });

  test('says only what is known', () => {
    const names = airflowWays({ volumeFlow: 0.5, at: 'standard' }, { entering: null, leaving: null }).map(
      ({ name }) => name,
    );
    expect(names).toEqual(['standard']);
  });
});

describe('middleOfWays', () => {
  test('one way costs nothing, two cost half their difference', () => {
    const only = middleOfWays(0.5, [{ specificVolume: 0.8 }]);
    expect([only.price, only.at, only.causes]).toEqual([0, { specificVolume: 0.8 }, []]);
    const both = middleOfWays(0.5, [{ specificVolume: 0.8 }, { specificVolume: 1 }]);
    expect([both.low, both.high, both.dryAirFlow]).toEqual([0.5, 0.625, 0.5625]);
    expect(both.price).toBeCloseTo(0.0625 / 0.5625, 12);
    expect(dryAirFlow(both)).toBeCloseTo(both.dryAirFlow, 12);
  });
});

describe('airflowPerTon', () => {
  test('3 tons with 1 200 scfm are 400 each', () => {
    const flow = dryAirFlow({ volumeFlow: 1200 * cubicFootPerMinute, at: 'standard' });
    const { each, ranges } = airflowPerTon(flow, 3 * tonOfRefrigeration);
    expect(each / cubicFootPerMinute).toBeCloseTo(400, 9);
    expect(ranges.map(({ name, position, source }) => [name, position, source])).toEqual([
      ['humid', 'above', 'commonPractice'],
      ['ordinary', 'inside', 'commonPractice'],
      ['dry', 'inside', 'commonPractice'],
      ['rated', 'inside', 'coilModel'],
      ['working', 'inside', 'coilModel'],
    ]);
    const half = airflowPerTon(flow / 2, 3 * tonOfRefrigeration).ranges.map(({ position }) => position);
    expect(half).toEqual(['below', 'below', 'below', 'below', 'inside']);
  });

  test.each([
    [0, 10e3, 'dryAirFlow'],
    [0.6, 0, 'nominalCapacity'],
  ])('refuses %d kg/s for %d W', (flow, capacity, quantity) => {
    expect(errorOf(() => airflowPerTon(flow, capacity))).toEqual(['outOfRange', quantity]);
  });
});
