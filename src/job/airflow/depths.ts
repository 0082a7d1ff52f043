/** How far in a probe is pushed, as a tape shows it: sixteenths of an inch, or whole millimetres. */
import type { UnitKey } from '../types.ts';
import { fromSi } from '../units.ts';

/** A length, m, as the mark to make on the probe: "1 3/16", "11 3/8"; in millimetres "30". Without the unit. */
export function depthText(depth: number, unit: UnitKey): string {
  const number = fromSi(depth, unit);
  if (unit !== 'inch') return String(Math.round(number));
  const sixteenths = Math.round(number * 16);
  const whole = Math.floor(sixteenths / 16);
  const [over, below] = lowest(sixteenths % 16);
  if (over === 0) return String(whole);
  return whole === 0 ? `${over}/${below}` : `${whole}\u00a0${over}/${below}`;
}

/** So many sixteenths in their lowest terms. */
function lowest(sixteenths: number): readonly [number, number] {
  let [over, below] = [sixteenths, 16];
  while (over % 2 === 0 && below > 1) [over, below] = [over / 2, below / 2];
  return [over, below];
}
