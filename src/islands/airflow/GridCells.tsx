import { columnQuantity, type GridCell, gridCell, setGridBlock, setGridCell } from '~/job/airflow/grid.ts';
import type { AirflowTableKey } from '~/job/airflow/tables.ts';
import { unitLabel } from '~/job/format.ts';
import type { QuantityKey, UnitKey } from '~/job/types.ts';
import { Check } from '~/parts/Echo.tsx';
import { gridWords } from '~/words/en/airflowGrid.ts';
import { problemWords } from '~/words/en/problems.ts';
import { inUnit, leave, partsOf, shownUnit, touch, typing } from '../fields.ts';
import { edit, job } from '../jobStore.ts';

export interface GridColumn {
  readonly key: string;
  readonly head: string;
}

interface Props {
  readonly table: AirflowTableKey;
  readonly caption: string;
  readonly columns: readonly GridColumn[];
  readonly rows: number;
  readonly rowHead: (row: number) => string;
  /** What is wrong with cells in their company, by `row.column`, both from zero. */
  readonly problems?: ReadonlyMap<string, string> | undefined;
}

/** A grid to type into. Enter goes on to the next cell, hole after hole; a block from a spreadsheet can be put in. */
export function GridCells({ table, caption, columns, rows, rowHead, problems }: Props) {
  const units = [...new Set(columns.map(({ key }) => unitLabel(shownUnit(columnQuantity[table](key)))))];
  const said = saidOf(table, columns, rows, rowHead, problems);
  const tableId = `grid-${table}-${columns[0]?.key ?? ''}`;
  return (
    <div class="grid-cells">
      <table id={tableId}>
        <caption>
          {caption} <small>{units.filter(Boolean).join(', ')}</small>
        </caption>
        <thead>
          <tr>
            <td />
            {columns.map(({ key, head }) => (
              <th key={key} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: rows }, (_, row) => (
            <tr key={row}>
              <th scope="row">{rowHead(row)}</th>
              {columns.map((column, index) => (
                <td key={column.key}>
                  <Cell
                    table={table}
                    row={row}
                    column={column.key}
                    name={gridWords.cell(rowHead(row), column.head)}
                    bad={said.has(`${row}.${index}`)}
                    onBlock={(block) => paste(table, { row, column: column.key }, block, columns, rows)}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {[...said].map(([at, text]) => (
        <Check key={at} id={`${tableId}-${at}`}>
          {text}
        </Check>
      ))}
    </div>
  );
}

interface CellProps {
  readonly table: AirflowTableKey;
  readonly row: number;
  readonly column: string;
  readonly name: string;
  readonly bad: boolean;
  readonly onBlock: (block: readonly (readonly string[])[]) => void;
}

function Cell({ table, row, column, name, bad, onBlock }: CellProps) {
  const quantity = columnQuantity[table](column);
  const unit = shownUnit(quantity);
  const cell = gridCell(job.value, table, row, column);
  const id = cellId(table, row, column);
  return (
    <input
      id={id}
      class="grid-cell"
      type="text"
      inputMode="decimal"
      enterKeyHint="next"
      autocomplete="off"
      spellcheck={false}
      maxLength={200}
      aria-label={`${name}, ${unitLabel(unit)}`}
      aria-invalid={bad ? 'true' : undefined}
      value={shown(quantity, cell, unit)}
      onInput={({ currentTarget }) => {
        touch(id);
        if (!edit(setGridCell(job.value, table, { row, column }, currentTarget.value, unit)))
          currentTarget.value = shown(quantity, cell, unit);
      }}
      onBlur={leave}
      onKeyDown={(event) => {
        if (event.key !== 'Enter') return;
        event.preventDefault();
        next(event.currentTarget, event.shiftKey ? -1 : 1);
      }}
      onPaste={(event) => {
        const text = event.clipboardData?.getData('text/plain') ?? '';
        const block = text
          .replace(/\r?\n$/, '')
          .split(/\r?\n/)
          .map((line) => line.split('\t'));
        if (block.length * (block[0]?.length ?? 0) < 2) return;
        event.preventDefault();
        onBlock(block);
      }}
    />
  );
}

const cellId = (table: AirflowTableKey, row: number, column: string) => `cell-${table}-${row}-${column}`;

/** As typed; in another unit than its column's, the number converted; nonsense as it stands. */
function shown(quantity: QuantityKey, { text, unit: kept, read }: GridCell, unit: UnitKey): string {
  return kept === unit || read.state !== 'read' ? text : inUnit(quantity, read.si, unit);
}

/** To the cell after this one in reading order. */
function next(from: HTMLInputElement, by: 1 | -1): void {
  const cells = [...(from.closest('table')?.querySelectorAll<HTMLInputElement>('.grid-cell') ?? [])];
  const to = cells[cells.indexOf(from) + by];
  to?.focus();
  to?.select();
}

function paste(
  table: AirflowTableKey,
  at: { readonly row: number; readonly column: string },
  block: readonly (readonly string[])[],
  columns: readonly GridColumn[],
  rows: number,
): void {
  const unitOf = (column: string) => shownUnit(columnQuantity[table](column));
  const done = setGridBlock(job.value, table, at, block, { columns: columns.map(({ key }) => key), rows, unitOf });
  if (done) edit(done);
}

/** The sentences about cells that cannot be used, by `row.column`; none about the one under the fingers. */
function saidOf(
  table: AirflowTableKey,
  columns: readonly GridColumn[],
  rows: number,
  rowHead: (row: number) => string,
  problems: ReadonlyMap<string, string> | undefined,
): ReadonlyMap<string, string> {
  const said = new Map<string, string>();
  for (let row = 0; row < rows; row++) {
    columns.forEach(({ key, head }, index) => {
      if (typing.value === cellId(table, row, key)) return;
      const { text, unit, read } = gridCell(job.value, table, row, key);
      const quantity = columnQuantity[table](key);
      const alone = read.state === 'bad' ? problemWords[read.code]?.(partsOf(quantity, text, unit)) : undefined;
      const sentence = alone ?? problems?.get(`${row}.${index}`);
      if (sentence) said.set(`${row}.${index}`, gridWords.at(rowHead(row), head, sentence));
    });
  }
  return said;
}
