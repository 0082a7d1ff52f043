/**
 * Locking a job: it is stamped with the time and the code of its sheet, and stays a job in which one may type. What is changed
 * after that is listed in it.
 */
import { lockedOf } from './lockList.ts';
import { sheetCode } from './sheetCode.ts';
import type { Edit, Job } from './types.ts';

export type { ChangeAfterLock } from './lockChanges.ts';
export { changesAfterLock, type Lock, listChanges, lockedOf } from './lockList.ts';
export { sheetCode };

/** The edits that lock a job. A job is locked once: none for one that is locked already. */
export function lockEdits(job: Job, at: string): readonly Edit[] {
  if (lockedOf(job)) return [];
  return [
    { slot: 'notes', key: 'locked.at', to: at },
    { slot: 'notes', key: 'locked.code', to: sheetCode(job) },
  ];
}
