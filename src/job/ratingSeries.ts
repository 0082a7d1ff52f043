/**
 * The rows and columns at which makers print capacities. Common practice, no source: a person whose table has others types
 * them. Each series is round in its own unit.
 */
import { type ChoiceValue, chosen } from './choices.ts';
import { systemOf } from './entered.ts';
import type { Job, System } from './types.ts';
import { toSi, type UnitKey } from './units.ts';

export type Series = ChoiceValue<'rating.series'>;

const inSi = (unit: UnitKey, numbers: readonly number[]) => numbers.map((number) => toSi(number, unit));

/** Entering wet bulbs, °C. */
export const wetBulbSeries: Readonly<Record<Series, readonly number[]>> = {
  '57': inSi('degF', [57, 62, 67, 72]),
  '59': inSi('degF', [59, 63, 67, 71]),
  '14': inSi('degC', [14, 16, 18, 19, 20, 22, 24]),
  '15': inSi('degC', [15, 17, 19, 21, 23]),
  other: [],
};

/** Outdoor dry bulbs, °C. */
export const outdoorSeries: Readonly<Record<System, readonly number[]>> = {
  ip: inSi('degF', [65, 75, 85, 95, 105, 115, 125]),
  si: inSi('degC', [20, 25, 30, 35, 40, 45, 50]),
};

/** The unit system of a series; `null` for one that is typed. */
export const seriesSystem: Readonly<Record<Series, System | null>> = {
  '57': 'ip',
  '59': 'ip',
  '14': 'si',
  '15': 'si',
  other: null,
};

/** How near a printed row or column a reading must be to need no other, K; with a hair for rounding. */
export const onLine = {
  outdoorDryBulb: toSi(0.5, 'degFStep') + 1e-9,
  enteringWetBulb: toSi(0.2, 'degFStep') + 1e-9,
} as const;

/** The series of the maker's rows: as chosen, else the usual one of the system in which the job was typed. */
export function ratingSeries(job: Job): Series {
  return chosen(job, 'rating.series') ?? (systemOf(job) === 'si' ? '14' : '57');
}
