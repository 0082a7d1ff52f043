import { grilleReadings } from '~/job/airflow/grille.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { GridCells } from '../GridCells.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { openRows } from '../rows.ts';
import { Where } from '../Where.tsx';

/** A vane over the face of each return grille. */
export function Grille() {
  const rows = openRows('grilles', 8);
  return (
    <>
      <Where of="grille" />
      <GridCells
        table="grilles"
        caption={words.grille.sizes}
        columns={[
          { key: 'width', head: words.grille.width },
          { key: 'height', head: words.grille.height },
          { key: 'areaFactor', head: words.grille.areaFactor },
        ]}
        rows={rows}
        rowHead={words.grille.grille}
      />
      <GridCells
        table="grilles"
        caption={words.grille.readings}
        columns={grilleReadings.map((key, index) => ({ key, head: words.grille.reading(index) }))}
        rows={rows}
        rowHead={words.grille.grille}
      />
      <ChoiceField of="grille.factorFrom" />
      <MethodResult method="grille" />
    </>
  );
}
