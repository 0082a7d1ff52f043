import { gridWords } from '~/words/en/airflowGrid.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { GridCells } from '../GridCells.tsx';
import { allPlaces, openRows, plainLines } from '../gridLines.ts';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';

const most = 6;
const columns = [{ column: 'flow', head: gridWords.airflow }];

/** Metering plates in the filter slots, and what they do to the supply pressure. */
export function FlowGrid() {
  return (
    <>
      <Where
        of="flowGrid"
        assumed={
          <>
            <ChoiceField of="flowGrid.shownAs" />
            <ChoiceField of="flowGrid.speed" />
          </>
        }
      />
      <div class="field-row">
        <QuantityField of="flowGrid.normal" />
        <QuantityField of="flowGrid.withGrid" />
      </div>
      <GridCells
        table="flowGrid.plates"
        caption={words.flowGrid.plates}
        heads={[]}
        lines={plainLines(openRows('flowGrid.plates', most), columns, words.flowGrid.plate)}
        fills={allPlaces(most, ['flow'])}
      />
      <MethodResult method="flowGrid" />
    </>
  );
}
