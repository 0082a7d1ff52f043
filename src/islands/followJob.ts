/** What follows every edit of a page once the store of the device is there. */
import { effect, untracked } from '@preact/signals';
import { listChanges } from '~/job/lockList.ts';
import { mergeEdits, onEdits } from '~/job/storage.ts';
import { edit, job, lastEdit, merge, source } from './jobStore.ts';
import { followSteps } from './undo/steps.ts';

/** Follows the job of the page: its steps back, its list after locking, the edits of other tabs. Returns what ends the last. */
export function followJob(): () => void {
  followSteps();
  effect(listWhatChanges);
  return onEdits((id, edits) => {
    if (source.value === 'own' && id === job.value.id) merge((made) => mergeEdits(made, edits));
  });
}

/** Lists in a locked job what is changed in it. The edit that does so changes no figure, so that nothing follows from it. */
function listWhatChanges(): void {
  const made = lastEdit.value;
  if (!made) return;
  const listed = listChanges(made.before, made.after, made.edits, new Date().toISOString());
  if (listed.length > 0) untracked(() => edit(...listed));
}
