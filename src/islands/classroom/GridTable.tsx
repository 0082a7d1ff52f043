import type { Grid } from '~/job/classroom/types.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { grids } from '~/words/en/exerciseGrids.ts';
import { gridText, headText } from './said.ts';

/** A corner of a table, or the readings of a traverse. */
export function GridTable({ grid }: { grid: Grid }) {
  const { name, corner } = grids[grid.name];
  return (
    <ScrollRegion label={name}>
      <table class="ledger whole-words">
        <caption>{name}</caption>
        <thead>
          <tr>
            <th scope="col">{corner}</th>
            {grid.columns.map((column) => (
              <th key={column} scope="col" class="number">
                {headText(grid, column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {grid.rows.map(({ head, cells }) => (
            <tr key={head}>
              <th scope="row">{headText(grid, head)}</th>
              {cells.map((cell, place) => (
                <td key={place} class="number">
                  {gridText(grid, cell)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
}
