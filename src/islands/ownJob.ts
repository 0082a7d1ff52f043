/**
 * The jobs of this device on a page: which of them a tab has open, and how it comes to another one. The address names it, so that
 * a reload, a bookmark and a second tab each come back to their own. Fetched with the store of the device.
 */
import { emptyJob, isEmpty } from '~/job/edit.ts';
import { newId } from '~/job/newId.ts';
import { keepJob, openJob } from '~/job/storage.ts';
import type { Job } from '~/job/types.ts';
import { job, show } from './jobStore.ts';
import { keeping, noteResult } from './keep.ts';
import { openLinked } from './linked.ts';
import { unread } from './opening.ts';

/** Under which name a tab remembers its job where the address does not tell: from one sheet to the next. */
const tabKey = 'ton-for-ton.job';

/** Puts the job on the page that the address asks for: that of a link, that of a name, a new one, or the one of this tab. */
export async function openHere(query: URLSearchParams): Promise<void> {
  if (await openLinked()) return;
  const asked = query.get('job');
  const found = await openJob(asked ?? ofTab());
  if (found.trouble) keeping.value = found.trouble;
  // A tab that remembers a job which was deleted since has asked for nothing.
  if (found.unread !== 'missing' || asked !== null) unread.value ??= found.unread;
  if (query.has('new') && !isEmpty(found.job)) return startOwn();
  show(found.job, 'own');
  if (!found.trouble) nameJob(found.job);
  // A reload must not start yet another job.
  else forgetQuery();
}

/** An empty job of the person's own, the one kept before staying on the device. */
export function startOwn(): void {
  take(emptyJob(newId()));
}

/** The demo, or what a link showed, as a job that is kept; an invented one keeps saying so. */
export function takeCopy(): void {
  take({ ...job.value, id: newId() });
}

/** Makes a job the open one, here and on the device. */
function take(own: Job): void {
  show(own, 'own');
  void keepJob(own).then((result) => noteResult(result, own));
  nameJob(own);
}

function nameJob({ id }: Job): void {
  try {
    sessionStorage.setItem(tabKey, id);
  } catch {
    // Then the address alone tells.
  }
  forgetQuery(`?job=${id}`);
}

const ofTab = () => {
  try {
    return sessionStorage.getItem(tabKey);
  } catch {
    return null;
  }
};

const forgetQuery = (query = '') =>
  history.replaceState(null, '', location.pathname + query + location.hash.replace(/^#job=.*/, ''));
