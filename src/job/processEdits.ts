/** The edits of the processes of the air chart. */

import { withOwnUnit } from './edit.ts';
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
  const table = complete(job, system);
  const blank: Readonly<Record<string, string>> = { key };
  const rows = [...table.rows, table.columns.map((column) => blank[column.key] ?? '')];
  return [write(withTexts({ ...table, rows }, key, texts, system))];
}

/** Texts of a process, a bare number in them being in the unit of a system. */
export function setProcess(job: Job, key: ProcessKey, texts: Texts, system: System): readonly Edit[] {
  const table = complete(job, system);
  return rowOf(table, key) < 0 ? [] : [write(withTexts(table, key, texts, system))];
}

/** Takes a process away, and its end out of the processes that begin there. */
export function removeProcess(job: Job, key: ProcessKey): readonly Edit[] {
  const table = job.tables.processes;
  if (table === undefined) return [];
  const rows = table.rows.filter((_, index) => index !== rowOf(table, key));
  return [write(forget({ ...table, rows }, key))];
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

function withTexts(table: TypedTable, key: ProcessKey, texts: Texts, system: System): TypedTable {
  const at = rowOf(table, key);
  const changed = (row: readonly string[]) =>
    table.columns.map(({ key: column, unit }, index) => {
      const text = texts[column as ProcessColumn];
      if (text === undefined) return row[index] ?? '';
      const meant = isMeasured(column) ? unitOf(measured[column], system) : unit;
      return unit === meant ? text : withOwnUnit(text, meant);
    });
  return { ...table, rows: table.rows.map((row, index) => (index === at ? changed(row) : row)) };
}

function rowOf(table: TypedTable, key: ProcessKey): number {
  return table.rows.findIndex((row) => cellText(table, row, 'key') === key);
}

/** A table of processes without rows, its columns in the units of a system. */
export function emptyProcesses(system: System): TypedTable {
  const unit = (key: string): UnitKey => (isMeasured(key) ? unitOf(measured[key], system) : 'count');
  return { columns: tables.processes.map((key) => ({ key, unit: unit(key) })), rows: [] };
}

/** The table with all its columns. */
function complete(job: Job, system: System): TypedTable {
  const fresh = emptyProcesses(system);
  const table = job.tables.processes ?? fresh;
  const missing = fresh.columns.filter(({ key }) => !table.columns.some((column) => column.key === key));
  return { ...table, columns: [...table.columns, ...missing] };
}

function write({ columns, rows }: TypedTable): Edit {
  return { slot: 'tables', key: 'processes', to: rows.length === 0 ? undefined : { columns, rows } };
}
