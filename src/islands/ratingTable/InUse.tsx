import type { RatingRow } from '~/calc/types.ts';
import { sheetRowsHere } from '~/job/ratingSheet.ts';
import { sheetCsv } from '~/job/tableImport/csv.ts';
import type { TypedTable } from '~/job/types.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { tableInUse } from '~/words/en/ratingTable.ts';
import { edit, job } from '../jobStore.ts';
import { QuantityField } from '../QuantityField.tsx';
import { csvFile } from '../saveFile.ts';
import { temperature } from '../show.ts';
import { airflowText, dayOf, figureText } from './shown.ts';

/** More figures than this are the whole table: the conditions are not known yet. */
const mostRead = 40;

/** The whole table of this job: what it is, and which of its figures are read here. */
export function InUse() {
  const table = job.value.tables.ratingSheet;
  if (!table) return null;
  const { notes } = job.value;
  const rows = sheetRowsHere(job.value);
  return (
    <section class="table-in-use">
      <h3 class="label">{tableInUse.title}</h3>
      <p class="step-say">
        {tableInUse.lead(table.rows.length, dayOf(notes['rating.typedAt']), notes['rating.page'] ?? '')}
      </p>
      {lacksDryBulb(table) && <QuantityField of="rating.enteringDryBulb" hint={tableInUse.dryBulbHint} />}
      {rows.length > 0 && rows.length <= mostRead ? <Read rows={rows} /> : <p class="hint">{tableInUse.none}</p>}
      <p class="tools">
        <button type="button" class="plain-button" onClick={() => csvFile(sheetCsv(table), tableInUse.file)}>
          {tableInUse.csv}
        </button>
        <button
          type="button"
          class="plain-button"
          onClick={() => edit({ slot: 'chosen', key: 'rating.from', to: undefined })}
        >
          {tableInUse.cells}
        </button>
      </p>
    </section>
  );
}

/** It prints sensible capacities, and does not say for which return air. */
const lacksDryBulb = ({ columns }: TypedTable) =>
  columns.some(({ key }) => key === 'sensible') && !columns.some(({ key }) => key === 'enteringDryBulb');

function Read({ rows }: { rows: readonly RatingRow[] }) {
  const { heads } = tableInUse;
  const has = (key: 'enteringDryBulb' | 'dryAirFlow' | 'sensible') =>
    rows.some((row) => row[key] !== undefined && row[key] !== null);
  const figure = (watts: number | null | undefined) =>
    watts === null || watts === undefined ? '–' : figureText(watts);
  return (
    <ScrollRegion label={tableInUse.reads}>
      <table class="ledger">
        <caption>{tableInUse.reads}</caption>
        <thead>
          <tr>
            <th scope="col">{heads.outdoorDryBulb}</th>
            <th scope="col">{heads.enteringWetBulb}</th>
            {has('enteringDryBulb') && <th scope="col">{heads.enteringDryBulb}</th>}
            {has('dryAirFlow') && <th scope="col">{heads.airflow}</th>}
            <th scope="col" class="number">
              {heads.total}
            </th>
            {has('sensible') && (
              <th scope="col" class="number">
                {heads.sensible}
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            // The order of the rows is that of the table: they have no other name.
            <tr key={index}>
              <td>{temperature(row.outdoorDryBulb)}</td>
              <td>{temperature(row.enteringWetBulb)}</td>
              {has('enteringDryBulb') && (
                <td>{row.enteringDryBulb === undefined ? '' : temperature(row.enteringDryBulb)}</td>
              )}
              {has('dryAirFlow') && <td>{row.dryAirFlow === undefined ? '' : airflowText(row.dryAirFlow)}</td>}
              <td class="number">{figure(row.total)}</td>
              {has('sensible') && <td class="number">{figure(row.sensible)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
}
