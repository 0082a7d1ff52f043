/** The normal distribution and Student's t, against their closed forms and against constants of Γ. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalChance, normalQuantile } from '../../src/calc/confidence/normal.ts';
import { studentChance, studentQuantile } from '../../src/calc/confidence/student.ts';

/** Chances below t in closed form, for the few degrees of freedom that have one (integrals of (1 + t²/ν)^(−(ν+1)/2)). */
const closed: Readonly<Record<number, (t: number) => number>> = {
  1: (t) => 0.5 + Math.atan(t) / Math.PI,
  2: (t) => 0.5 + t / (2 * Math.sqrt(2 + t * t)),
  3: (t) => 0.5 + (Math.atan(t / Math.sqrt(3)) + t / Math.sqrt(3) / (1 + (t * t) / 3)) / Math.PI,
  4: (t) => {
    const s = t / Math.sqrt(1 + (t * t) / 4);
    return 0.5 + (3 / 8) * s * (1 - (s * s) / 12);
  },
  5: (t) => {
    const w = 1 + (t * t) / 5;
    return 0.5 + (Math.atan(t / Math.sqrt(5)) + (t / Math.sqrt(5) / w) * (1 + 2 / (3 * w))) / Math.PI;
  },
};
const degrees = Object.keys(closed).map(Number);

describe('the normal distribution', () => {
  test.each([
    // Any table of it, to its last figure.
    [0, 0.5],
    [1, 0.841344746068543],
    [2, 0.977249868051821],
    [-3, 0.00134989803163],
    [6, 0.999999999013412],
  ])('has at %d the chance of the tables', (z, chance) => {
    expect(Math.abs(normalChance(z) - chance)).toBeLessThan(2e-15);
  });

  test('ends at 0 and 1 however far out it is asked for', () => {
    for (const z of [9, 9.5, 40, 1e200, Number.POSITIVE_INFINITY]) {
      expect(normalChance(z)).toBeCloseTo(1, 15);
      expect(normalChance(-z)).toBeCloseTo(0, 15);
    }
  });

  test('has quantiles that lead back to their chance, on both sides of the middle', () => {
    expect(normalQuantile(0.5)).toBe(0);
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 12);
    for (const p of [0.001, 0.05, 0.3, 0.51, 0.9, 0.999, 0.999999]) {
      expect(normalChance(normalQuantile(p))).toBeCloseTo(p, 12);
      expect(normalQuantile(1 - p)).toBeCloseTo(-normalQuantile(p), 9);
    }
  });
});

describe('Student’s t', () => {
  test('has the chance of its closed forms, for one to five degrees of freedom', () => {
    fc.assert(
      fc.property(fc.constantFrom(...degrees), fc.double({ min: -60, max: 60, noNaN: true }), (free, t) => {
        expect(Math.abs(studentChance(t, free) - (closed[free] as (t: number) => number)(t))).toBeLessThan(1e-12);
      }),
    );
    for (const free of degrees) {
      expect(studentChance(0, free)).toBe(0.5);
      // Near the middle too, where one less a share of it would have lost its figures.
      for (const t of [1e-8, 1e-5, 1e-3]) {
        const rise = (closed[free] as (t: number) => number)(1e-3) - 0.5;
        expect((studentChance(t, free) - 0.5) / (rise * 1e3 * t)).toBeCloseTo(1, 5);
      }
    }
  });

  test('has the quantiles of its closed forms', () => {
    for (const p of [0.001, 0.1, 0.4, 0.5, 0.6, 0.9, 0.975, 0.999]) {
      const [one, two, four] = [1, 2, 4].map((free) => studentQuantile(p, free)) as [number, number, number];
      expect(one / Math.tan(Math.PI * (p - 0.5)) || 1).toBeCloseTo(1, 10);
      expect(two).toBeCloseTo((2 * p - 1) / Math.sqrt(2 * p * (1 - p)), 10);
      const a = Math.sqrt(4 * p * (1 - p));
      expect(Math.abs(four)).toBeCloseTo(2 * Math.sqrt(Math.cos(Math.acos(a) / 3) / a - 1), 10);
      expect(Math.sign(four)).toBe(Math.sign(p - 0.5));
    }
  });

  test('has for half a degree of freedom the height that Γ(¾) and Γ(¼) give its middle', () => {
    // Γ(1/4) = 3.625609908221908 and Γ(3/4) = 1.225416702465178, from any table of Γ.
    const height = 1.225416702465178 / 3.625609908221908 / Math.sqrt(0.5 * Math.PI);
    expect((studentChance(1e-3, 0.5) - studentChance(-1e-3, 0.5)) / 2e-3 / height).toBeCloseTo(1, 5);
  });

  test('rises without a jump where its fraction turns to the other tail, whatever the degrees of freedom', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1e5, noNaN: true }), (free) => {
        // Half of a tail is I_x(ν/2, ½) at x = ν/(ν + t²); its fraction is best below (a + 1)/(a + b + 2).
        const x = (free / 2 + 1) / (free / 2 + 2.5);
        const t = Math.sqrt(free / x - free);
        const [below, above] = [studentChance(t * (1 - 1e-9), free), studentChance(t * (1 + 1e-9), free)];
        expect(above).toBeGreaterThanOrEqual(below);
        expect(above - below).toBeLessThan(1e-8);
        expect(studentChance(-t, free)).toBeCloseTo(1 - studentChance(t, free), 12);
      }),
    );
  });

  test('has quantiles that lead back to their chance, whole degrees of freedom or not', () => {
    const chances = fc.double({ min: 0.002, max: 0.998, noNaN: true });
    fc.assert(
      fc.property(chances, fc.double({ min: 0.3, max: 1e6, noNaN: true }), (p, free) => {
        expect(studentChance(studentQuantile(p, free), free)).toBeCloseTo(p, 9);
      }),
    );
  });

  test('becomes the normal distribution with many degrees of freedom, and never narrower than it', () => {
    for (const free of [1e6, 1e7, 1e9, null]) {
      expect(studentChance(1.3, free)).toBeCloseTo(normalChance(1.3), 6);
      expect(studentQuantile(0.95, free)).toBeCloseTo(normalQuantile(0.95), 5);
      expect(studentQuantile(0.95, free)).toBeGreaterThanOrEqual(normalQuantile(0.95) - 1e-9);
    }
    expect(studentChance(1.3, null)).toBe(normalChance(1.3));
    expect(studentQuantile(0.95, null)).toBe(normalQuantile(0.95));
  });

  test('ends at 0 and 1 however far out it is asked for', () => {
    for (const free of [1, 4, 30]) {
      expect([studentChance(1e200, free), studentChance(-1e200, free)]).toEqual([1, 0]);
    }
  });
});
