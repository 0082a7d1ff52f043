/** The figures typed from the maker's table: tidy rows, each at its outdoor temperature, entering wet bulb and airflow block. */
import { chosen } from './choices.ts';
import { systemOf } from './entered.ts';
import { headKey } from './ratingHeads.ts';
import { cellText } from './tables.ts';
import type { Job, TypedTable, UnitKey } from './types.ts';
import { toSi } from './units.ts';

export type Figure = 'total' | 'sensible';

/** Where a figure stands, in the texts of a row. */
export interface RatingPlace {
  readonly outdoorDryBulb: string;
  readonly enteringWetBulb: string;
  readonly block: string;
}

/** What a bare figure means: as chosen, else as the table has it, else the usual unit of the system. */
export function figureUnit(job: Job): UnitKey {
  const stored = job.tables.rating?.columns.find(({ key }) => key === 'total')?.unit;
  return chosen(job, 'rating.unit') ?? stored ?? (systemOf(job) === 'si' ? 'kw' : 'btuh');
}

/** The text typed for a figure; '' where there is none. */
export function figureText(job: Job, place: RatingPlace, figure: Figure): string {
  const table = job.tables.rating;
  const row = table?.rows.find((one) => isAt(table, one, place));
  return table === undefined || row === undefined ? '' : cellText(table, row, figure);
}

/** Whether a row stands at a place. */
export function isAt(table: TypedTable, row: readonly string[], place: RatingPlace): boolean {
  const temperature = (column: 'outdoorDryBulb' | 'enteringWetBulb') => {
    const unit = table.columns.find(({ key }) => key === column)?.unit ?? 'degC';
    return headKey(toSi(Number(cellText(table, row, column)), unit));
  };
  return (
    temperature('outdoorDryBulb') === place.outdoorDryBulb &&
    temperature('enteringWetBulb') === place.enteringWetBulb &&
    (cellText(table, row, 'block') || '1') === place.block
  );
}
