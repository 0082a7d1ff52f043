/** Lists in a locked job what is changed in it. It comes with the store of the device, without which no locked job is on a page. */
import { effect } from '@preact/signals';
import { listChanges } from '~/job/lockList.ts';
import { edit, lastEdit } from './jobStore.ts';

effect(() => {
  const made = lastEdit.value;
  if (!made) return;
  const { before, after, edits } = made;
  const listed = listChanges(before, after, edits, new Date().toISOString());
  // The edit of the list changes no figure, so that nothing follows from it.
  if (listed.length > 0) edit(...listed);
});
