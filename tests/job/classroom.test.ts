import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exercisesOf } from '../../src/job/classroom/exercises.ts';
import { exerciseKinds } from '../../src/job/classroom/types.ts';
import { grids } from '../../src/words/en/exerciseGrids.ts';
import { figures, kinds } from '../../src/words/en/exercises.ts';

const set = fc.integer({ min: 1, max: 9999 });

test('a set has one exercise of each kind, and the same number gives the same set', () => {
  expect(exercisesOf(7).map(({ kind }) => kind)).toEqual(exerciseKinds);
  expect(exercisesOf(7)).toEqual(exercisesOf(7));
  expect(exercisesOf(8)).not.toEqual(exercisesOf(7));
});

test('every figure is finite and has a name, and what is asked comes out of the steps', () => {
  fc.assert(
    fc.property(set, (number) => {
      for (const { kind, given, grid, answers, steps } of exercisesOf(number)) {
        expect(kinds[kind]).toBeDefined();
        for (const { name, value } of [...given, ...answers]) {
          expect(Number.isFinite(value), name).toBe(true);
          expect(figures[name]).toBeDefined();
        }
        if (grid) expect(grids[grid.name]).toBeDefined();
        expect(steps.length).toBeGreaterThan(1);
        if (kind === 'verdict') continue;
        const shown = steps.map(({ gives }) => gives.value);
        for (const { value } of answers.filter(({ name }) => name !== 'wetBulb'))
          expect(Math.min(...shown.map((one) => Math.abs(one / value - 1)))).toBeLessThan(1e-9);
      }
    }),
    { numRuns: 60 },
  );
});

/** The same sums without the package: by hand, from the figures that are given. */
describe('worked by hand', () => {
  const exercise = (number: number, kind: (typeof exerciseKinds)[number]) => {
    const found = exercisesOf(number).find((one) => one.kind === kind)!;
    const value = (name: string) =>
      [...found.given, ...found.answers].find((figure) => figure.name === name)?.value ?? Number.NaN;
    return { found, value };
  };

  test.each([1, 2, 3])('the table of set %d is read in the middle of its four figures', (number) => {
    const { found, value } = exercise(number, 'interpolation');
    const [low, high] = found.grid!.columns as [number, number];
    const [first, second] = found.grid!.rows as [{ head: number; cells: number[] }, { head: number; cells: number[] }];
    const x = (value('outdoors') - low) / (high - low);
    const y = (value('returnWetBulb') - first.head) / (second.head - first.head);
    const at = (cells: number[]) => cells[0]! + x * (cells[1]! - cells[0]!);
    expect(value('total')).toBeCloseTo(at(first.cells) + y * (at(second.cells) - at(first.cells)), 6);
  });

  test.each([1, 2, 3])('the traverse of set %d is the mean of its readings times the area', (number) => {
    const { found, value } = exercise(number, 'traverse');
    const all = found.grid!.rows.flatMap(({ cells }) => cells);
    const mean = all.reduce((sum, one) => sum + one, 0) / 25;
    expect(all).toHaveLength(25);
    expect(value('meanVelocity')).toBeCloseTo(mean, 9);
    expect(value('airflow')).toBeCloseTo(mean * value('ductWidth') * value('ductHeight'), 9);
  });

  test.each([1, 2, 3])('the limits of set %d are put together by squares', (number) => {
    const { value } = exercise(number, 'budget');
    expect(value('uncertainty')).toBeCloseTo(Math.hypot(value('airflowLimit'), value('dropLimit')) / Math.sqrt(3), 6);
  });

  /** 1.28155: the 90 % point of the normal distribution, as printed in tables of it. */
  test('the range of a verdict ends 1.28155 standard uncertainties off, rounded outward', () => {
    fc.assert(
      fc.property(set, (number) => {
        const { found, value } = exercise(number, 'verdict');
        const half = 1.28155 * value('uncertainty');
        expect(value('low')).toBeLessThanOrEqual(value('share') - half + 1e-5);
        expect(value('low')).toBeGreaterThan(value('share') - half - 0.0101);
        expect(value('high')).toBeGreaterThanOrEqual(value('share') + half - 1e-5);
        expect(value('high')).toBeLessThan(value('share') + half + 0.0101);
        const verdict =
          value('low') >= value('line') ? 'meets' : value('high') < value('line') ? 'short' : 'cannotTell';
        expect(found.verdict).toBe(verdict);
      }),
      { numRuns: 60 },
    );
  });

  test('all three verdicts come up', () => {
    const found = Array.from({ length: 40 }, (_, index) => exercise(index + 1, 'verdict').found.verdict);
    expect(new Set(found).size).toBe(3);
  });
});
