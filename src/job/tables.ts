/**
 * Tables that a person may fill in, with their columns. Rows are texts as typed; a column of words counts as `count`.
 * 'states' and 'processes' are those of the air chart; a process names its states by their keys.
 * 'ratingSheet' is a whole table of the maker, its cells as pasted; a sensible column in a fraction or per cent is a share of the total.
 * In 'rating' the first three columns name the place of a figure: °C to 1e-6 and the number of the airflow block, 1 or 2.
 */
import type { AirflowTableKey } from './airflow/tables.ts';
import type { SureTableKey } from './sure/tables.ts';
import type { TypedTable } from './types.ts';

const readingColumns = ['time', 'probe', 'dryBulb', 'relativeHumidity', 'wetBulb'] as const;

export const tables = {
  rating: ['outdoorDryBulb', 'enteringWetBulb', 'block', 'total', 'sensible'],
  ratingSheet: ['outdoorDryBulb', 'enteringWetBulb', 'enteringDryBulb', 'airflow', 'total', 'sensible', 'power'],
  /** The maker's factors on the figures of that table, for other airflows. */
  ratingAirflow: ['airflow', 'total', 'sensible'],
  'entering.readings': readingColumns,
  'leaving.readings': readingColumns,
  states: ['key', 'name', 'dryBulb', 'relativeHumidity', 'wetBulb', 'dewPoint', 'humidityRatio'],
  processes: ['key', 'kind', 'from', 'with', 'to', 'endDryBulb', 'airflow', 'secondAirflow'],
  /** What was changed after the figures were locked, a row a figure: what it was then, what it is now, and when that was done. */
  'locked.changes': ['slot', 'key', 'row', 'was', 'now', 'at'],
} as const satisfies Record<string, readonly string[]>;

/** Those of the airflow sheet and of how sure stand with them: no other page carries their columns. */
export type TableKey = keyof typeof tables | AirflowTableKey | SureTableKey;

/** `sheetRows`: of a whole rating table, which may be longer than any other. */
export const tableLimits = { columns: 60, rows: 600, sheetRows: 1500 } as const;
/** Tables that hold fewer or more rows than others may. */
export const rowLimits: Readonly<Partial<Record<TableKey, number>>> = {
  states: 8,
  processes: 8,
  'log.trace': 60,
  ratingSheet: tableLimits.sheetRows,
};

/** The columns by which a row is known, so that two pages that change a table at once change only rows of it. */
export const rowKeys: Readonly<Partial<Record<TableKey, readonly string[]>>> = {
  rating: ['outdoorDryBulb', 'enteringWetBulb', 'block'],
  states: ['key'],
  processes: ['key'],
  'locked.changes': ['slot', 'key', 'row'],
};

/** The text of a cell by the name of its column; '' where there is none. */
export function cellText(table: TypedTable, row: readonly string[], column: string): string {
  const index = table.columns.findIndex(({ key }) => key === column);
  return row[index] ?? '';
}
