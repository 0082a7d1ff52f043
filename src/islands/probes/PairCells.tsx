import { unitLabel } from '~/job/format.ts';
import { cellOf, rowsOf, typedCell } from '~/job/gridCells.ts';
import { type PairAir, pairColumns, pairGrid } from '~/job/sure/pairs.ts';
import type { QuantityKey, UnitKey } from '~/job/types.ts';
import { Check } from '~/parts/Echo.tsx';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { probeWords as words } from '~/words/en/probes.ts';
import { problemWords } from '~/words/en/problems.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { inUnit, partsOf, shownUnit, typing } from '../fields.ts';
import { GridInput } from '../GridInput.tsx';
import { edit, job } from '../jobStore.ts';
import { clock } from '../show.ts';

/** Lines that stand there before any are typed: five readings over ten minutes will do. */
const usualRows = 5;
const mostRows = 30;

const places = ['entering', 'leaving'] as const;
const probes = { entering: words.returnProbe, leaving: words.supplyProbe } as const;
/** Where each probe stands in an air of its own, the place says more than the probe. */
const airs = { entering: words.returnAir, leaving: words.supplyAir } as const;
const headsOf = (air: PairAir) => (air === 'swap' || air === 'steady' ? airs : probes);

/** Stamped readings of both probes in one air. The line under the last one that is full is always there to type in. */
export function PairCells({ air }: { air: PairAir }) {
  const grid = pairGrid(air);
  const rows = Math.min(
    mostRows,
    Math.max(air === 'swap' ? 2 : usualRows, rowsOf(job.value, grid) + (air === 'swap' ? 2 : 1)),
  );
  const columns = places.flatMap((place) => pairColumns(job.value, place).map((column) => ({ place, column })));
  const quantityOf = (column: string) => grid.quantity(column) as QuantityKey;
  const bad = badCells(
    air,
    rows,
    columns.map(({ column }) => column),
  );
  return (
    <div class="grid-cells pair-cells">
      <ScrollRegion label={words.readings[air]}>
        <table>
          <caption class="spoken">{words.stamped}</caption>
          <thead>
            <tr>
              <td />
              {places.map((place) => (
                <th key={place} scope="colgroup" colSpan={2}>
                  {headsOf(air)[place]}
                </th>
              ))}
            </tr>
            <tr>
              <th scope="col">{words.time}</th>
              {columns.map(({ column }) => (
                <th key={column} scope="col">
                  {words.short[column.replace(/^(entering|leaving)/, '')]} {unitLabel(shownUnit(quantityOf(column)))}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {Array.from({ length: rows }, (_, row) => (
              <tr key={row}>
                <th scope="row">{rowHead(air, row)}</th>
                {columns.map(({ place, column }) => (
                  <td key={column}>
                    <Cell
                      air={air}
                      row={row}
                      column={column}
                      name={words.cell(
                        row + 1,
                        headsOf(air)[place],
                        quantityWords[quantityOf(column)].name.toLowerCase(),
                      )}
                      bad={bad.some((one) => one.id === cellId(air, row, column))}
                    />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
      {bad.map(({ id, row, sentence }) => (
        <Check key={id} id={`${id}-check`}>
          {words.at(row + 1, sentence)}
        </Check>
      ))}
      <p class="hint">{words.stamped}</p>
    </div>
  );
}

/** The time at which a line was begun, or its number; of an exchange, which way round the probes stand. */
function rowHead(air: PairAir, row: number): string {
  if (air === 'swap') return row % 2 === 0 ? words.asUsed : words.exchanged;
  return clock(cellOf(job.value, pairGrid(air), { row, column: 'time' }).text) || `${row + 1}`;
}

interface CellProps {
  readonly air: PairAir;
  readonly row: number;
  readonly column: string;
  readonly name: string;
  readonly bad: boolean;
}

function Cell({ air, row, column, name, bad }: CellProps) {
  const grid = pairGrid(air);
  const quantity = grid.quantity(column) as QuantityKey;
  const unit = shownUnit(quantity);
  const id = cellId(air, row, column);
  return (
    <GridInput
      id={id}
      name={`${name}, ${unitLabel(unit)}`}
      value={shownText(air, row, column, unit)}
      bad={bad}
      saidAt={bad ? `${id}-check` : undefined}
      onText={(text) => write(air, row, column, text, unit)}
    />
  );
}

/** Keeps a reading and the time at which its line was begun. The readings of a check mean that the probes were checked. */
function write(air: PairAir, row: number, column: string, text: string, unit: UnitKey): boolean {
  const cell = typedCell(job.value, pairGrid(air), { row, column }, text, unit, { time: new Date().toISOString() });
  const { sideBySide } = job.value.chosen;
  return sideBySide === undefined && air !== 'steady'
    ? edit(cell, { slot: 'chosen', key: 'sideBySide', to: 'yes' })
    : edit(cell);
}

const cellId = (air: PairAir, row: number, column: string) => `pair-${air}-${row}-${column}`;

/** As typed; in another unit than its column's, the number converted; nonsense as it stands. */
function shownText(air: PairAir, row: number, column: string, unit: UnitKey): string {
  const grid = pairGrid(air);
  const { text, unit: kept, read } = cellOf(job.value, grid, { row, column });
  return kept === unit || read.state !== 'read' ? text : inUnit(grid.quantity(column) as QuantityKey, read.si, unit);
}

/** The cells that cannot be used, with the reason; not the one under the fingers. */
function badCells(air: PairAir, rows: number, columns: readonly string[]) {
  const grid = pairGrid(air);
  return Array.from({ length: rows }).flatMap((_, row) =>
    columns.flatMap((column) => {
      const id = cellId(air, row, column);
      const { text, unit, read } = cellOf(job.value, grid, { row, column });
      if (read.state !== 'bad' || typing.value === id) return [];
      const sentence = problemWords[read.code]?.(partsOf(grid.quantity(column) as QuantityKey, text, unit));
      return [{ id, row, sentence: sentence ?? read.code }];
    }),
  );
}
