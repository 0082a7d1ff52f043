/**
 * The fit of the enhancement factor's five coefficients, to be run again with `node tests/published/printFit.ts`.
 *
 * Form: f = 1 + A + p·[B + C·(t + D + E·p)²] (Buck 1981), worked in °C and bar. Each state of the list says f twice: at its dry bulb,
 * from the relative humidity, and at its dew point. Two thirds of the list are used; every third row is kept for the
 * test. The saturation pressures are those of Eq. 5 and 6, so that the fit takes up their bias too.
 */
import { saturationPressure } from '../../src/calc/index.ts';
import { heldBack, type RealGasRow, realGasRows } from './data/realGasRows.ts';

export interface Point {
  readonly t: number;
  /** bar */
  readonly p: number;
  readonly f: number;
}

type Coefficients = readonly number[];

export function pointsOf(rows: readonly RealGasRow[]): Point[] {
  return rows.flatMap(([t, pascal, relativeHumidity, W, , , , dewPoint]) => {
    const vapor = (pascal * W) / (0.621945 + W);
    const p = pascal / 1e5;
    return [
      { t, p, f: vapor / (relativeHumidity * saturationPressure(t)) },
      { t: dewPoint, p, f: vapor / saturationPressure(dewPoint) },
    ];
  });
}

/** Scaled so that all five are of the order of 1 to 50, and one can be compared with another. */
function model([A, B, C, D, E]: Coefficients, { t, p }: Point): number {
  return 1 + A! * 1e-3 + p * (B! * 1e-3 + C! * 1e-6 * (t + D! + E! * p) ** 2);
}

/** Solves a small linear system by elimination with pivots. */
function solve(matrix: number[][], right: number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    const pivot = rows.slice(i).reduce((best, row) => (Math.abs(row[i]!) > Math.abs(best[i]!) ? row : best));
    rows[rows.indexOf(pivot)] = rows[i]!;
    rows[i] = pivot;
    for (let j = i + 1; j < n; j++) {
      const share = rows[j]![i]! / pivot[i]!;
      rows[j] = rows[j]!.map((x, k) => x - share * pivot[k]!);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const known = x.reduce((sum, value, k) => (k > i ? sum + rows[i]![k]! * value : sum), 0);
    x[i] = (rows[i]![n]! - known) / rows[i]![i]!;
  }
  return x;
}

function squares(c: Coefficients, points: readonly Point[]): number {
  return points.reduce((sum, point) => sum + (point.f - model(c, point)) ** 2, 0);
}

/** Least squares by Levenberg and Marquardt, with differences for derivatives. */
export function leastSquares(points: readonly Point[], start: Coefficients): Coefficients {
  let c = start;
  let damping = 1e-3;
  for (let round = 0; round < 500; round++) {
    const gaps = points.map((point) => point.f - model(c, point));
    const slopes = points.map((point) =>
      c.map((value, k) => {
        const h = 1e-4 * Math.max(1, Math.abs(value));
        const up = c.map((x, j) => (j === k ? x + h : x));
        const down = c.map((x, j) => (j === k ? x - h : x));
        return (model(up, point) - model(down, point)) / (2 * h);
      }),
    );
    const right = c.map((_, k) => slopes.reduce((sum, row, i) => sum + row[k]! * gaps[i]!, 0));
    const matrix = c.map((_, j) =>
      c.map((__, k) => slopes.reduce((sum, row) => sum + row[j]! * row[k]!, 0) * (j === k ? 1 + damping : 1)),
    );
    const step = solve(matrix, right);
    const next = c.map((x, k) => x + step[k]!);
    if (squares(next, points) < squares(c, points)) {
      c = next;
      damping /= 5;
      if (step.every((x, k) => Math.abs(x) < 1e-9 * Math.max(1, Math.abs(c[k]!)))) break;
    } else {
      damping *= 5;
      if (damping > 1e12) break;
    }
  }
  return c;
}

/** The coefficients to four digits, for °C and Pa as in src/calc/enhancement.ts, and what is left in parts per million. */
export function refit() {
  const used = pointsOf(realGasRows.filter((_, index) => !heldBack(index)));
  const held = pointsOf(realGasRows.filter((_, index) => heldBack(index)));
  const [A, B, C, D, E] = leastSquares(used, [0.7, 3.2, 0.59, 0, 0]).map((x) => Number(x.toPrecision(4)));
  const rounded = [A!, B!, C!, D!, E!];
  const left = (points: readonly Point[]) =>
    1e6 * points.reduce((most, point) => Math.max(most, Math.abs(point.f - model(rounded, point))), 0);
  return {
    coefficients: { A: A! * 1e-3, B: B! * 1e-8, C: C! * 1e-11, D: D!, E: E! * 1e-5 },
    used: left(used),
    held: left(held),
  };
}
