import { useState } from 'preact/hooks';
import { fanColumns, fanSpeeds } from '~/job/airflow/fanTable.ts';
import { airflowTables } from '~/job/airflow/tables.ts';
import { chosen } from '~/job/choices.ts';
import { Choices } from '~/parts/Choices.tsx';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { edit, job } from '../../jobStore.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { FanWhere } from '../FanWhere.tsx';
import { GridCells } from '../GridCells.tsx';
import { allPlaces, openRows, plainLines } from '../gridLines.ts';
import { MethodResult } from '../MethodResult.tsx';

/** Rows that a table may have here. */
const most = 12;

/** The maker's fan table and the pressure on both sides of the rated unit. */
export function FanTable() {
  const [asked, ask] = useState(1);
  const speeds = Math.max(asked, fanSpeeds(job.value));
  const columns = [
    { column: 'static', head: words.fanTable.static },
    ...fanColumns.slice(0, speeds).map((column, index) => ({ column, head: words.fanTable.speed(index) })),
  ];
  return (
    <>
      <FanWhere
        assumed={
          <>
            <ChoiceField of="fanTable.motor" />
            <ChoiceField of="fanTable.speed" />
            {speeds > 1 && <Speed speeds={speeds} />}
            {speeds < fanColumns.length && (
              <p class="tools">
                <button type="button" class="plain-button" onClick={() => ask(speeds + 1)}>
                  {words.fanTable.another}
                </button>
              </p>
            )}
          </>
        }
      />
      <div class="field-row">
        <QuantityField of="fanTable.supplyStatic" />
        <QuantityField of="fanTable.returnStatic" />
      </div>
      <GridCells
        table="fanTable"
        caption={words.fanTable.table}
        heads={columns.map(({ head }) => head)}
        lines={plainLines(openRows('fanTable', most, 2), columns, words.fanTable.row)}
        fills={allPlaces(most, airflowTables.fanTable)}
      />
      <MethodResult method="fanTable" />
    </>
  );
}

/** Which column of the table stands for the speed that it runs on. */
function Speed({ speeds }: { speeds: number }) {
  const column = chosen(job.value, 'fanTable.column');
  const options = Array.from({ length: speeds }, (_, index) => [String(index + 1), words.fanTable.speed(index)]);
  return (
    <Choices
      id="choice-fanTable.column"
      ask={words.fanTable.column}
      options={Object.fromEntries(options)}
      value={column}
      assumed={job.value.chosen['fanTable.column'] === undefined}
      onChoose={(value) => edit({ slot: 'chosen', key: 'fanTable.column', to: value })}
    />
  );
}
