/** Reproducible chance: the same seed gives the same numbers everywhere. */
export interface Random {
  /** Evenly between 0 and 1, neither end reached. */
  readonly even: () => number;
  /** The three shapes, of mean 0 and standard deviation 1. */
  readonly normal: () => number;
  readonly rectangular: () => number;
  readonly triangular: () => number;
  /** The factor √(ν/χ²) that turns normal numbers into Student's t, for a whole number ν of degrees of freedom. */
  readonly spread: (degreesOfFreedom: number) => number;
}

const perStep = 1 / 2 ** 32;
const widthOfRectangle = 2 * Math.sqrt(3);
const widthOfTriangle = Math.sqrt(6);

/**
 * xoshiro128**: whole numbers from 0 to 2³² − 1. D. Blackman, S. Vigna, Scrambled linear pseudorandom number generators, ACM
 * Transactions on Mathematical Software 47(4) (2021).
 */
export function xoshiro(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  return () => {
    const times5 = Math.imul(b, 5);
    const result = Math.imul((times5 << 7) | (times5 >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return result >>> 0;
  };
}

/** splitmix32: fills the state of a generator from one number. */
function splitmix(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let z = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return z ^ (z >>> 15);
  };
}

/** Numbers by chance from a seed. Normal ones by the polar method (G. Marsaglia, T. A. Bray, SIAM Review 6, 1964). */
export function random(seed: number): Random {
  const fill = splitmix(seed);
  const next = xoshiro([fill(), fill(), fill(), fill()]);
  const even = () => (next() + 0.5) * perStep;
  let spare = 0;
  let hasSpare = false;

  function normal(): number {
    if (hasSpare) {
      hasSpare = false;
      return spare;
    }
    for (;;) {
      const x = 2 * even() - 1;
      const y = 2 * even() - 1;
      const square = x * x + y * y;
      if (square >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * scale;
      hasSpare = true;
      return x * scale;
    }
  }

  /** χ² of two degrees is −2·ln of an even number; an odd one is the square of a normal number. */
  function spread(degreesOfFreedom: number): number {
    let square = degreesOfFreedom % 2 === 1 ? normal() ** 2 : 0;
    for (let n = degreesOfFreedom; n >= 2; n -= 2) square -= 2 * Math.log(even());
    return Math.sqrt(degreesOfFreedom / square);
  }

  return {
    even,
    normal,
    rectangular: () => (even() - 0.5) * widthOfRectangle,
    triangular: () => (even() - even()) * widthOfTriangle,
    spread,
  };
}
