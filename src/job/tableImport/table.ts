/** The confirmed sheet as tables of the job. */
import { tables } from '../tables.ts';
import type { TypedTable, UnitKey } from '../types.ts';
import { columnUnits } from './rows.ts';
import type { Factors, Meaning, TidyRow } from './types.ts';

/** The whole table, without the columns in which nothing stands. */
export function sheetTable(rows: readonly TidyRow[], meanings: readonly Meaning[]): TypedTable {
  const units = columnUnits(meanings);
  const unitOf = (key: (typeof tables.ratingSheet)[number]): UnitKey =>
    units.get(key) ?? (key === 'sensible' ? units.get('ratio') : undefined) ?? 'count';
  const keys = tables.ratingSheet.filter((key) => key === 'total' || rows.some((row) => (row[key] ?? '') !== ''));
  return {
    columns: keys.map((key) => ({ key, unit: unitOf(key) })),
    rows: rows.map((row) => keys.map((key) => row[key] ?? '')),
  };
}

/** The maker's factors for other airflows. */
export function airflowTable({ lines }: Factors, unit: UnitKey): TypedTable {
  return {
    columns: [
      { key: 'airflow', unit },
      { key: 'total', unit: 'fraction' },
      { key: 'sensible', unit: 'fraction' },
    ],
    rows: lines.map(({ of, total, sensible }) => [of, total, sensible]),
  };
}
