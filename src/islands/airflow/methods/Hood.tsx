import { gridWords } from '~/words/en/airflowGrid.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { ChoiceSelect } from '../ChoiceSelect.tsx';
import { GridCells } from '../GridCells.tsx';
import { allPlaces, openRows, plainLines } from '../gridLines.ts';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';

const most = 12;
const columns = [{ column: 'flow', head: gridWords.airflow }];

/** A hood over every return grille in turn. */
export function Hood() {
  return (
    <>
      <Where
        of="hood"
        assumed={
          <>
            <ChoiceField of="hood.shownAs" />
            <ChoiceField of="hood.tight" />
            <ChoiceField of="hood.speed" />
          </>
        }
      />
      <GridCells
        table="hood.returns"
        caption={words.hood.returns}
        heads={[]}
        lines={plainLines(openRows('hood.returns', most), columns, words.hood.grille)}
        fills={allPlaces(most, ['flow'])}
      />
      <div class="field-row">
        <ChoiceSelect of="hood.kind" />
        <ChoiceSelect of="hood.covers" />
      </div>
      <MethodResult method="hood" />
    </>
  );
}
