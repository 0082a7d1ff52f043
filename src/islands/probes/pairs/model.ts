/** The records of both probes in one air: what was opened, what was said of it, and the pairs that it comes to. */
import { effect, signal } from '@preact/signals';
import type { PairedRecords, PairRefusal } from '~/job/log/pairRecords.ts';
import type { ColumnsSaid } from '~/job/log/readColumns.ts';
import type { PairAir } from '~/job/sure/pairs.ts';
import type { LogReply } from '../../workers/log.ts';
import { logWorker } from '../records/logWorker.ts';
import type { OpenedRecord } from '../records/RecordColumns.tsx';

/** Minutes before the end of the records over which the probes are compared; `null`: all of them. */
const spans = { ten: 10, twenty: 20, all: null } as const;
export type Span = keyof typeof spans;

/** The air whose records are open; one at a time. */
export const openAir = signal<PairAir | null>(null);
export const records = signal<readonly OpenedRecord[]>([]);
export const said = signal<readonly ColumnsSaid[]>([]);
export const span = signal<Span>('ten');
export const paired = signal<PairedRecords | null>(null);
export const refusal = signal<string | null>(null);
/** Rows that are being looked at; 0 while their number is not known, `null` when nothing is read. */
export const rowsReading = signal<number | null>(null);

let names: readonly string[] = [];
const ask = logWorker(take, () => {
  rowsReading.value = null;
  refusal.value = 'notText';
});

function take({ rows, opened, paired: found }: LogReply): void {
  if (rows !== undefined) {
    rowsReading.value = rows;
    return;
  }
  rowsReading.value = null;
  if (typeof opened === 'string') refusal.value = opened;
  else if (opened) {
    said.value = opened.map(({ heads, temperatures, pressures, humidityAs }) => {
      return { roles: heads.map(({ role }) => role), temperatures, pressures, humidityAs };
    });
    records.value = opened.map((one, index) => ({ ...one, name: names[index] ?? '' }));
  } else if (typeof found === 'string') {
    refusal.value = found satisfies PairRefusal;
    paired.value = null;
  } else if (found) {
    refusal.value = null;
    paired.value = found;
  }
}

export function openRecords(air: PairAir, files: readonly File[]): void {
  putAway();
  openAir.value = air;
  if (files.length > 2) {
    refusal.value = 'tooMany';
    return;
  }
  names = files.map(({ name }) => name.slice(0, 60));
  rowsReading.value = 0;
  ask({ open: files, together: true });
}

export function putAway(): void {
  records.value = [];
  paired.value = null;
  refusal.value = null;
  rowsReading.value = null;
}

/** Each record, or each column of the one record, is the other probe's. */
export function exchange(): void {
  const other = { entering: 'leaving', leaving: 'entering' } as const;
  said.value = said.value.map((one) => ({
    ...one,
    roles: one.roles.map(
      (role) => role.replace(/^(entering|leaving)/, (place) => other[place as keyof typeof other]) as typeof role,
    ),
  }));
}

// Paired anew with every word on the columns and the time.
if (typeof document !== 'undefined') {
  effect(() => {
    if (records.value.length > 0) ask({ pair: { records: said.value, minutes: spans[span.value] } });
  });
}
