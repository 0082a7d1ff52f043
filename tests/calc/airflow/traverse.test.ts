import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airflowFromTraverse, footPerMinute, type Grid, type Traverse } from '../../../src/calc/index.ts';
import { airOf, codes, errorOf, standardAir } from './support.ts';

const section = { shape: 'rectangular', width: 0.5, height: 0.4 } as const;
const even = (value: number | null): Grid => Array.from({ length: 5 }, () => new Array<number | null>(5).fill(value));
const changed = (grid: Grid, line: number, point: number, value: number | null): Grid =>
  grid.map((row, i) => row.map((one, j) => (i === line && j === point ? value : one)));
const straight = { length: 10, after: 'other' } as const;
const pitot: Traverse = { section, instrument: 'pitot', readings: even(12), air: standardAir, straight };

describe('airflowFromTraverse', () => {
  test('is velocity times area, by each instrument in its own kind of air', () => {
    const thin = airOf(0.95);
    const vane = airflowFromTraverse({ ...pitot, instrument: 'vane', readings: even(4), air: thin });
    const thermal = airflowFromTraverse({ ...pitot, instrument: 'thermal', readings: even(4), air: thin });
    const converted = airflowFromTraverse({ ...pitot, instrument: 'thermalActual', readings: even(4), air: thin });
    expect(vane.volumeFlow).toBeCloseTo(0.8, 12);
    expect(thermal.at).toBe('standard');
    // A hot wire counts mass: the same figure is less air where the air is thin, if a vane shows it.
    expect(thermal.dryAirFlow / vane.dryAirFlow).toBeCloseTo(1.2014 / 0.95, 9);
    expect(converted.dryAirFlow).toBe(vane.dryAirFlow);
    expect(airflowFromTraverse({ ...pitot, air: thin }).meanVelocity).toBeCloseTo(Math.sqrt(24 / 0.95), 12);
  });

  const grids = fc.array(fc.array(fc.double({ min: 1, max: 100, noNaN: true }), { minLength: 5, maxLength: 5 }), {
    minLength: 5,
    maxLength: 5,
  });

  test('averages velocities, never pressures: the root of the mean pressure reads high', () => {
    fc.assert(
      fc.property(grids, (readings) => {
        const { meanVelocity } = airflowFromTraverse({ ...pitot, readings });
        const meanPressure = readings.flat().reduce((sum, one) => sum + one, 0) / 25;
        expect(meanVelocity).toBeLessThanOrEqual(Math.sqrt((2 * meanPressure) / 1.2014) * (1 + 1e-12));
      }),
    );
  });

  test('does not mind in which order the holes are taken, and four times the pressure is twice the flow', () => {
    fc.assert(
      fc.property(grids, (readings) => {
        const one = airflowFromTraverse({ ...pitot, readings });
        const turned = airflowFromTraverse({ ...pitot, readings: [...readings].reverse() });
        const more = airflowFromTraverse({ ...pitot, readings: readings.map((line) => line.map((p) => 4 * p)) });
        expect(turned.volumeFlow).toBeCloseTo(one.volumeFlow, 9);
        expect(more.volumeFlow).toBeCloseTo(2 * one.volumeFlow, 9);
        expect(one.profile.lines.reduce<number>((sum, share) => sum + (share ?? 0), 0)).toBeCloseTo(5, 9);
      }),
    );
  });

  test('a grid half filled in is partial, wider, and never counted as zero', () => {
    const full = airflowFromTraverse(pitot);
    const half = airflowFromTraverse({
      ...pitot,
      readings: even(12).map((line, i) => (i < 3 ? line : line.map(() => null))),
    });
    expect([full.partial, half.partial]).toEqual([false, true]);
    expect(half.volumeFlow).toBeCloseTo(full.volumeFlow, 12);
    expect(half.u).toBeGreaterThan(full.u);
    expect(half.profile.lines.slice(3)).toEqual([null, null]);
  });

  test.each([
    [0, 'outOfRange'],
    [-3, 'outOfRange'],
    [9999, 'outOfRange'],
    [Number.NaN, 'notFinite'],
  ])('a pressure of %d is the problem of its own cell, and the others answer', (value, code) => {
    const answer = airflowFromTraverse({ ...pitot, readings: changed(even(12), 2, 4, value) });
    expect(answer.problems.map((problem) => [problem.code, problem.quantity])).toEqual([[code, 'readings.2.4']]);
    expect(answer.partial).toBe(true);
    expect(answer.velocities[2]?.[4]).toBeNull();
    expect(answer.volumeFlow).toBeCloseTo(airflowFromTraverse(pitot).volumeFlow, 12);
  });

  test.each([
    ['nothing typed', { readings: even(null) }, ['missing', 'readings']],
    ['only bad cells', { readings: changed(even(null), 1, 2, -1) }, ['outOfRange', 'readings.1.2']],
    ['a line too few', { readings: even(12).slice(1) }, ['wrongLength', 'readings']],
    ['a point too few', { readings: even(12).map((line) => line.slice(1)) }, ['wrongLength', 'readings.0']],
    ['air without density', { air: airOf(0) }, ['notFinite', 'air.specificVolume']],
    ['a gauge that is never right', { gauge: { name: 'g', limit: 2 } }, ['outOfRange', 'gauge.limit']],
  ])('refuses %s', (_, change, error) => {
    expect(errorOf(() => airflowFromTraverse({ ...pitot, ...change }))).toEqual(error);
  });

  test('the acceptance check counts velocity pressures above a tenth of the greatest', () => {
    const uneven = even(20).map((line, i) => (i < 2 ? line.map(() => 1.9) : line));
    const answer = airflowFromTraverse({ ...pitot, readings: uneven });
    expect(answer.acceptance).toEqual({ share: 0.6, passes: false });
    expect(codes(answer)).toContain('traverseUneven');
    expect(airflowFromTraverse({ ...pitot, readings: changed(uneven, 0, 0, 2.1) }).acceptance.share).toBe(0.64);
  });

  test('says what is known of the section, of a slow stream and of a reading taken again', () => {
    expect(codes(airflowFromTraverse(pitot))).toEqual([]);
    expect(codes(airflowFromTraverse({ ...pitot, straight: null }))).toEqual(['traverseStraightUnknown']);
    // The circle of the same area is 0.505 m wide: 2.6 m are 5.2 of it.
    const short = { ...pitot, straight: { length: 2.6, after: 'other' } } as const;
    expect(codes(airflowFromTraverse(short))).toEqual(['traverseDisturbed']);
    expect(codes(airflowFromTraverse({ ...pitot, straight: { length: 2.6, after: 'fan' } }))).toEqual([]);
    expect(airflowFromTraverse(short).u).toBeGreaterThan(airflowFromTraverse(pitot).u);
    const slow = 0.5 * 1.2014 * (590 * footPerMinute) ** 2;
    expect(codes(airflowFromTraverse({ ...pitot, readings: even(slow) }))).toEqual(['pitotTooSlow']);
    const again = [
      { line: 0, point: 0, reading: 12 * 1.09 },
      { line: 4, point: 1, reading: 12 * 1.11 },
    ];
    const repeated = airflowFromTraverse({ ...pitot, again });
    expect(repeated.remarks.map(({ code, amounts }) => [code, amounts[0]?.value, amounts[1]?.value])).toEqual([
      ['traverseNotRepeated', 5, 2],
    ]);
  });

  test('a Pitot tube feels half of its gauge’s error', () => {
    const gauge = { name: 'spare', limit: 0.06 };
    const source = airflowFromTraverse({ ...pitot, gauge }).sources.find(({ name }) => name === 'gauge.spare');
    expect(source).toMatchObject({ u: 0.06 / Math.sqrt(3), moves: { airflow: 0.5 }, shape: 'rectangular' });
    const moved = airflowFromTraverse({ ...pitot, readings: even(12 * 1.02) }).volumeFlow;
    expect(moved / airflowFromTraverse(pitot).volumeFlow - 1).toBeCloseTo(0.01, 4);
  });
});
