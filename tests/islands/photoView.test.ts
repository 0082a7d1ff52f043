import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostZoom, panned, type View, wholeView, zoomed } from '../../src/islands/capacity/rating/photoView.ts';

const size = fc.record({ width: fc.integer({ min: 8, max: 8000 }), height: fc.integer({ min: 8, max: 8000 }) });
const shape = 216 / 358;
const share = fc.double({ min: -2, max: 2, noNaN: true });
const within = fc.double({ min: 0, max: 1, noNaN: true });
type Move = (view: View, of: { width: number; height: number }) => View;
const move: fc.Arbitrary<Move> = fc.oneof(
  fc.tuple(share, share).map(
    ([across, down]): Move =>
      (view, of) =>
        panned(view, across, down, of),
  ),
  fc.tuple(fc.double({ min: 0.1, max: 10, noNaN: true }), within, within).map(
    ([by, across, down]): Move =>
      (view, of) =>
        zoomed(view, by, [across, down], of),
  ),
);

test('however it is moved and enlarged, the view keeps its shape and never leaves the picture', () => {
  fc.assert(
    fc.property(size, fc.array(move, { maxLength: 12 }), (of, moves) => {
      const view = moves.reduce((now, one) => one(now, of), wholeView(of, shape));
      expect(view.height / view.width).toBeCloseTo(shape, 9);
      expect(view.width).toBeLessThanOrEqual(of.width * (1 + 1e-9));
      expect(view.width).toBeGreaterThanOrEqual((of.width / mostZoom) * (1 - 1e-9));
      expect(view.x).toBeGreaterThanOrEqual(-1e-6);
      expect(view.x + view.width).toBeLessThanOrEqual(of.width * (1 + 1e-9));
      if (view.height > of.height) expect(view.y + view.height / 2).toBeCloseTo(of.height / 2, 6);
      else expect(view.y).toBeGreaterThanOrEqual(-1e-6);
    }),
  );
});

test('what is under the finger stays there while the picture is enlarged', () => {
  const before = { x: 300, y: 400, width: 1000, height: 600 };
  const after = zoomed(before, 2, [0.25, 0.5], { width: 4000, height: 3000 });
  expect(after.x + 0.25 * after.width).toBeCloseTo(before.x + 0.25 * before.width, 9);
  expect(after.y + 0.5 * after.height).toBeCloseTo(before.y + 0.5 * before.height, 9);
});
