/** Readings from chance that a sound coil could give. */
import type { Draw } from '../draw.ts';
import { loadOf, type Readings } from './support.ts';

/** A coil passes some air by; more than this share, and the readings would be odd themselves. */
const mostBypassed = 0.3;

/** Readings of an ordinary day; `null` where no ordinary coil cools so. */
export function drawnReadings(draw: Draw): Readings | null {
  const room = draw.step(73, 79, 1);
  const readings: Readings = {
    room,
    roomHumidity: draw.step(42, 58, 1),
    supply: room - draw.step(17, 21, 1),
    supplyHumidity: draw.step(86, 94, 1),
    airflow: draw.step(800, 1900, 50),
  };
  const { apparatus, latent, total } = loadOf(readings);
  const isOrdinary = apparatus !== null && apparatus.bypassFactor < mostBypassed && latent > 0.05 * total;
  return isOrdinary ? readings : null;
}
