/** What a cell says once its role and unit are known. */
import type { QuantityKey } from '../quantities.ts';
import { type Read, read } from '../read.ts';
import { readRatio } from '../readRatio.ts';
import type { UnitKey } from '../types.ts';
import type { AxisRole, FigureRole, Role } from './types.ts';

/** The quantity whose limits hold for a role. */
const quantityFor = {
  outdoorDryBulb: 'rating.outdoorLow',
  enteringWetBulb: 'rating.wetBulbLow',
  enteringDryBulb: 'rating.enteringDryBulb',
  airflow: 'rating.airflow',
  total: 'rating.total',
  sensible: 'rating.sensible',
  power: 'rating.power',
} as const satisfies Record<AxisRole | Exclude<FigureRole, 'ratio'>, QuantityKey>;

/** Reads a cell, a bare number in it being in `unit`. The `si` of a ratio is a fraction. */
export function readCell(text: string, role: Role, unit: UnitKey): Read {
  if (role === 'none' || role === 'stage') return { state: 'empty' };
  return role === 'ratio' ? readRatio(text, unit) : read(text, quantityFor[role], unit);
}
