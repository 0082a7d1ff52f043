import { within } from '../errors.ts';
import { amount } from '../trace.ts';
import type { Remark } from '../types.ts';
import type { Grid } from './cells.ts';
import { remark } from './found.ts';
import { practice } from './limits.ts';

/** Straight duct before a section, m, and what stands at its beginning. */
export interface Straight {
  readonly length: number;
  readonly after: 'fan' | 'other';
}

/** A point that was read once more, in the unit of the readings. */
export interface Again {
  readonly line: number;
  readonly point: number;
  readonly reading: number;
}

/**
 * Whether there is straight duct enough: 5 diameters behind a fan, 7.5 behind anything else (`fieldTraverse`); what nobody
 * knows is not enough. `diameter` is of the circle of the same area.
 */
export function straightDuct(straight: Straight | null, diameter: number) {
  if (!straight) return { enough: false, remarks: [remark('traverseStraightUnknown', 'note')] };
  within('straight.length', straight.length, [0, 1000]);
  const have = straight.length / diameter;
  const need = straight.after === 'fan' ? practice.straightAfterFan : practice.straightAfterOther;
  const enough = have >= need;
  const remarks = enough
    ? []
    : [remark('traverseDisturbed', 'doubt', amount('n', 'ratio', have), amount('n₀', 'ratio', need))];
  return { enough, remarks };
}

/** Share of the velocity pressures above a tenth of the greatest: at least three quarters in a good section (`traverseRules`). */
export function acceptance(velocities: readonly number[]) {
  const least = Math.sqrt(practice.acceptPressure) * Math.max(...velocities);
  const share = velocities.filter((velocity) => velocity > least).length / velocities.length;
  return { share, passes: share >= practice.acceptShare };
}

/** A remark for each point that differs by more than a tenth when it is read again (`fieldTraverse`). */
export function againBy(again: readonly Again[], readings: Grid): readonly Remark[] {
  return again.flatMap(({ line, point, reading }) => {
    const before = readings[line]?.[point];
    if (before === null || before === undefined || !Number.isFinite(reading)) return [];
    const change = reading / before - 1;
    if (Math.abs(change) <= practice.repeat) return [];
    return [
      remark(
        'traverseNotRepeated',
        'doubt',
        amount('line', 'count', line + 1),
        amount('point', 'count', point + 1),
        amount('Δ', 'fraction', change),
      ),
    ];
  });
}
