import { blockOf, columnQuantity, type GridPlace, gridCell, placed, setGridCells } from '~/job/airflow/grid.ts';
import type { AirflowTableKey } from '~/job/airflow/tables.ts';
import { unitLabel } from '~/job/format.ts';
import type { QuantityKey } from '~/job/types.ts';
import { Check } from '~/parts/Echo.tsx';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { gridWords } from '~/words/en/airflowGrid.ts';
import { problemWords } from '~/words/en/problems.ts';
import { partsOf, shownUnit, typing } from '../fields.ts';
import { edit, job } from '../jobStore.ts';
import { cellId, GridCell } from './GridCell.tsx';
import type { GridLine } from './gridLines.ts';

interface Props {
  readonly table: AirflowTableKey;
  readonly caption: string;
  /** Where the heads say enough for the eye, the caption is only heard. */
  readonly quiet?: boolean;
  /** Above the columns; none where a line says all. */
  readonly heads: readonly string[];
  readonly lines: readonly GridLine[];
  /** What a block may fill, where that is more than is shown or laid out in another way. */
  readonly fills?: readonly (readonly GridPlace[])[];
}

/** A grid to type into. Enter and the key of the bar go on to the next cell; a block from a spreadsheet can be put in. */
export function GridCells({ table, caption, quiet, heads, lines, fills = lines.map(({ cells }) => cells) }: Props) {
  const unitOf = (column: string) => shownUnit(columnQuantity[table](column));
  const cells = lines.flatMap((line) => line.cells);
  const units = [...new Set(cells.map(({ column }) => unitLabel(unitOf(column))))].filter(Boolean);
  const tableId = `grid-${table}-${cells[0]?.row ?? 0}-${cells[0]?.column ?? ''}`;
  const said = saidOf(table, cells);
  const paste = (at: GridPlace, text: string): boolean => {
    const block = blockOf(text);
    const done = block && setGridCells(job.value, table, placed(block, at, fills), unitOf);
    if (done) edit(done);
    return block !== null;
  };
  return (
    <div class="grid-cells">
      <ScrollRegion label={caption}>
        <table id={tableId}>
          <caption class={quiet ? 'spoken' : undefined}>
            {caption} {units.length > 0 && <small>({units.join(', ')})</small>}
          </caption>
          {heads.length > 0 && (
            <thead>
              <tr>
                <td />
                {heads.map((head) => (
                  <th key={head} scope="col">
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
          )}
          <tbody>
            {lines.map(({ head, cells: places }, index) => (
              <tr key={index}>
                {head ? <th scope="row">{head}</th> : <td />}
                {places.map((place) => {
                  const id = cellId(table, place);
                  return (
                    <td key={id}>
                      <GridCell
                        table={table}
                        place={place}
                        name={place.name}
                        saidAt={said.has(id) ? `${id}-check` : undefined}
                        onBlock={(text) => paste(place, text)}
                      />
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
      {[...said].map(([id, text]) => (
        <Check key={id} id={`${id}-check`}>
          {text}
        </Check>
      ))}
    </div>
  );
}

/** Of these nothing and less than nothing has a meaning of its own. */
const velocities: ReadonlySet<QuantityKey> = new Set(['traverse.pressure', 'traverse.velocity', 'grille.velocity']);

/** The sentences about cells that cannot be used, by their ids; none about the one under the fingers. */
function saidOf(table: AirflowTableKey, cells: GridLine['cells']): ReadonlyMap<string, string> {
  const said = new Map<string, string>();
  for (const place of cells) {
    const id = cellId(table, place);
    const { text, unit, read } = gridCell(job.value, table, place.row, place.column);
    if (read.state !== 'bad' || typing.value === id) continue;
    const quantity = columnQuantity[table](place.column);
    const parts = partsOf(quantity, text, unit);
    const still = read.code === 'below' && velocities.has(quantity);
    const sentence = still ? gridWords.noVelocity(parts.text) : (problemWords[read.code]?.(parts) ?? read.code);
    said.set(id, gridWords.at(place.name, sentence));
  }
  return said;
}
