import { type GridCell as Cell, columnQuantity, type GridPlace, gridCell, setGridCell } from '~/job/airflow/grid.ts';
import type { AirflowTableKey } from '~/job/airflow/tables.ts';
import { unitLabel } from '~/job/format.ts';
import type { QuantityKey, UnitKey } from '~/job/types.ts';
import { inUnit, shownUnit } from '../fields.ts';
import { GridInput } from '../GridInput.tsx';
import { edit, job } from '../jobStore.ts';
import { whenUntouched } from '../untouched.ts';

interface Props {
  readonly table: AirflowTableKey;
  readonly place: GridPlace;
  readonly name: string;
  /** The id of the sentence about it, where there is one. */
  readonly saidAt: string | undefined;
  /** Puts in a block of figures. False when the text is none. */
  readonly onBlock: (text: string) => boolean;
}

export const cellId = (table: AirflowTableKey, { row, column }: GridPlace) => `cell-${table}-${row}-${column}`;

/** One cell of a grid. */
export function GridCell({ table, place, name, saidAt, onBlock }: Props) {
  const { row, column } = place;
  const quantity = columnQuantity[table](column);
  const unit = shownUnit(quantity);
  const cell = gridCell(job.value, table, row, column);
  const id = cellId(table, place);
  return (
    <GridInput
      id={id}
      name={[name, unitLabel(unit)].filter(Boolean).join(', ')}
      value={shown(quantity, cell, unit)}
      bad={saidAt !== undefined}
      saidAt={saidAt}
      onText={(text) => edit(setGridCell(job.value, table, place, text, unit))}
      onFocus={(input) => whenUntouched(() => input.scrollIntoView({ block: 'nearest', inline: 'nearest' }))}
      onBlock={onBlock}
    />
  );
}

/** As typed; in another unit than its column's, the number converted; nonsense as it stands. */
function shown(quantity: QuantityKey, { text, unit: kept, read }: Cell, unit: UnitKey): string {
  return kept === unit || read.state !== 'read' ? text : inUnit(quantity, read.si, unit);
}
