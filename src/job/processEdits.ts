/** The edits of the processes of the air chart. */

import { complete, rowOf, withoutRow, withRow, withTexts } from './keyedRows.ts';
import { type ProcessKey, processKeys } from './processes.ts';
import { unitOf } from './quantities.ts';
import type { StateKey } from './states.ts';
import { cellText, rowLimits, tables } from './tables.ts';
import type { Edit, Job, System, TypedTable, UnitKey } from './types.ts';

export type ProcessColumn = Exclude<(typeof tables.processes)[number], 'key'>;
type Texts = Readonly<Partial<Record<ProcessColumn, string>>>;

const measured = { endDryBulb: 'state.dryBulb', airflow: 'process.airflow', secondAirflow: 'process.airflow' } as const;
const isMeasured = (column: string): column is keyof typeof measured => column in measured;

/** The first key that no process has; `null` when there is no room. */
export function freeProcessKey(job: Job): ProcessKey | null {
  const table = job.tables.processes;
  if (table === undefined) return 'p1';
  if (table.rows.length >= (rowLimits.processes ?? 0)) return null;
  return processKeys.find((key) => rowOf(table, key) < 0) ?? null;
}

/** One process more; nothing when there is no room. */
export function addProcess(job: Job, texts: Texts, system: System): readonly Edit[] {
  const key = freeProcessKey(job);
  if (key === null) return [];
  return [write(withRow(tableOf(job, system), key, texts, typedIn(system)))];
}

/** Texts of a process, a bare number in them being in the unit of a system. */
export function setProcess(job: Job, key: ProcessKey, texts: Texts, system: System): readonly Edit[] {
  const table = tableOf(job, system);
  return rowOf(table, key) < 0 ? [] : [write(withTexts(table, key, texts, typedIn(system)))];
}

/** Takes a process away, and its end out of the processes that begin there. */
export function removeProcess(job: Job, key: ProcessKey): readonly Edit[] {
  const table = job.tables.processes;
  return table === undefined ? [] : [write(forget(withoutRow(table, key), key))];
}

/** The processes without the name of a state that goes. */
export function withoutState(job: Job, key: StateKey): readonly Edit[] {
  const table = job.tables.processes;
  const named = table?.rows.some((row) => places.some((column) => cellText(table, row, column) === key));
  return table === undefined || !named ? [] : [write(forget(table, key))];
}

const places: readonly string[] = ['from', 'with', 'to'] satisfies ProcessColumn[];

function forget(table: TypedTable, point: string): TypedTable {
  const isPlace = (index: number) => places.includes(table.columns[index]?.key ?? '');
  const rows = table.rows.map((row) => row.map((text, index) => (isPlace(index) && text === point ? '' : text)));
  return { ...table, rows };
}

const typedIn = (system: System) => (column: string, kept: UnitKey) =>
  isMeasured(column) ? unitOf(measured[column], system) : kept;

/** A table of processes without rows, its columns in the units of a system. */
export function emptyProcesses(system: System): TypedTable {
  const unit = (key: string): UnitKey => (isMeasured(key) ? unitOf(measured[key], system) : 'count');
  return { columns: tables.processes.map((key) => ({ key, unit: unit(key) })), rows: [] };
}

const tableOf = (job: Job, system: System) => complete(job.tables.processes, emptyProcesses(system));

function write({ columns, rows }: TypedTable): Edit {
  return { slot: 'tables', key: 'processes', to: rows.length === 0 ? undefined : { columns, rows } };
}
