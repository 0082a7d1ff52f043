import { batchMeans } from '~/calc/confidence/batches.ts';
import { formatNumber } from '~/job/format.ts';
import type { PairedRecords } from '~/job/log/pairRecords.ts';
import type { LogRole } from '~/job/log/roles.ts';
import type { PairAir } from '~/job/sure/pairs.ts';
import { sameMeasure, takenPairs } from '~/job/sure/pairsTaken.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { Select } from '~/parts/Select.tsx';
import { parts } from '~/words/en/parts.ts';
import { pairRefusals, recordWords, pairRecordWords as words } from '~/words/en/probeRecords.ts';
import { edit, job, system } from '../../jobStore.ts';
import { temperatureStep } from '../../show.ts';
import { RecordColumns } from '../records/RecordColumns.tsx';
import {
  exchange,
  openAir,
  openRecords,
  paired,
  putAway,
  records,
  refusal,
  rowsReading,
  type Span,
  said,
  span,
} from './model.ts';

const roles: readonly LogRole[] = [
  'none',
  'time',
  'entering.dryBulb',
  'entering.humidity',
  'leaving.dryBulb',
  'leaving.humidity',
];

/** The readings of one air out of the probes' own records. */
export function OpenPairs({ air }: { air: PairAir }) {
  const isHere = openAir.value === air;
  return (
    <>
      <p class="hint">{words.lead}</p>
      <p class="tools">
        <label class="file-key">
          <input
            id={`open-pairs-${air}`}
            type="file"
            multiple
            accept=".csv,.txt,.tsv,text/csv,text/plain"
            onChange={({ currentTarget }) => {
              const files = [...(currentTarget.files ?? [])];
              if (files.length > 0) openRecords(air, files);
              // The same files may be opened again after they were changed.
              currentTarget.value = '';
            }}
          />
          {words.open}
        </label>
      </p>
      <div role="status">{isHere && <Reading />}</div>
      {isHere && refusal.value && <Check lead={parts.check}>{pairRefusals[refusal.value]}</Check>}
      {isHere && records.value.length > 0 && <Opened air={air} />}
    </>
  );
}

function Reading() {
  const rows = rowsReading.value;
  if (rows === null) return null;
  return <Echo>{rows === 0 ? recordWords.reading : recordWords.rowsRead(formatNumber(rows, 0))}</Echo>;
}

function Opened({ air }: { air: PairAir }) {
  return (
    <>
      {records.value.map((record, index) => {
        const saidOfIt = said.value[index];
        return (
          saidOfIt && (
            <RecordColumns
              key={index}
              id={`pairs-${air}-${index}`}
              of={record}
              said={saidOfIt}
              roles={roles}
              onSay={(to) => {
                said.value = said.value.map((one, at) => (at === index ? to : one));
              }}
            />
          )
        );
      })}
      <Select
        id={`pairs-${air}-over`}
        ask={words.over}
        options={words.minutes}
        value={span.value}
        open={words.minutes.ten}
        onChoose={(to) => {
          span.value = to as Span;
        }}
      />
      {paired.value && <Paired air={air} of={paired.value} />}
      <p class="tools">
        <button type="button" class="plain-button" onClick={exchange}>
          {words.exchange}
        </button>
        <button type="button" class="plain-button" onClick={putAway}>
          {words.close}
        </button>
      </p>
    </>
  );
}

/** What the records come to, and the key that takes it over. */
function Paired({ air, of }: { air: PairAir; of: PairedRecords }) {
  const { pairs, count, areMeans, shift, dated } = of;
  const measure = said.value[0]?.humidityAs ?? 'relativeHumidity';
  const differences = pairs.map(({ entering, leaving }) => leaving.dryBulb - entering.dryBulb);
  const mean = batchMeans(differences)?.mean ?? differences[0] ?? 0;
  const edits = takenPairs(job.value, air, pairs, { measure, system: system.value, dated });
  const isTaken = JSON.stringify(job.value.tables[`pairs.${air}`]) === JSON.stringify(tableOf(edits));
  const many = formatNumber(count, 0);
  return (
    <>
      <Echo>
        {areMeans ? words.asMeans(many) : words.count(many)}: {words.differ(temperatureStep(mean))}.{' '}
        {records.value.length > 1 && shiftText(shift)}
      </Echo>
      {!sameMeasure(job.value, measure) && <Check>{words.otherMeasure}</Check>}
      {isTaken ? (
        <Echo>{words.taken}</Echo>
      ) : (
        <>
          <p class="tools">
            <button type="button" class="action" onClick={() => edit(...edits)}>
              {words.take}
            </button>
          </p>
          {job.value.tables[`pairs.${air}`] && <p class="hint">{words.again}</p>}
        </>
      )}
    </>
  );
}

const tableOf = (edits: ReturnType<typeof takenPairs>) => edits.find(({ slot }) => slot === 'tables')?.to;

/** s; less than this is no difference between two clocks. */
const sameClock = 1;

function shiftText(shift: number | null): string {
  if (shift === null) return words.unknownShift;
  if (Math.abs(shift) < sameClock) return words.noShift;
  const seconds = `${formatNumber(Math.abs(shift), 0)}\u00a0s`;
  return shift > 0 ? words.shift(seconds) : words.shiftAhead(seconds);
}
