/** What a window that rolls over a record shows, against the same worked out anew for each row. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batchMeans } from '../../src/calc/confidence/batches.ts';
import { rollingSpread, rollingTrend } from '../../src/calc/confidence/rolling.ts';

const width = 60;
/** Rows with uneven steps of time and readings that repeat. */
const records = fc.array(
  fc.record({ step: fc.integer({ min: 1, max: 40 }), value: fc.integer({ min: 10, max: 30 }) }),
  {
    minLength: 1,
    maxLength: 40,
  },
);
function columns(rows: readonly { readonly step: number; readonly value: number }[], origin: number) {
  let now = origin;
  const time = Float64Array.from(rows, ({ step }) => {
    now += step;
    return now;
  });
  return { time, values: Float64Array.from(rows, ({ value }) => value) };
}
/** The rows of the window that ends at row `i`, both of its ends among them. */
function windowAt(time: Float64Array, values: Float64Array, i: number): readonly (readonly [number, number])[] {
  const end = time[i] as number;
  return Array.from(time, (t, row) => [t, values[row] as number] as const).filter(
    ([t], row) => row <= i && t >= end - width,
  );
}
/** Least squares by its definition: Σ(t − t̄)(x − x̄)/Σ(t − t̄)². */
function slopeOf(rows: readonly (readonly [number, number])[]): number {
  const mean = (of: 0 | 1) => rows.reduce((sum, row) => sum + row[of], 0) / rows.length;
  const [t, x] = [mean(0), mean(1)];
  return (
    rows.reduce((sum, row) => sum + (row[0] - t) * (row[1] - x), 0) /
    rows.reduce((sum, row) => sum + (row[0] - t) ** 2, 0)
  );
}

describe('a rolling window', () => {
  test('has the highest less the lowest of its rows', () => {
    fc.assert(
      fc.property(records, (rows) => {
        const { time, values } = columns(rows, 0);
        const spread = rollingSpread(time, values, width);
        spread.forEach((found, i) => {
          const inside = windowAt(time, values, i).map(([, value]) => value);
          expect(found).toBe(Math.max(...inside) - Math.min(...inside));
        });
      }),
    );
  });

  test('has the straight line of its rows, as the change over the whole window for their mean', () => {
    fc.assert(
      fc.property(records, fc.constantFrom(0, 1.7e9), (rows, origin) => {
        const { time, values } = columns(rows, origin);
        const trend = rollingTrend(time, values, width);
        trend.forEach((found, i) => {
          const inside = windowAt(time, values, i);
          const mean = inside.reduce((sum, [, value]) => sum + value, 0) / inside.length;
          // Two rows always lie on a line: they show no trend.
          expect(found).toBeCloseTo(inside.length > 2 ? (slopeOf(inside) * width) / mean : 0, 6);
        });
      }),
    );
  });

  test('shows no trend where nothing changes, and has no rows where there are none', () => {
    const time = Float64Array.from({ length: 30 }, (_, i) => 10 * i);
    expect(Math.max(...rollingTrend(time, new Float64Array(30).fill(20), width).map(Math.abs))).toBeLessThan(1e-12);
    expect([
      rollingSpread(new Float64Array(0), new Float64Array(0), width).length,
      rollingTrend(new Float64Array(0), new Float64Array(0), width).length,
    ]).toEqual([0, 0]);
  });
});

describe('batch means', () => {
  test('of seven readings are those of five parts in the order of time, worked by hand', () => {
    // Parts [1] [2 4] [5] [7 9] [11] have the means 1, 3, 5, 8, 11, together 5.6; their squares about it add up to 63.2.
    const found = batchMeans([1, 2, 4, 5, 7, 9, 11]);
    expect(found?.mean).toBeCloseTo(39 / 7, 12);
    expect(found?.u).toBeCloseTo(Math.sqrt(63.2 / 4 / 5), 12);
    expect(found?.degreesOfFreedom).toBe(4);
    expect(found?.parts).toEqual([-4.6, -2.6, -0.6, 2.4, 5.4].map((part) => expect.closeTo(part, 12)));
  });

  test('of fewer than five are the readings themselves, and one reading has none', () => {
    // 20, 22, 27: mean 23, squares 9 + 1 + 16 = 26.
    expect(batchMeans([20, 22, 27])).toEqual({
      mean: 23,
      u: Math.sqrt(26 / 2 / 3),
      degreesOfFreedom: 2,
      parts: [-3, -1, 4],
    });
    expect(batchMeans([20, 22])).toEqual({ mean: 21, u: 1, degreesOfFreedom: 1, parts: [-1, 1] });
    expect([batchMeans([20]), batchMeans([])]).toEqual([null, null]);
  });
});
