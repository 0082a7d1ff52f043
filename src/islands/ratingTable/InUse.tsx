import { chosen } from '~/job/choices.ts';
import { sheetRowsHere } from '~/job/ratingSheet.ts';
import { sheetCsv } from '~/job/tableImport/csv.ts';
import type { TypedTable } from '~/job/types.ts';
import { tableInUse } from '~/words/en/ratingTable.ts';
import { edit, job } from '../jobStore.ts';
import { QuantityField } from '../QuantityField.tsx';
import { textFile } from '../saveFile.ts';
import { mostRead, ReadRows } from './ReadRows.tsx';
import { dayOf } from './shown.ts';

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
        {tableInUse.lead(
          table.rows.length,
          tableInUse.basis[chosen(job.value, 'rating.basis') ?? 'unsure'],
          dayOf(notes['rating.typedAt']),
          notes['rating.page'] ?? '',
        )}
      </p>
      {lacksDryBulb(table) && <QuantityField of="rating.enteringDryBulb" hint={tableInUse.dryBulbHint} />}
      {rows.length > 0 && rows.length <= mostRead ? <ReadRows rows={rows} /> : <p class="hint">{tableInUse.none}</p>}
      <p class="tools">
        <button type="button" class="plain-button" onClick={() => textFile(sheetCsv(table), tableInUse.file, 'csv')}>
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
