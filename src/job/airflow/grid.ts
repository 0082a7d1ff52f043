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

export type { GridCell, GridPlace };

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

/** The edit for several cells at once, bare numbers in them being in the unit that is shown; `null` for none. */
export function setGridCells(
  job: Job,
  key: AirflowTableKey,
  cells: readonly (GridPlace & { readonly text: string })[],
  unitOf: (column: string) => UnitKey,
): Edit | null {
  let filled = job;
  let last: Edit | null = null;
  for (const { row, column, text } of cells) {
    last = setGridCell(filled, key, { row, column }, text.trim(), unitOf(column));
    filled = applyEdits(filled, [last]);
  }
  return last;
}

/** Where the texts of a block go, put in at a place of a grid as it is laid out; what does not fit is left out. */
export function placed(
  block: readonly (readonly string[])[],
  at: GridPlace,
  layout: readonly (readonly GridPlace[])[],
): readonly (GridPlace & { readonly text: string })[] {
  const isHere = ({ row, column }: GridPlace) => row === at.row && column === at.column;
  const line = layout.findIndex((places) => places.some(isHere));
  const first = layout[line]?.findIndex(isHere) ?? 0;
  return block.flatMap((texts, down) =>
    texts.flatMap((text, across) => {
      const place = layout[line + down]?.[first + across];
      return place ? [{ row: place.row, column: place.column, text }] : [];
    }),
  );
}

const isFigure = (token: string) => /^[-−+]?\d[\d.,]*$/.test(token);

/**
 * A text from the clipboard as a block of cells: lines of texts between tabs, or lines of bare figures between spaces.
 * A first line without a figure is a heading and is left out. `null` for what is no block.
 */
export function blockOf(text: string): readonly (readonly string[])[] | null {
  const lines = text.replace(/\s+$/, '').split(/\r?\n/);
  const cells = lines.map((line) => {
    if (line.includes('\t')) return line.split('\t');
    const tokens = line.trim().split(/[\s;]+/);
    return tokens.every(isFigure) ? tokens : [line];
  });
  const block = cells.filter((line, index) => index > 0 || line.some((cell) => /\d/.test(cell)));
  const width = Math.max(0, ...block.map((line) => line.length));
  return block.length * width < 2 ? null : block;
}
