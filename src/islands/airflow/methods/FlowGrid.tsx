import { gridWords } from '~/words/en/airflowGrid.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { GridCells } from '../GridCells.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { openRows } from '../rows.ts';
import { Where } from '../Where.tsx';

/** Metering plates in the filter slots, and what they do to the supply pressure. */
export function FlowGrid() {
  return (
    <>
      <Where of="flowGrid" />
      <div class="field-row">
        <QuantityField of="flowGrid.normal" signed />
        <QuantityField of="flowGrid.withGrid" signed />
      </div>
      <GridCells
        table="flowGrid.plates"
        caption={words.flowGrid.plates}
        columns={[{ key: 'flow', head: gridWords.airflow }]}
        rows={openRows('flowGrid.plates', 6)}
        rowHead={words.flowGrid.plate}
      />
      <ChoiceField of="flowGrid.shownAs" />
      <MethodResult method="flowGrid" />
    </>
  );
}
