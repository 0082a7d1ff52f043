/** The wait until steady: the clocks of the job, the record that is open, and what is made of either. */
import { batch, computed, effect, signal } from '@preact/signals';
import type { Log } from '~/calc/confidence/steady.ts';
import { sitePressure } from '~/job/entered.ts';
import { type JudgedLog, type JudgeRefusal, judged } from '~/job/log/judgeLog.ts';
import type { LogRefusal } from '~/job/log/openLog.ts';
import type { ColumnsSaid } from '~/job/log/readColumns.ts';
import { pairsIn } from '~/job/sure/pairs.ts';
import { steadyClock } from '~/job/sure/steadyClock.ts';
import { edit, job } from '../../jobStore.ts';
import type { LogOpened, LogReply } from '../../workers/log.ts';
import { measure } from '../model.ts';
import { logWorker } from '../records/logWorker.ts';
import type { OpenedRecord } from '../records/RecordColumns.tsx';

const clocks = computed(() => steadyClock(job.value));
export const startedAt = computed(() => clocks.value.startedAt);
export const changedAt = computed(() => clocks.value.changedAt);
export const notBefore = computed(() => clocks.value.notBefore);

export const stampStart = () =>
  edit(
    { slot: 'notes', key: 'steady.startedAt', to: new Date().toISOString() },
    { slot: 'notes', key: 'steady.changedAt', to: undefined },
  );
export const stampChange = () => edit({ slot: 'notes', key: 'steady.changedAt', to: new Date().toISOString() });

/** The record that is open, and what the person says of its columns; it stays in this page. */
export const record = signal<OpenedRecord | null>(null);
export const said = signal<ColumnsSaid | null>(null);
export const refusal = signal<LogRefusal | JudgeRefusal | null>(null);
/** Rows that are being looked at; 0 while their number is not known, `null` when nothing is read. */
export const rowsReading = signal<number | null>(null);
const judgedRecord = signal<JudgedLog | null>(null);

let name = '';
const ask = logWorker(take, () => {
  rowsReading.value = null;
  refusal.value = 'notText';
});

function take({ rows, opened, judged: found }: LogReply): void {
  rowsReading.value = rows ?? null;
  if (typeof opened === 'string') refusal.value = opened;
  else if (opened?.[0]) {
    const [{ heads, temperatures, pressures, humidityAs }] = opened as [LogOpened];
    batch(() => {
      said.value = { roles: heads.map(({ role }) => role), temperatures, pressures, humidityAs };
      record.value = { ...(opened[0] as LogOpened), name };
    });
  } else if (typeof found === 'string') {
    refusal.value = found;
    judgedRecord.value = null;
  } else if (found) {
    refusal.value = null;
    judgedRecord.value = found;
  }
}

export function openRecord(file: File): void {
  name = file.name.slice(0, 60);
  putAway();
  rowsReading.value = 0;
  ask({ open: [file], together: false });
}

export function putAway(): void {
  record.value = null;
  judgedRecord.value = null;
  refusal.value = null;
}

// Judged anew with every word on its columns and every clock.
if (typeof document !== 'undefined') {
  effect(() => {
    if (!record.value || !said.value) return;
    ask({
      said: {
        ...said.value,
        pressure: sitePressure(job.value),
        startedAt: startedAt.value,
        changedAt: changedAt.value,
      },
    });
  });
}

/** How the humidities say themselves: those of the record, or those typed here. */
export const recordMeasure = computed(() => (record.value && said.value?.humidityAs) ?? measure.value);

/** Readings typed here, each pair in its own air, as a record. */
const typedLog = computed((): Log | null => {
  const pairs = pairsIn(job.value, 'steady');
  if (pairs.length === 0) return null;
  const whole = pairs.every(({ entering, leaving }) => entering.humidity !== null && leaving.humidity !== null);
  const column = (of: 'entering' | 'leaving', what: 'dryBulb' | 'humidity') =>
    pairs.map((pair) => pair[of][what] ?? Number.NaN);
  return {
    time: pairs.map(({ time }) => time),
    columns: {
      'entering.dryBulb': column('entering', 'dryBulb'),
      'leaving.dryBulb': column('leaving', 'dryBulb'),
      ...(whole
        ? { 'entering.humidity': column('entering', 'humidity'), 'leaving.humidity': column('leaving', 'humidity') }
        : {}),
    },
    measure: measure.value,
    pressure: sitePressure(job.value),
    startedAt: startedAt.value,
    changes: changedAt.value === null ? [] : [changedAt.value],
  };
});

/** What is made of the record, or of the readings typed here. */
export const found = computed((): JudgedLog | null => {
  if (record.value) return judgedRecord.value;
  const log = typedLog.value;
  const made = log && judged(log, [], true);
  return typeof made === 'string' ? null : made;
});
