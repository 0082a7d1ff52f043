/** The supply air from point to point of its plane. */
import { siOf } from '../entered.ts';
import { cellOf, type Grid, rowsOf } from '../gridCells.ts';
import type { Job } from '../types.ts';
import { sureTables } from './tables.ts';

export const supplyGrid: Grid = {
  key: 'supplyPoints',
  columns: sureTables.supplyPoints,
  quantity: () => 'leaving.dryBulb',
};

/** The temperatures that can be read, °C. */
export function supplyPointsOf(job: Job): readonly number[] {
  return Array.from({ length: rowsOf(job, supplyGrid) }).flatMap((_, row) => {
    const point = siOf(cellOf(job, supplyGrid, { row, column: 'dryBulb' }).read);
    return point === null ? [] : [point];
  });
}
