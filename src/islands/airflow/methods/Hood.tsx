import { gridWords } from '~/words/en/airflowGrid.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { GridCells } from '../GridCells.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { openRows } from '../rows.ts';
import { Where } from '../Where.tsx';

/** A hood over every return grille in turn. */
export function Hood() {
  return (
    <>
      <Where of="hood" />
      <GridCells
        table="hood.returns"
        caption={words.hood.returns}
        columns={[{ key: 'flow', head: gridWords.airflow }]}
        rows={openRows('hood.returns', 12)}
        rowHead={words.hood.grille}
      />
      <ChoiceField of="hood.kind" />
      <ChoiceField of="hood.covers" />
      <ChoiceField of="hood.tight" />
      <ChoiceField of="hood.shownAs" />
      <MethodResult method="hood" />
    </>
  );
}
