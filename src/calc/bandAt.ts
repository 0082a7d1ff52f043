import { figureAt, type Place } from './rated.ts';
import { axisOrder } from './tableCheck.ts';
import type { RatingTable } from './types.ts';

const wetBulb = axisOrder.indexOf('enteringWetBulb');

/**
 * The relative half-width that a table itself admits at a place: 0 for a maker's table. Below the lowest wet bulb it is that of
 * the lowest: the coil is dry there, and nothing changes with the wet bulb any more.
 */
export function bandAt(table: RatingTable, place: Place): number {
  if (!table.band) return 0;
  const fraction = place.fraction.map((share, axis) => (axis === wetBulb ? Math.max(0, share) : share));
  return figureAt(table.band, { ...place, fraction }) ?? 0;
}
