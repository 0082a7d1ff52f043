/** What edits changed in a job, figure by figure and row by row, in the words in which it was typed. */
import { withOwnUnit } from './edit.ts';
import { isOutsideLock } from './notes.ts';
import { cellText, rowKeys } from './tables.ts';
import type { Edit, Entered, Job, TypedTable } from './types.ts';

export interface ChangeAfterLock {
  readonly slot: Edit['slot'];
  readonly key: string;
  /**
   * Of a table: its row, by the columns that it is known by, else by its number. '' for a whole table, of which `was` and `now` are
   * the numbers of rows; and for everything else.
   */
  readonly row: string;
  /** As typed, with its unit; '' for nothing. */
  readonly was: string;
  readonly now: string;
  /** ISO 8601. */
  readonly at: string;
}

/** `readAt`: when the figure that now stands there was read, where that is known. */
export type Change = ChangeAfterLock & { readonly readAt?: string | undefined };

/** A table of which more rows changed than this was brought in anew, and counts as one change. */
const mostRows = 20;
/** As long as a cell may be. */
const longest = 200;

export function changesBetween(before: Job, after: Job, edits: readonly Edit[], at: string): readonly Change[] {
  const keys = new Map(edits.map((edit) => [`${edit.slot}/${edit.key}`, edit]));
  const changes = [...keys.values()].flatMap((edit) => changesOf(before, after, edit));
  return changes
    .filter(({ was, now, readAt }) => was !== now || readAt !== undefined)
    .map((change) => ({ ...change, was: cut(change.was), now: cut(change.now), at }));
}

const cut = (text: string) => (text.length > longest ? `${text.slice(0, longest - 1)}…` : text);

type Found = Omit<Change, 'at'>;

function changesOf(before: Job, after: Job, { slot, key }: Edit): readonly Found[] {
  if (slot === 'tables') return key === 'locked.changes' ? [] : rowsOf(key, before.tables[key], after.tables[key]);
  if (slot === 'notes' && isOutsideLock(key)) return [];
  if (slot === 'entered') {
    const [was, now] = [before.entered[key], after.entered[key]];
    if (was?.at === now?.at && textOf(was) === textOf(now)) return [];
    return [{ slot, key, row: '', was: textOf(was), now: textOf(now), readAt: now?.at }];
  }
  const [was = '', now = ''] = [before, after].map((job) => (job[slot] as Readonly<Record<string, string>>)[key]);
  return [{ slot, key, row: '', was, now }];
}

/** What was typed with what it meant: "75.0 °F ±0.9 °F". */
function textOf(entry: Entered | undefined): string {
  if (!entry) return '';
  const { text, limit, unit } = entry;
  return [withOwnUnit(text, unit), limit !== undefined && `±${withOwnUnit(limit, unit)}`].filter(Boolean).join(' ');
}

function rowsOf(key: string, was: TypedTable | undefined, now: TypedTable | undefined): readonly Found[] {
  const names = (rowKeys as Readonly<Record<string, readonly string[] | undefined>>)[key] ?? [];
  const [before, after] = [named(was, names), named(now, names)];
  const slot = 'tables';
  const changed = [...new Set([...before.keys(), ...after.keys()])]
    .map((row) => ({ slot, key, row, was: before.get(row) ?? '', now: after.get(row) ?? '' }) as const)
    .filter((one) => one.was !== one.now);
  if (changed.length <= mostRows) return changed;
  const count = (table: TypedTable | undefined) => String(table?.rows.length ?? 0);
  return [{ slot, key, row: '', was: count(was), now: count(now) }];
}

/** The texts of each row, by what it is known by. */
function named(table: TypedTable | undefined, names: readonly string[]): ReadonlyMap<string, string> {
  if (!table) return new Map();
  const others = table.columns.filter(({ key }) => !names.includes(key));
  return new Map(
    table.rows.map((row, index) => [
      names.length === 0 ? String(index + 1) : names.map((name) => cellText(table, row, name)).join('/'),
      others
        .map(({ key, unit }) => withOwnUnit(cellText(table, row, key), unit).trim())
        .filter((text) => text !== '')
        .join(' · '),
    ]),
  );
}
