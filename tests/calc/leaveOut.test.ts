import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Derate, type DerateCause, leaveOut } from '../../src/calc/index.ts';

const causes: readonly DerateCause[] = [
  'certified',
  'temperatures',
  'indoorMatch',
  'airflow',
  'blowerInside',
  'lineSet',
  'altitude',
  'blowerHere',
];

/** A chain of steps through the given capacities, W. */
function chain(values: readonly number[]): readonly Derate[] {
  return causes.map((cause, i) => {
    const [before, after] = [values[i]!, values[i + 1]!];
    return { cause, applies: true, factor: after / before, before, after, band: 0.01, source: 'makersTable' };
  });
}

const capacities = fc.array(fc.double({ min: 5000, max: 15000, noNaN: true }), { minLength: 9, maxLength: 9 });
const some = fc.subarray([...causes]).map((list) => new Set(list));
const example = chain([10000, 9000, 8500, 8500, 8500, 8800, 8700, 8265, 7865]);

describe('leaveOut', () => {
  test('leaves a chain as it is where nothing is left out', () => {
    for (const [i, step] of leaveOut(example, new Set()).entries()) {
      expect(step.before).toBeCloseTo(example[i]!.before, 9);
      expect(step.after).toBeCloseTo(example[i]!.after, 9);
      expect(step.applies).toBe(true);
    }
  });

  test('leaves out a factor: what follows is that much more', () => {
    const last = leaveOut(example, new Set(['certified'])).at(-1)!;
    // 10 000 W · 8500/9000, 300 W put back, the line’s and the height’s factors, 400 W taken off.
    expect(last.after).toBeCloseTo(((10000 * 8500) / 9000 + 300) * (8700 / 8800) * (8265 / 8700) - 400, 9);
  });

  test('leaves out blower heat as watts, not as a factor', () => {
    expect(leaveOut(example, new Set(['blowerHere'])).at(-1)!.after).toBeCloseTo(8265, 9);
    const inside = leaveOut(example, new Set(['blowerInside'])).at(-1)!.after;
    expect(inside).toBeCloseTo(8500 * (8700 / 8800) * (8265 / 8700) - 400, 9);
  });

  test('gives a chain without gaps, in which a step that is left out changes nothing and claims nothing', () => {
    fc.assert(
      fc.property(capacities, some, (values, out) => {
        const steps = leaveOut(chain(values), out);
        expect(steps[0]!.before).toBe(values[0]);
        for (const [i, step] of steps.entries()) {
          if (i > 0) expect(step.before).toBe(steps[i - 1]!.after);
          expect((step.factor * step.before) / step.after).toBeCloseTo(1, 12);
          if (!out.has(step.cause)) continue;
          expect(step.after).toBe(step.before);
          expect([step.applies, step.band]).toEqual([false, 0]);
        }
      }),
    );
  });

  test('comes to where it began when every step is left out', () => {
    fc.assert(
      fc.property(capacities, (values) => {
        expect(leaveOut(chain(values), new Set(causes)).at(-1)!.after).toBe(values[0]);
      }),
    );
  });

  test('takes no steps at all', () => {
    expect(leaveOut([], new Set(['certified']))).toEqual([]);
  });
});
