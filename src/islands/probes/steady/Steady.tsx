import { steadyRule } from '~/calc/confidence/steadyRule.ts';
import { formatNumber } from '~/job/format.ts';
import { logRoles } from '~/job/log/roles.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { parts } from '~/words/en/parts.ts';
import { recordWords } from '~/words/en/probeRecords.ts';
import { steadyRefusals, steadyWords as words } from '~/words/en/probeSteady.ts';
import { clock } from '../../show.ts';
import { PairCells } from '../PairCells.tsx';
import { RecordColumns } from '../records/RecordColumns.tsx';
import {
  changedAt,
  notBefore,
  openRecord,
  putAway,
  record,
  refusal,
  rowsReading,
  said,
  stampChange,
  stampStart,
  startedAt,
} from './model.ts';
import { SteadyResult } from './SteadyResult.tsx';

const clockOf = (seconds: number) => clock(new Date(seconds * 1000).toISOString());

/** Waiting until steady: the clocks, readings typed or a record opened, and whether it is. */
export function Steady() {
  return (
    <>
      <Clocks />
      {!record.value && <PairCells air="steady" />}
      <OpenRecord />
      {record.value && said.value && (
        <RecordColumns
          id="record"
          of={record.value}
          said={said.value}
          roles={logRoles}
          onSay={(to) => {
            said.value = to;
          }}
        />
      )}
      <SteadyResult />
    </>
  );
}

function Clocks() {
  const from = notBefore.value;
  return (
    <>
      <div class="choice-row">
        <button type="button" class="plain-button" onClick={stampStart}>
          {startedAt.value === null ? words.start : words.startAgain}
        </button>
        {startedAt.value !== null && (
          <button type="button" class="plain-button" onClick={stampChange}>
            {words.change}
          </button>
        )}
      </div>
      {startedAt.value !== null && (
        <Echo>
          {words.started(clockOf(startedAt.value))}{' '}
          {changedAt.value !== null && words.changed(clockOf(changedAt.value))}{' '}
          {from !== null && <b>{words.notBefore(clockOf(from), clockOf(from + steadyRule.window))}</b>}
        </Echo>
      )}
    </>
  );
}

function OpenRecord() {
  const open = record.value;
  const refused = refusal.value && steadyRefusals[refusal.value];
  const rows = rowsReading.value;
  return (
    <>
      <div class="fold-pair">
        <details class="fold" open={open !== null}>
          <summary>{words.recordFold}</summary>
          <p class="tools">
            <label class="file-key">
              <input
                id="open-record"
                type="file"
                accept=".csv,.txt,.tsv,text/csv,text/plain"
                onChange={({ currentTarget }) => {
                  const [file] = currentTarget.files ?? [];
                  if (file) openRecord(file);
                  // The same file may be opened again after it was changed.
                  currentTarget.value = '';
                }}
              />
              {words.open}
            </label>
            {open && (
              <button type="button" class="plain-button" onClick={putAway}>
                {words.close}
              </button>
            )}
          </p>
          <p class="hint">{words.notStored}</p>
        </details>
        <details class="fold">
          <summary>{words.ruleFold}</summary>
          <p class="hint">{words.rule}</p>
        </details>
      </div>
      <div role="status">
        {rows !== null && <Echo>{rows === 0 ? recordWords.reading : recordWords.rowsRead(formatNumber(rows, 0))}</Echo>}
      </div>
      {refused && <Check lead={parts.check}>{refused}</Check>}
    </>
  );
}
