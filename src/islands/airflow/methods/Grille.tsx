import { gridValue } from '~/job/airflow/grid.ts';
import { grilleReadings } from '~/job/airflow/grille.ts';
import { unitLabel } from '~/job/format.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { shownUnit } from '../../fields.ts';
import { job } from '../../jobStore.ts';
import { Part } from '../../Part.tsx';
import { ChoiceSelect } from '../ChoiceSelect.tsx';
import { GridCells } from '../GridCells.tsx';
import { brokenLines, type GridColumn, openRows, plainLines } from '../gridLines.ts';
import { MethodResult } from '../MethodResult.tsx';
import { isRoomy } from '../model.ts';
import { Where } from '../Where.tsx';

const most = 8;
const sizes = (unit: string) => [
  { column: 'width', head: words.grille.width(unit) },
  { column: 'height', head: words.grille.height(unit) },
  { column: 'areaFactor', head: words.grille.areaFactor },
];
const readings = grilleReadings.map((column, index) => ({ column, head: words.grille.reading(index) }));

/** A vane over the face of each return grille. */
export function Grille() {
  return (
    <>
      <Where
        of="grille"
        assumed={
          <>
            <ChoiceSelect of="grille.factorFrom" />
            <ChoiceField of="grille.speed" />
          </>
        }
      />
      <div class="fold-pair">
        {Array.from({ length: openRows('grilles', most) }, (_, row) => (
          <Face key={row} row={row} />
        ))}
      </div>
      <MethodResult method="grille" />
    </>
  );
}

/** One face: its size and factor, and up to nine velocities as they lie on it. */
function Face({ row }: { row: number }) {
  const own = (columns: readonly GridColumn[]) => plainLines(row + 1, columns, words.grille.grille).slice(row);
  const face = sizes(unitLabel(shownUnit('grille.width')));
  return (
    <Part group="grilles" roomy={isRoomy.value} name={words.grille.grille(row)} said={faceSaid(row)} first={row === 0}>
      <GridCells
        table="grilles"
        caption={words.grille.face}
        quiet
        heads={face.map(({ head }) => head)}
        lines={own(face).map((line) => ({ ...line, head: '' }))}
      />
      <GridCells
        table="grilles"
        caption={words.grille.readings(row)}
        heads={[]}
        lines={brokenLines(own(readings), 3, (_, first) => words.grille.third(first))}
        fills={own(readings).map(({ cells }) => cells)}
      />
    </Part>
  );
}

/** How many velocities were read over it. */
function faceSaid(row: number): string {
  const read = grilleReadings.filter((column) => gridValue(job.value, 'grilles', row, column) !== null).length;
  return read === 0 ? '' : words.grille.read(read);
}
