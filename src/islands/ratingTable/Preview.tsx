import { columnLetters } from '~/job/tableImport/cell.ts';
import type { Preview as Corner } from '~/job/tableImport/preview.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { roleNames, tablePaste } from '~/words/en/ratingTable.ts';

/** The upper left corner of the sheet as it was pasted, under the letters and numbers of a spreadsheet. */
export function Preview({ of: { rows, columns, moreRows, moreColumns } }: { of: Corner }) {
  const more = tablePaste.more(moreRows, moreColumns);
  return (
    <>
      <ScrollRegion label={tablePaste.preview}>
        <table class="sheet-corner">
          <caption class="spoken">{tablePaste.preview}</caption>
          <thead>
            <tr>
              <td>
                <span class="spoken">{tablePaste.row}</span>
              </td>
              {Array.from({ length: columns }, (_, column) => (
                <th key={column} scope="col">
                  {columnLetters(column)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ row, cells }) => (
              <tr key={row}>
                <th scope="row">{row + 1}</th>
                {cells.map(({ text, role }, column) => (
                  // A cell of a grid has no name but its place.
                  <td key={column} data-role={role} title={role === 'none' ? undefined : roleNames[role]}>
                    {text}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
      {more !== '' && <p class="hint">{more}</p>}
    </>
  );
}
