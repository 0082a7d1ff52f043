/** Numbers for fuzzing: mostly such as a calculation can use, often at the very edge, sometimes nonsense. The same seed gives the same. */

/** A fast generator that fuzzing needs and nothing else does (mulberry32, public domain). */
export function chance(seed: number) {
  let state = seed | 0;
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let z = Math.imul(state ^ (state >>> 15), 1 | state);
    z = (z + Math.imul(z ^ (z >>> 7), 61 | z)) ^ z;
    return ((z ^ (z >>> 14)) >>> 0) / 2 ** 32;
  };
  const oneOf = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T;
  const anyBits = () => (next() - 0.5) * 2 * 10 ** (next() * 620 - 310);

  /** Mostly inside a range, at times on its ends or just past them, seldom anything at all. */
  function inRange(low: number, high: number): number {
    const turn = next();
    if (turn < 0.9) return low + next() * (high - low);
    if (turn < 0.95) return oneOf([low, high]) * (1 + oneOf([0, 1, -1]) * Number.EPSILON);
    if (turn < 0.98) return low + (next() * 3 - 1) * (high - low);
    return oneOf([...oddNumbers, anyBits()]);
  }
  return { next, oneOf, inRange, list: <T>(length: number, of: () => T) => Array.from({ length }, of) };
}

export type Chance = ReturnType<typeof chance>;

const oddNumbers = [
  0,
  -0,
  1,
  -1,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  Number.MAX_VALUE,
  -Number.MAX_VALUE,
  Number.MIN_VALUE,
  Number.EPSILON,
  1e300,
  -273.15,
  2 ** 53,
];
