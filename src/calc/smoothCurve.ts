/** A curve through points: a value for every place between the first and the last of them, and a little beyond. */
export type Curve = (at: number) => number;

/**
 * The smooth curve through points whose `xs` ascend: a cubic between neighbours, with the slope at each point of the parabola
 * through it and its two neighbours (piecewise cubic Hermite). Value and slope are continuous; the points themselves are met.
 */
export function smoothCurve(xs: readonly number[], ys: readonly number[]): Curve {
  const slopes = slopesOf(xs, ys);
  const last = xs.length - 2;
  return (at) => {
    let low = 0;
    while (low < last && at > xs[low + 1]!) low++;
    const width = xs[low + 1]! - xs[low]!;
    const share = (at - xs[low]!) / width;
    const rest = 1 - share;
    const ends = rest * rest * (1 + 2 * share) * ys[low]! + share * share * (1 + 2 * rest) * ys[low + 1]!;
    return ends + width * share * rest * (rest * slopes[low]! - share * slopes[low + 1]!);
  };
}

function slopesOf(xs: readonly number[], ys: readonly number[]): readonly number[] {
  const chords = xs.slice(1).map((x, index) => (ys[index + 1]! - ys[index]!) / (x - xs[index]!));
  const inner = chords.slice(1).map((after, index) => {
    const left = xs[index + 1]! - xs[index]!;
    const right = xs[index + 2]! - xs[index + 1]!;
    return (chords[index]! * right + after * left) / (left + right);
  });
  // The parabola through the last three points: its slope at the end is as far from the chord as that at the middle point.
  const first = 2 * chords[0]! - inner[0]!;
  const end = 2 * chords.at(-1)! - inner.at(-1)!;
  return [first, ...inner, end];
}

/**
 * Where a rising curve has a value between two places: chords inside a bracket, and the end that has stood still counts for half
 * the next time (the Illinois rule), so that both ends close in.
 */
export function placeOf(curve: Curve, value: number, low: number, high: number): number {
  const below = { at: low, off: curve(low) - value };
  const above = { at: high, off: curve(high) - value };
  let last = 0;
  for (let step = 0; step < 60; step++) {
    const at = (below.at * above.off - above.at * below.off) / (above.off - below.off);
    const off = curve(at) - value;
    if (Math.abs(off) < 1e-12) return at;
    const side = Math.sign(off);
    const [moved, still] = side < 0 ? [below, above] : [above, below];
    moved.at = at;
    moved.off = off;
    if (side === last) still.off /= 2;
    last = side;
  }
  return (below.at + above.at) / 2;
}
