import { grilleReadings } from '~/job/airflow/grille.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { ChoiceSelect } from '../ChoiceSelect.tsx';
import { GridCells } from '../GridCells.tsx';
import { brokenLines, type GridColumn, openRows, plainLines } from '../gridLines.ts';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';

const most = 8;
const sizes = [
  { column: 'width', head: words.grille.width },
  { column: 'height', head: words.grille.height },
  { column: 'areaFactor', head: words.grille.areaFactor },
];
const readings = grilleReadings.map((column, index) => ({ column, head: words.grille.reading(index) }));

/** A vane over the face of each return grille. */
export function Grille() {
  return (
    <>
      <Where of="grille" assumed={<ChoiceField of="grille.speed" />} />
      {Array.from({ length: openRows('grilles', most) }, (_, row) => (
        <Face key={row} row={row} />
      ))}
      <ChoiceSelect of="grille.factorFrom" />
      <MethodResult method="grille" />
    </>
  );
}

/** One face: its size and factor, and up to nine velocities as they lie on it. */
function Face({ row }: { row: number }) {
  const own = (columns: readonly GridColumn[]) => plainLines(row + 1, columns, words.grille.grille).slice(row);
  return (
    <>
      <GridCells
        table="grilles"
        caption={words.grille.grille(row)}
        heads={sizes.map(({ head }) => head)}
        lines={own(sizes).map((line) => ({ ...line, head: '' }))}
      />
      <GridCells
        table="grilles"
        caption={words.grille.readings(row)}
        heads={[]}
        lines={brokenLines(own(readings), 3, (_, first) => words.grille.third(first))}
        fills={own(readings).map(({ cells }) => cells)}
      />
    </>
  );
}
