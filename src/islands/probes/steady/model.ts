/** The wait until steady: the clocks of the job, the record that is open, and what is made of either. */
import { computed, effect, signal } from '@preact/signals';
import type { Log } from '~/calc/confidence/steady.ts';
import { steadyRule } from '~/calc/confidence/steadyRule.ts';
import { sitePressure } from '~/job/entered.ts';
import { type JudgedLog, type JudgeRefusal, judged } from '~/job/log/judgeLog.ts';
import type { LogRefusal } from '~/job/log/openLog.ts';
import type { LogRole } from '~/job/log/roles.ts';
import { pairsIn } from '~/job/sure/pairs.ts';
import { edit, job } from '../../jobStore.ts';
import { whenUntouched } from '../../untouched.ts';
import type { LogAsk, LogOpened, LogReply } from '../../workers/log.ts';
import { measure } from '../model.ts';

const seconds = (iso: string | undefined): number | null => {
  const time = iso === undefined ? Number.NaN : Date.parse(iso) / 1000;
  return Number.isFinite(time) ? time : null;
};

/** The clocks of the job: times of its start, so that a locked or restarted phone loses nothing. */
export const startedAt = computed(() => seconds(job.value.notes['steady.startedAt']));
export const changedAt = computed(() => {
  const changed = seconds(job.value.notes['steady.changedAt']);
  return changed !== null && changed > (startedAt.value ?? -Infinity) ? changed : null;
});
export const notBefore = computed(() => {
  const begun = changedAt.value ?? startedAt.value;
  return begun === null ? null : begun + steadyRule.settle;
});

export const stampStart = () =>
  edit(
    { slot: 'notes', key: 'steady.startedAt', to: new Date().toISOString() },
    { slot: 'notes', key: 'steady.changedAt', to: undefined },
  );
export const stampChange = () => edit({ slot: 'notes', key: 'steady.changedAt', to: new Date().toISOString() });

export interface OpenedRecord extends LogOpened {
  readonly name: string;
}
/** The record that is open, and what the person says of its columns; it stays in this page. */
export const record = signal<OpenedRecord | null>(null);
export const roles = signal<readonly LogRole[]>([]);
export const temperatures = signal<'degF' | 'degC'>('degF');
export const refusal = signal<LogRefusal | JudgeRefusal | null>(null);
export const isReading = signal(false);
const judgedRecord = signal<JudgedLog | null>(null);

let worker: Worker | null = null;
let ticket = 0;

function ask(message: { readonly open: Blob } | { readonly said: Extract<LogAsk, { said: unknown }>['said'] }): void {
  worker ??= started();
  ticket++;
  worker.postMessage({ ticket, ...message } satisfies LogAsk);
}

let name = '';

function started(): Worker {
  const fresh = new Worker(new URL('../../workers/log.ts', import.meta.url), { type: 'module' });
  fresh.onmessage = ({ data }: MessageEvent<LogReply>) => {
    if (data.ticket === ticket) whenUntouched(() => take(data));
  };
  fresh.onerror = () => {
    worker = null;
    isReading.value = false;
    refusal.value = 'notText';
  };
  return fresh;
}

function take({ opened, judged: found }: LogReply): void {
  isReading.value = false;
  if (typeof opened === 'string') refusal.value = opened;
  else if (opened) {
    roles.value = opened.heads.map(({ role }) => role);
    temperatures.value = opened.temperatures;
    record.value = { ...opened, name };
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
  refusal.value = null;
  record.value = null;
  judgedRecord.value = null;
  isReading.value = true;
  ask({ open: file });
}

export function putAway(): void {
  record.value = null;
  judgedRecord.value = null;
  refusal.value = null;
}

// Judged anew with every word on its columns and every clock.
if (typeof document !== 'undefined') {
  effect(() => {
    const open = record.value;
    if (!open) return;
    ask({
      said: {
        roles: roles.value,
        temperatures: temperatures.value,
        humidityAs: open.humidityAs,
        pressure: sitePressure(job.value),
        startedAt: startedAt.value,
        changedAt: changedAt.value,
      },
    });
  });
}

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
