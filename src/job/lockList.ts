/** The list, in a locked job, of what was changed after: it travels with the job, so that file, link and report tell it too. */
import { type ChangeAfterLock, changesBetween } from './lockChanges.ts';
import { cellText, tableLimits } from './tables.ts';
import type { Edit, Job, TypedTable } from './types.ts';

export interface Lock {
  /** ISO 8601. */
  readonly at: string;
  /** The code of the sheet as it was then. */
  readonly code: string;
}

/** When a job was locked and under which code; `null` while it is open. */
export function lockedOf({ notes }: Job): Lock | null {
  const at = notes['locked.at'];
  return at === undefined ? null : { at, code: notes['locked.code'] ?? '' };
}

/** What was changed since the job was locked, in the order in which each was first changed; none of an open job. */
export function changesAfterLock(job: Job): readonly ChangeAfterLock[] {
  const table = job.tables['locked.changes'];
  if (!table || !lockedOf(job)) return [];
  return table.rows.map((row) => {
    const of = (column: string) => cellText(table, row, column);
    return {
      slot: of('slot') as ChangeAfterLock['slot'],
      key: of('key'),
      row: of('row'),
      was: of('was'),
      now: of('now'),
      at: of('at'),
    };
  });
}

/** The edits that list what edits changed in a locked job; none for an open one. What is as it was when locked leaves the list. */
export function listChanges(before: Job, after: Job, edits: readonly Edit[], at: string): readonly Edit[] {
  const lock = lockedOf(before);
  if (!lock) return [];
  const listed = new Map(changesAfterLock(before).map((one) => [nameOf(one), one]));
  const made = changesBetween(before, after, edits, at);
  for (const change of made) {
    const first = listed.get(nameOf(change));
    const was = first ? first.was : change.was;
    // A figure typed anew has a later time than the lock: it is another reading, though it may say the same.
    if (was === change.now && (change.readAt ?? '') <= lock.at) listed.delete(nameOf(change));
    else listed.set(nameOf(change), { ...change, was });
  }
  if (made.length === 0) return [];
  return [{ slot: 'tables', key: 'locked.changes', to: tableOf([...listed.values()].slice(-tableLimits.rows)) }];
}

const nameOf = ({ slot, key, row }: ChangeAfterLock) => `${slot}/${key}/${row}`;

const columns = ['slot', 'key', 'row', 'was', 'now', 'at'] as const satisfies readonly (keyof ChangeAfterLock)[];

function tableOf(changes: readonly ChangeAfterLock[]): TypedTable | undefined {
  if (changes.length === 0) return undefined;
  return {
    columns: columns.map((key) => ({ key, unit: 'count' as const })),
    rows: changes.map((change) => columns.map((column) => change[column])),
  };
}
