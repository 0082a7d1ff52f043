/** What is said of a traverse: on either side of each mark, and with the figures that a sentence about it needs. */
import { describe, expect, test } from 'vitest';
import { airflowFromTraverse, footPerMinute, standardAirDensity } from '../../../src/calc/index.ts';
import { even, pitot } from './pitotTraverse.ts';
import { errorOf, said, stepsOf } from './support.ts';

describe('a traverse', () => {
  // A circle of 0.2 m² is 0.504627 m wide.
  const wide = Math.sqrt(0.8 / Math.PI);

  test.each([
    ['fan', 5],
    ['other', 7.5],
  ] as const)('wants straight duct behind a %s of %s diameters, and says how many there are', (after, diameters) => {
    const with_ = (times: number) => airflowFromTraverse({ ...pitot, straight: { length: times * wide, after } });
    expect(said(with_(diameters * 1.000001))).toEqual([]);
    expect(said(with_(diameters - 0.1))).toEqual([
      ['traverseDisturbed', 'doubt', ['n', Number((diameters - 0.1).toPrecision(6))], ['n₀', diameters]],
    ]);
    expect(errorOf(() => with_(-1))).toEqual(['outOfRange', 'straight.length']);
  });

  test('passes with three quarters of its pressures above a tenth of the greatest', () => {
    // 19 of 25 are 0.76, 18 are 0.72; a tenth of 20 Pa itself does not count.
    const low = (count: number) =>
      airflowFromTraverse({
        ...pitot,
        readings: even(20).map((line, i) => line.map((value, j) => (5 * i + j < count ? 1.9 : value))),
      });
    expect(low(6).acceptance).toEqual({ share: 0.76, passes: true });
    expect(said(low(6))).toEqual([]);
    expect(low(7).acceptance).toEqual({ share: 0.72, passes: false });
    expect(said(low(7))).toEqual([['traverseUneven', 'doubt', ['s', 0.72], ['s₀', 0.75]]]);
  });

  test('passes with three quarters and no more: nine of twelve on two diameters', () => {
    const found = airflowFromTraverse({
      ...pitot,
      section: { shape: 'round', diameter: 0.25 },
      readings: [new Array<number>(6).fill(20), [20, 20, 20, 1.9, 1.9, 1.9]],
    });
    expect(found.acceptance).toEqual({ share: 0.75, passes: true });
  });

  test('by a Pitot tube is too slow below 600 ft/min, by a vane never', () => {
    const at = (feet: number) => even((standardAirDensity / 2) * (feet * footPerMinute) ** 2);
    expect(said(airflowFromTraverse({ ...pitot, readings: at(601) }))).toEqual([]);
    expect(said(airflowFromTraverse({ ...pitot, readings: at(599) }))).toEqual([
      [
        'pitotTooSlow',
        'doubt',
        ['w̄', Number((599 * footPerMinute).toPrecision(6))],
        ['w', Number((600 * footPerMinute).toPrecision(6))],
      ],
    ]);
    expect(said(airflowFromTraverse({ ...pitot, instrument: 'vane', readings: even(1) }))).toEqual([]);
  });

  test('names a point that differs by more than a tenth when it is read again, in either direction', () => {
    const again = (reading: number, line = 1, point = 2) =>
      said(airflowFromTraverse({ ...pitot, readings: even(10), again: [{ line, point, reading }] }));
    expect([again(10.99), again(9.01)]).toEqual([[], []]);
    expect(again(11.01)).toEqual([['traverseNotRepeated', 'doubt', ['line', 2], ['point', 3], ['Δ', 0.101]]]);
    expect(again(8.99)).toEqual([['traverseNotRepeated', 'doubt', ['line', 2], ['point', 3], ['Δ', -0.101]]]);
    expect([again(Number.NaN), again(20, 9), again(20, 1, 9)]).toEqual([[], [], []]);
  });

  test('says nothing of a point read again that was not read before', () => {
    const readings = even(10).map((line, i) => (i === 1 ? line.map(() => null) : line));
    const codes = said(airflowFromTraverse({ ...pitot, readings, again: [{ line: 1, point: 2, reading: 20 }] }));
    expect(codes).toEqual([]);
  });

  test.each([
    ['pitot', 12, ['airflow.velocity', 'airflow.meanVelocity', 'airflow.flow', 'dryAirFlow.actual']],
    ['vane', 4, ['airflow.meanVelocity', 'airflow.flow', 'dryAirFlow.actual']],
    ['thermal', 4, ['airflow.meanVelocity', 'airflow.flow', 'dryAirFlow.standard']],
  ] as const)('by %s shows its working', (instrument, reading, ids) => {
    const steps = stepsOf((t) => airflowFromTraverse({ ...pitot, instrument, readings: even(reading) }, t));
    expect(steps.map(({ id }) => id)).toEqual([...ids, 'airflow.traverse.uncertainty']);
  });

  test('has a profile: each hole and each depth over the mean of all', () => {
    // Velocities of a vane: three in one hole, one in the others; the mean is 1.4.
    const readings = even(1).map((line, i) => (i === 0 ? line.map(() => 3) : line));
    const { profile, meanVelocity } = airflowFromTraverse({ ...pitot, instrument: 'vane', readings });
    expect(meanVelocity).toBeCloseTo(1.4, 12);
    expect(profile.lines).toEqual([3, 1, 1, 1, 1].map((value) => expect.closeTo(value / 1.4, 12)));
    expect(profile.depths).toEqual([1, 1, 1, 1, 1].map((value) => expect.closeTo(value, 12)));
    const holes = even(2).map((line) => line.map((value, j) => (j === 4 ? null : value)));
    expect(airflowFromTraverse({ ...pitot, instrument: 'vane', readings: holes }).profile.depths).toEqual([
      1,
      1,
      1,
      1,
      null,
    ]);
  });
});
