/** Chance for exercises: the same number of a set gives the same figures on every device. */
import { random } from '../../calc/confidence/random.ts';

export interface Draw {
  /** One of the numbers from `low` to `high` that are whole steps above `low`. */
  readonly step: (low: number, high: number, step: number) => number;
  readonly one: <T>(of: readonly T[]) => T;
  /** A number near nothing: a scatter of standard deviation 1. */
  readonly scatter: () => number;
}

/** Draws from a seed; the first numbers of neighbouring seeds have nothing in common. */
export function drawing(seed: number): Draw {
  const { even, normal } = random(seed);
  const whole = (count: number) => Math.floor(even() * count);
  return {
    step: (low, high, step) => low + step * whole(Math.round((high - low) / step) + 1),
    one: <T>(of: readonly T[]) => of[whole(of.length)] as T,
    scatter: normal,
  };
}
