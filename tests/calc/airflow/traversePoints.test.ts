import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  inch,
  linesFor,
  logLinear,
  logTchebycheff,
  pointsFor,
  type Section,
  traversePoints,
} from '../../../src/calc/index.ts';
import { errorOf } from './support.ts';

/**
 * Chebyshev's nodes for equal weights on −1 … 1, from the moments alone: with u and v the squares of the outer and inner pair,
 * m points have Σx² = m/3 and Σx⁴ = m/5.
 */
function chebyshev(m: 3 | 4 | 5): number[] {
  if (m === 3) return [-Math.SQRT1_2, 0, Math.SQRT1_2];
  const sum = m / 6;
  const squares = m / 10;
  const difference = Math.sqrt(2 * squares - sum ** 2);
  const [outer, inner] = [Math.sqrt((sum + difference) / 2), Math.sqrt((sum - difference) / 2)];
  return m === 4 ? [-outer, -inner, inner, outer] : [-outer, -inner, 0, inner, outer];
}

/** Log-law in the strip at the wall, of width 1/n, whose mean velocity stands at 1/(n·e); Chebyshev's nodes in between. */
function derived(n: 5 | 6 | 7): number[] {
  const wall = 1 / (n * Math.E);
  const inner = chebyshev((n - 2) as 3 | 4 | 5).map((x) => 0.5 + x * (0.5 - 1 / n));
  return [wall, ...inner, 1 - wall];
}

describe('positions from first principles', () => {
  test.each([5, 6, 7] as const)('log-Tchebycheff with %d lines', (n) => {
    derived(n).forEach((position, i) => {
      expect(Math.abs(logTchebycheff[n][i]! - position)).toBeLessThanOrEqual(5.1e-5);
    });
  });

  test.each([6, 8, 10] as const)('log-linear with %d points averages a logarithmic profile over the circle', (n) => {
    const halves = logLinear[n].slice(0, n / 2).map((position) => 2 * position);
    const average = (of: (y: number) => number) => halves.reduce((sum, y) => sum + of(y), 0) / halves.length;
    // ∫ ln(y/R)·2r dr over the circle is −1.5, ∫ (y/R)·2r dr is 1/3.
    expect(Math.abs(average(Math.log) + 1.5)).toBeLessThan(0.005);
    expect(Math.abs(average((y) => y) - 1 / 3)).toBeLessThan(0.009);
  });

  test.each([
    [6, -0.27],
    [8, -0.09],
    [10, -0.11],
  ] as const)('log-linear with %d points on a profile to the power 1/7: %d %%', (n, error) => {
    const shares = logLinear[n].slice(0, n / 2).map((position) => (2 * position) ** (1 / 7));
    const mean = shares.reduce((sum, one) => sum + one, 0) / shares.length;
    // 49/60 is the mean of (y/R)^(1/7) over the circle.
    expect(Math.abs(100 * (mean / (49 / 60) - 1) - error)).toBeLessThan(0.02);
  });

  const rules: readonly (readonly number[])[] = [...Object.values(logTchebycheff), ...Object.values(logLinear)];

  test.each(rules.map((row) => ({ row })))('are the same from either wall: $row', ({ row }) => {
    row.forEach((position, i) => {
      expect(position + row[row.length - 1 - i]!).toBeCloseTo(1, 9);
    });
  });
});

