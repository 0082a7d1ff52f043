/** Rows of a symmetric matrix. */
export type Matrix = readonly (readonly number[])[];

/** x of A·x = b for a symmetric, positive definite A, by Cholesky. */
export function solve(a: Matrix, b: readonly number[]): readonly number[] {
  const n = b.length;
  const factor: number[][] = [];
  for (let i = 0; i < n; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = a[i]![j]!;
      for (let k = 0; k < j; k++) sum -= row[k]! * (i === j ? row[k]! : factor[j]![k]!);
      row.push(i === j ? Math.sqrt(sum) : sum / factor[j]![j]!);
    }
    factor.push(row);
  }
  const y: number[] = [];
  for (let i = 0; i < n; i++) y.push((b[i]! - dot(factor[i]!, y)) / factor[i]![i]!);
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = y[i]!;
    for (let k = i + 1; k < n; k++) sum -= factor[k]![i]! * x[k]!;
    x[i] = sum / factor[i]![i]!;
  }
  return x;
}

/** Sum of the products, as far as the second goes. */
export function dot(a: readonly number[], b: readonly number[]): number {
  return b.reduce((sum, value, i) => sum + value * (a[i] ?? 0), 0);
}

/**
 * Weights, summing to 1, that make the variance of a weighted mean the least, none of them negative: generalised least squares
 * with the covariance of the figures (JCGM 102, or Aitken's theorem). A figure that could only come in with its sign turned,
 * because it shares its error with a better one, has no weight.
 */
export function leastWeights(covariance: Matrix): readonly number[] {
  let kept = covariance.map((_, i) => i);
  for (;;) {
    const part = kept.map((i) => kept.map((j) => covariance[i]![j]!));
    const raw = solve(
      part,
      kept.map(() => 1),
    );
    const worst = raw.indexOf(Math.min(...raw));
    if (raw[worst]! >= 0) {
      const sum = raw.reduce((total, value) => total + value, 0);
      const weights = new Array<number>(covariance.length).fill(0);
      kept.forEach((i, at) => {
        weights[i] = raw[at]! / sum;
      });
      return weights;
    }
    kept = kept.filter((_, at) => at !== worst);
  }
}

/** 95 % points of χ² for one to seven degrees of freedom (`chiSquare`). */
const points = [3.841, 5.991, 7.815, 9.488, 11.07, 12.592, 14.067] as const;

/** The most that χ² comes to nineteen times in twenty where nothing is wrong; nothing for no degree of freedom. */
export function chiSquareAllowed(degreesOfFreedom: number): number {
  return degreesOfFreedom === 0 ? 0 : (points[degreesOfFreedom - 1] as number);
}
