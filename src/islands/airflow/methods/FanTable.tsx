import { fanColumns } from '~/job/airflow/fanTable.ts';
import { chosen } from '~/job/choices.ts';
import { Choices } from '~/parts/Choices.tsx';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { edit, job } from '../../jobStore.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { GridCells } from '../GridCells.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { openRows } from '../rows.ts';
import { Where } from '../Where.tsx';

/** The maker's fan table and the pressure on both sides of the rated unit. */
export function FanTable() {
  const column = chosen(job.value, 'fanTable.column');
  const options = Object.fromEntries(fanColumns.map((_, index) => [String(index + 1), words.fanTable.speed(index)]));
  return (
    <>
      <Where of="fanTable" />
      <ChoiceField of="equipment.kind" open />
      <div class="field-row">
        <QuantityField of="fanTable.supplyStatic" signed />
        <QuantityField of="fanTable.returnStatic" signed />
      </div>
      <GridCells
        table="fanTable"
        caption={words.fanTable.table}
        columns={[
          { key: 'static', head: words.fanTable.static },
          ...fanColumns.map((key, index) => ({ key, head: words.fanTable.speed(index) })),
        ]}
        rows={openRows('fanTable', 12, 4)}
        rowHead={words.fanTable.row}
      />
      <Choices
        id="choice-fanTable.column"
        ask={words.fanTable.column}
        options={options}
        value={column}
        assumed={job.value.chosen['fanTable.column'] === undefined}
        onChoose={(value) => edit({ slot: 'chosen', key: 'fanTable.column', to: value })}
      />
      <ChoiceField of="fanTable.motor" />
      <MethodResult method="fanTable" />
    </>
  );
}