describe('traversePoints', () => {
  test('takes more lines for a longer side, and more points for a wider pipe', () => {
    expect([20, 29.9, 30, 36, 36.1].map((side) => linesFor(side * inch))).toEqual([5, 5, 6, 6, 7]);
    expect([6, 10, 10.1].map((side) => pointsFor(side * inch))).toEqual([6, 6, 8]);
  });

  test('puts the holes of a rectangular duct along the top, depths from there', () => {
    const { lines, area } = traversePoints({ shape: 'rectangular', width: 0.8, height: 0.4 });
    expect([lines.length, lines[0]?.points.length, area]).toEqual([6, 5, expect.closeTo(0.32, 12)]);
    expect(lines[0]).toMatchObject({ x: 0.0613 * 0.8, y: 0 });
    expect(lines[0]?.points[1]).toEqual({ depth: 0.2879 * 0.4, x: 0.0613 * 0.8, y: 0.2879 * 0.4 });
  });

  test('turns the diameters of a round duct by equal angles, the first one upright', () => {
    const { lines } = traversePoints({ shape: 'round', diameter: 0.3, lines: 3, points: 6 });
    expect(lines.map(({ angle }) => angle)).toEqual([0, 60, 120]);
    // Clockwise from the top: the second hole is on the right, 60° down from the top, the third 120°.
    const holes = [
      [0.15, 0],
      [0.15 + 0.15 * Math.sin(Math.PI / 3), 0.15 - 0.15 * 0.5],
      [0.15 + 0.15 * Math.sin(Math.PI / 3), 0.15 + 0.15 * 0.5],
    ];
    expect(lines.map(({ x, y }) => [x, y])).toEqual(
      holes.map((hole) => hole.map((value) => expect.closeTo(value, 12))),
    );
  });

  test('has the area of the duct, and the circle that is as wide', () => {
    const round = traversePoints({ shape: 'round', diameter: 0.3 });
    expect([round.area, round.diameter]).toEqual([expect.closeTo(0.0706858347, 9), expect.closeTo(0.3, 12)]);
    const square = traversePoints({ shape: 'rectangular', width: 0.3, height: 0.3 });
    expect(square.diameter).toBeCloseTo(0.3 * Math.sqrt(4 / Math.PI), 12);
  });

  test('says which counts the rules have', () => {
    expect(() => traversePoints({ shape: 'round', diameter: 1, points: 7 as 6 })).toThrow(
      expect.objectContaining({ quantity: 'points', min: 6, max: 10 }),
    );
    expect(() => traversePoints({ shape: 'rectangular', width: 1, height: 1, lines: 8 as 7 })).toThrow(
      expect.objectContaining({ quantity: 'lines', min: 5, max: 7 }),
    );
  });

  const sections = fc.oneof(
    fc.record({
      shape: fc.constant('rectangular' as const),
      width: fc.double({ min: 0.05, max: 3, noNaN: true }),
      height: fc.double({ min: 0.05, max: 3, noNaN: true }),
    }),
    fc.record({
      shape: fc.constant('round' as const),
      diameter: fc.double({ min: 0.05, max: 3, noNaN: true }),
      lines: fc.constantFrom(2 as const, 3 as const),
    }),
  );

  test('keeps every point inside the duct, at its depth from the hole', () => {
    fc.assert(
      fc.property(sections, (section: Section) => {
        const [width, height] =
          section.shape === 'round' ? [section.diameter, section.diameter] : [section.width, section.height];
        for (const line of traversePoints(section).lines) {
          for (const { depth, x, y } of line.points) {
            expect(x > 0 && x < width && y > 0 && y < height).toBe(true);
            expect(Math.hypot(x - line.x, y - line.y)).toBeCloseTo(depth, 9);
          }
        }
      }),
    );
  });

  test.each([
    [{ shape: 'round', diameter: 0 }, ['outOfRange', 'diameter']],
    [{ shape: 'rectangular', width: Number.NaN, height: 1 }, ['notFinite', 'width']],
    [{ shape: 'rectangular', width: 1, height: -1 }, ['outOfRange', 'height']],
    [{ shape: 'rectangular', width: 1, height: 1, lines: 4 }, ['outOfRange', 'lines']],
    [{ shape: 'round', diameter: 1, points: 7 }, ['outOfRange', 'points']],
    [{ shape: 'round', diameter: 1, lines: 1 }, ['outOfRange', 'lines']],
  ])('refuses %o', (section, error) => {
    expect(errorOf(() => traversePoints(section as Section))).toEqual(error);
  });
});
