/** Student's t, for any degrees of freedom above zero, whole or not; `null` stands for no end to them. */
import { normalChance, normalQuantile, rootFromMiddle } from './normal.ts';

/** Degrees of freedom from which nothing tells t from the normal distribution. */
const asNormal = 1e7;

const isNormal = (degreesOfFreedom: number | null): degreesOfFreedom is null =>
  degreesOfFreedom === null || degreesOfFreedom > asNormal;

/** The chance of a value below t. Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.1. */
export function studentChance(t: number, degreesOfFreedom: number | null): number {
  if (isNormal(degreesOfFreedom)) return normalChance(t);
  const ratio = (t * t) / degreesOfFreedom;
  const tail = betaShare(1 / (1 + ratio), 1 / (1 + 1 / ratio), degreesOfFreedom / 2, 0.5) / 2;
  return t < 0 ? tail : 1 - tail;
}

/** The value that lies above a share `p` of all, 0 < p < 1. */
export function studentQuantile(p: number, degreesOfFreedom: number | null): number {
  if (isNormal(degreesOfFreedom)) return normalQuantile(p);
  const n = degreesOfFreedom;
  const scale = Math.exp(logGamma((n + 1) / 2) - logGamma(n / 2)) / Math.sqrt(n * Math.PI);
  return rootFromMiddle(
    p,
    (t) => studentChance(t, n),
    (t) => scale * (1 + (t * t) / n) ** (-(n + 1) / 2),
  );
}

/** Regularised incomplete beta function I_x(a, b), from the side on which its fraction ends soon; `y` is 1 − x. */
function betaShare(x: number, y: number, a: number, b: number): number {
  return x > (a + 1) / (a + b + 2) ? 1 - betaFraction(y, x, b, a) : betaFraction(x, y, a, b);
}

/**
 * The same by its continued fraction, the terms taken two at a time (modified Lentz). Digital Library of Mathematical
 * Functions, 8.17.22. One less x would lose its last figures near the middle of t: it comes as `y`.
 */
function betaFraction(x: number, y: number, a: number, b: number): number {
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(y));
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m < 1000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    fraction *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    fraction *= c * d;
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return (front * fraction) / a;
}

/** ln Γ(x), x > 0, to 1e-13: Stirling's series, reached by Γ(x + 1) = x·Γ(x). Handbook of Mathematical Functions, 6.1.41. */
function logGamma(x: number): number {
  let below = 1;
  let y = x;
  for (; y < 10; y++) below *= y;
  const r = 1 / (y * y);
  const series = (1 / 12 - r * (1 / 360 - r * (1 / 1260 - r * (1 / 1680 - r / 1188)))) / y;
  return (y - 0.5) * Math.log(y) - y + 0.5 * Math.log(2 * Math.PI) + series - Math.log(below);
}
