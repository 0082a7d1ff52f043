/** The grids of the airflow sheet: their cells, read and typed. A row or a column that nobody has typed in is not stored. */
import { joinChoices } from '../choices.ts';
import { applyEdits } from '../edit.ts';
import { siOf } from '../entered.ts';
import { cellOf, type Grid, type GridCell, type GridPlace, rowsOf, typedCell } from '../gridCells.ts';
import { joinQuantities, type QuantityKey } from '../quantities.ts';
import type { Edit, Job, UnitKey } from '../types.ts';
import { airflowChoices } from './choices.ts';
import { airflowQuantities } from './quantities.ts';
import { type AirflowTableKey, airflowTables } from './tables.ts';

joinQuantities(airflowQuantities);
joinChoices(airflowChoices);

export type { GridCell };

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

const gridOf = (key: AirflowTableKey): Grid => ({ key, columns: airflowTables[key], quantity: columnQuantity[key] });

/** One cell; an empty one where nothing is stored. */
export function gridCell(job: Job, key: AirflowTableKey, row: number, column: string): GridCell {
  return cellOf(job, gridOf(key), { row, column });
}

/** Its SI value; `null` where nothing usable stands. */
export function gridValue(job: Job, key: AirflowTableKey, row: number, column: string): number | null {
  return siOf(gridCell(job, key, row, column).read);
}

/** How many rows are stored. */
export function gridRows(job: Job, key: AirflowTableKey): number {
  return rowsOf(job, { key });
}

/** The edit for a text typed into a cell, a bare number in it being in `unit`. */
export function setGridCell(job: Job, key: AirflowTableKey, at: GridPlace, text: string, unit: UnitKey): Edit {
  return typedCell(job, gridOf(key), at, text, unit);
}

/** The edit for a block of texts put in at a cell, as a spreadsheet gives it; what does not fit into the grid is left out. */
export function setGridBlock(
  job: Job,
  key: AirflowTableKey,
  at: GridPlace,
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
