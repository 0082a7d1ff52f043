import { steadyRule } from '~/calc/confidence/steadyRule.ts';
import { formatNumber } from '~/job/format.ts';
import { type LogRole, logRoles } from '~/job/log/roles.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { Select } from '~/parts/Select.tsx';
import { parts } from '~/words/en/parts.ts';
import { steadyRefusals, steadyWords as words } from '~/words/en/probeSteady.ts';
import { clock } from '../../show.ts';
import { PairCells } from '../PairCells.tsx';
import {
  changedAt,
  isReading,
  notBefore,
  openRecord,
  putAway,
  record,
  refusal,
  roles,
  stampChange,
  stampStart,
  startedAt,
  temperatures,
} from './model.ts';
import { SteadyResult } from './SteadyResult.tsx';

const clockOf = (seconds: number) => clock(new Date(seconds * 1000).toISOString());

/** Waiting until steady: the clocks, readings typed or a record opened, and whether it is. */
export function Steady() {
  return (
    <>
      <Clocks />
      {!record.value && (
        <details class="fold" open>
          <summary>{words.typed}</summary>
          <p class="hint">{words.typedLead}</p>
          <PairCells air="steady" />
        </details>
      )}
      <OpenRecord />
      {record.value && <Columns />}
      <SteadyResult />
      <p class="hint">{words.rule}</p>
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
  const said = refusal.value && steadyRefusals[refusal.value];
  return (
    <>
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
      <div role="status">{isReading.value && <Echo>{words.reading}</Echo>}</div>
      {said && <Check lead={parts.check}>{said}</Check>}
    </>
  );
}

/** What each column is taken for, to be put right by whoever knows better. */
function Columns() {
  const open = record.value;
  if (!open) return null;
  const options = Object.fromEntries(logRoles.map((role) => [role, words.roles[role]]));
  const choose = (index: number, role: LogRole) => {
    roles.value = roles.value.map((one, at) => (at === index ? role : one === role && role !== 'none' ? 'none' : one));
  };
  return (
    <div class="record-columns">
      <p class="label">{words.is(formatNumber(open.rows, 0), open.name)}</p>
      {open.heads.map(({ title, sample }, index) => (
        <div key={index} class="record-column">
          <Select
            id={`record-column-${index}`}
            ask={title}
            options={options}
            value={roles.value[index] ?? 'none'}
            open={words.roles.none}
            onChoose={(role) => choose(index, role as LogRole)}
          />
          <p class="hint">{sample}</p>
        </div>
      ))}
      <Select
        id="record-unit"
        ask={words.unit}
        options={words.units}
        value={temperatures.value}
        open={words.units.degF}
        onChoose={(unit) => {
          temperatures.value = unit as 'degF' | 'degC';
        }}
      />
    </div>
  );
}
