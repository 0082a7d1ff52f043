/** The normal distribution: chance, density and quantile. */

const perRoot = 1 / Math.sqrt(2 * Math.PI);

/** Density at z. */
function normalDensity(z: number): number {
  return perRoot * Math.exp((-z * z) / 2);
}

/**
 * The chance of a value below z, to 1e-15: ½ + φ(z)·(z + z³/3 + z⁵/(3·5) + …), whose terms are all of one sign.
 * G. Marsaglia, Evaluating the normal distribution, Journal of Statistical Software 11(4) (2004).
 */
export function normalChance(z: number): number {
  if (z < -9) return 0;
  if (z > 9) return 1;
  let term = z;
  let sum = z;
  for (let odd = 3; sum !== sum - term; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return 0.5 + sum * normalDensity(z);
}

/** The value that lies above a share `p` of all, 0 < p < 1. */
export function normalQuantile(p: number): number {
  return rootFromMiddle(p, normalChance, normalDensity);
}

/**
 * A quantile of a symmetric distribution of one peak. Above the middle the chance rises and is concave, so Newton's steps from
 * the middle never overshoot.
 */
export function rootFromMiddle(p: number, chance: (x: number) => number, density: (x: number) => number): number {
  const upper = Math.max(p, 1 - p);
  let x = 0;
  for (let i = 0; i < 200; i++) {
    const step = (upper - chance(x)) / density(x);
    if (!(step > 1e-13 * (1 + x))) break;
    x += step;
  }
  return p < 0.5 ? -x : x;
}
