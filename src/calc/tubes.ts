import { CalcError } from './errors.ts';
import { inch } from './units.ts';

/**
 * Copper tube for air conditioning and refrigeration by its trade name, which is its outside diameter in inches: the real
 * inside diameter, m. ASTM B280: annealed coils, as line sets come in, and for 3/4 the heavier of its two walls, which drawn
 * lengths have too. Drawn 3/8, 1/2 and 5/8 differ by 0.004, 0.006 and 0.010 in.
 */
export const tubes = {
  '1/4': 0.19 * inch,
  '5/16': 0.248 * inch,
  '3/8': 0.311 * inch,
  '1/2': 0.436 * inch,
  '5/8': 0.555 * inch,
  '3/4': 0.666 * inch,
  '7/8': 0.785 * inch,
  '1-1/8': 1.025 * inch,
  '1-3/8': 1.265 * inch,
} as const;

export type Tube = keyof typeof tubes;

/** Inside diameter of a tube, m. Throws a `CalcError` `unknown` for a name that is not in the table. */
export function insideDiameter(tube: Tube): number {
  if (!Object.hasOwn(tubes, tube)) throw new CalcError('unknown', 'tube', Number.NaN, 0, 0);
  return tubes[tube];
}
