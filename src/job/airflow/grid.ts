/** The grids of the airflow sheet: their cells, read and typed. A row or a column that nobody has typed in is not stored. */

import { joinChoices } from '../choices.ts';
import { applyEdits, withOwnUnit } from '../edit.ts';
import { siOf, systemOf } from '../entered.ts';
import { joinQuantities, type QuantityKey, unitOf } from '../quantities.ts';
import { type Read, read } from '../read.ts';
import { cellText } from '../tables.ts';
import type { Edit, Job, TypedTable, UnitKey } from '../types.ts';
import { airflowChoices } from './choices.ts';
import { airflowQuantities } from './quantities.ts';
import { type AirflowTableKey, airflowTables } from './tables.ts';

joinQuantities(airflowQuantities);
joinChoices(airflowChoices);

/** What the figures of a column are. */
export const columnQuantity: Readonly<Record<AirflowTableKey, (column: string) => QuantityKey>> = {
  fanTable: (column) => (column === 'static' ? 'fanTable.static' : 'fanTable.flow'),
  'traverse.pressures': () => 'traverse.pressure',
  'traverse.velocities': () => 'traverse.velocity',
  'flowGrid.plates': () => 'flowGrid.plate',
  'hood.returns': () => 'hood.flow',
  grilles: (column) => {
    if (column === 'width' || column === 'height' || column === 'areaFactor') return `grille.${column}`;
    return 'grille.velocity';
  },
};

export interface GridCell {
  readonly text: string;
  /** What a bare number in it means. */
  readonly unit: UnitKey;
  readonly read: Read;
}

/** One cell; an empty one where nothing is stored. */
export function gridCell(job: Job, key: AirflowTableKey, row: number, column: string): GridCell {
  const table = job.tables[key];
  const quantity = columnQuantity[key](column);
  const unit = table?.columns.find((one) => one.key === column)?.unit ?? unitOf(quantity, systemOf(job));
  const text = table?.rows[row] ? cellText(table, table.rows[row], column) : '';
  return { text, unit, read: read(text, quantity, unit) };
}

/** Its SI value; `null` where nothing usable stands. */
export function gridValue(job: Job, key: AirflowTableKey, row: number, column: string): number | null {
  return siOf(gridCell(job, key, row, column).read);
}

/** How many rows are stored. */
export function gridRows(job: Job, key: AirflowTableKey): number {
  return job.tables[key]?.rows.length ?? 0;
}

/**
 * The edit for a text typed into a cell, a bare number in it being in `unit`: where the column is kept in another one, the
 * unit is written behind the number. Rows that are empty at the end go.
 */
export function setGridCell(
  job: Job,
  key: AirflowTableKey,
  at: { readonly row: number; readonly column: string },
  text: string,
  unit: UnitKey,
): Edit {
  const table = complete(job, key, at.column, unit);
  const index = table.columns.findIndex((one) => one.key === at.column);
  const kept = table.columns[index]?.unit === unit ? text : withOwnUnit(text, unit);
  const blank = table.columns.map(() => '');
  const count = Math.max(table.rows.length, at.row + 1);
  const rows = Array.from({ length: count }, (_, row) => {
    const old = table.rows[row] ?? blank;
    return row === at.row ? old.map((was, one) => (one === index ? kept : was)) : old;
  });
  const last = rows.findLastIndex((row) => row.some((cell) => cell !== ''));
  const to: TypedTable | undefined = last < 0 ? undefined : { columns: table.columns, rows: rows.slice(0, last + 1) };
  return { slot: 'tables', key, to };
}

/** The table with all its columns; a column that is new is kept in the unit of what is typed into it first. */
function complete(job: Job, key: AirflowTableKey, column: string, unit: UnitKey): TypedTable {
  const old: TypedTable = job.tables[key] ?? { columns: [], rows: [] };
  const missing = airflowTables[key].filter((name) => !old.columns.some((one) => one.key === name));
  const quantity = columnQuantity[key];
  const usual = (name: string) => (quantity(name) === quantity(column) ? unit : unitOf(quantity(name), systemOf(job)));
  return {
    columns: [...old.columns, ...missing.map((name) => ({ key: name, unit: usual(name) }))],
    rows: old.rows.map((row) => [...row, ...missing.map(() => '')]),
  };
}

/** The edit for a block of texts put in at a cell, as a spreadsheet gives it; what does not fit into the grid is left out. */
export function setGridBlock(
  job: Job,
  key: AirflowTableKey,
  at: { readonly row: number; readonly column: string },
  block: readonly (readonly string[])[],
  size: { readonly columns: readonly string[]; readonly rows: number; readonly unitOf: (column: string) => UnitKey },
): Edit | null {
  const first = size.columns.indexOf(at.column);
  const cells = block.slice(0, Math.max(0, size.rows - at.row)).flatMap((line, down) =>
    line.flatMap((text, across) => {
      const column = size.columns[first + across];
      return column === undefined ? [] : [{ row: at.row + down, column, text: text.trim() }];
    }),
  );
  let filled = job;
  let last: Edit | null = null;
  for (const { row, column, text } of cells) {
    last = setGridCell(filled, key, { row, column }, text, size.unitOf(column));
    filled = applyEdits(filled, [last]);
  }
  return last;
}
