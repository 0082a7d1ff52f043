/** A link as a square: read back by a decoder that is not ours, and not made where no phone would read it. */
import fc from 'fast-check';
import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { longestInSquare, squareCode } from '../../src/job/squareCode.ts';

/** What a decoder sees: the path drawn with so many pixels a module, four modules of white around. */
function read(path: string, size: number, pixels = 3): string | undefined {
  const side = (size + 8) * pixels;
  const image = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let py = 0; py < pixels; py++)
      for (let px = 0; px < Number(length) * pixels; px++) {
        const at = ((Number(y) + 4) * pixels + py) * side + (Number(x) + 4) * pixels + px;
        image.fill(0, at * 4, at * 4 + 3);
      }
  }
  return jsQR(image, side, side)?.data;
}

describe('the square of a link', () => {
  test('says the link, whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'aZ09-_'), minLength: 1, maxLength: 1400 }), (text) => {
        const link = `https://example.org/reports/view/#job=1.${text}`;
        const square = squareCode(link);
        expect(square && read(square.path, square.size)).toBe(link);
      }),
      { numRuns: 8 },
    );
  });

  test.each([
    [300, 'M'],
    [1150, 'M'],
    [1350, 'L'],
    [longestInSquare, 'L'],
  ] as const)('of %i characters mends as much damage as 129 modules leave room for (%s)', (length, mends) => {
    const square = squareCode('x'.repeat(length));
    expect(square?.mends).toBe(mends);
    expect(square?.version).toBeLessThanOrEqual(28);
    expect(square?.size).toBeLessThanOrEqual(129);
  });

  test('is not made of a longer text', () => {
    expect(squareCode('x'.repeat(longestInSquare + 1))).toBeNull();
  });
});
