/**
 * Two pages that change the same table at once: what each of them changed stays, row by row. A row is known by the columns that
 * `rowKeys` names; a table without such columns is replaced whole.
 */
import { applyEdits, withOwnUnit } from './edit.ts';
import { cellText, rowKeys, rowLimits, type TableKey, tableLimits } from './tables.ts';
import type { Edit, Job, TypedTable } from './types.ts';

type Columns = TypedTable['columns'];
type Row = readonly string[];

/** The job after edits that were made to an earlier state of it: tables merge by row, everything else by key. */
export function mergeEdits(job: Job, edits: readonly Edit[]): Job {
  return edits.reduce((now, edit) => {
    if (edit.slot !== 'tables' || !('was' in edit)) return applyEdits(now, [edit]);
    const { slot, key, was, to } = edit;
    return applyEdits(now, [{ slot, key, to: mergeTable(key, now.tables[key], was, to) }]);
  }, job);
}

/**
 * A table as it stands `now` with the change from `was` to `to`: rows that the change made, altered or took away are as in `to`,
 * all others as they are now. Rows that stand now keep their order, new ones come behind them. Where more rows would come
 * together than the table may have, the change wins whole.
 */
export function mergeTable(
  key: TableKey,
  now: TypedTable | undefined,
  was: TypedTable | undefined,
  to: TypedTable | undefined,
): TypedTable | undefined {
  const names = rowKeys[key];
  if (names === undefined || now === undefined || isSame(now, was)) return to;
  const columns = together(to?.columns ?? now.columns, now.columns);
  const [here, before, after] = [now, was, to].map((table) => rowsOf(table, columns, names));
  if (!here || !before || !after) return to;
  const changed = (id: string) => !isSame(before.get(id), after.get(id));
  const rows = [
    ...[...here].flatMap(([id, row]) => (changed(id) ? [after.get(id)] : [row])),
    ...[...after].flatMap(([id, row]) => (!here.has(id) && changed(id) ? [row] : [])),
  ].filter((row): row is Row => row !== undefined);
  if (rows.length > (rowLimits[key] ?? tableLimits.rows)) return to;
  return rows.length === 0 ? undefined : { columns, rows };
}

const isSame = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

/** The columns of one table and those that only another has. */
function together(one: Columns, other: Columns): Columns {
  return [...one, ...other.filter(({ key }) => !one.some((column) => column.key === key))];
}

/** The rows of a table under other columns, by what they are known by; of rows known by the same the second has a number. */
function rowsOf(table: TypedTable | undefined, columns: Columns, names: readonly string[]): Map<string, Row> {
  const rows = new Map<string, Row>();
  for (const row of table?.rows ?? []) {
    const name = names.map((column) => cellText(table!, row, column)).join('/');
    let id = name;
    for (let copy = 2; rows.has(id); copy++) id = `${name}#${copy}`;
    rows.set(
      id,
      columns.map((column) => textFor(table!, row, column)),
    );
  }
  return rows;
}

/** The text of a cell for a column that may have another unit: there it carries its own. */
function textFor(table: TypedTable, row: Row, { key, unit }: Columns[number]): string {
  const own = table.columns.find((column) => column.key === key);
  const text = cellText(table, row, key);
  return own === undefined || own.unit === unit ? text : withOwnUnit(text, own.unit);
}
