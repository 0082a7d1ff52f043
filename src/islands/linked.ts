/** The job that an address carries. It is looked for when the store of the device has come, and shown in place of the kept one. */
import { show } from './jobStore.ts';
import { unread } from './opening.ts';

/** A job in an address stands behind this. */
export const linkHash = '#job=';
const isLink = () => location.hash.startsWith(linkHash);

/** Shows the job of the address; false when there is none, or none that can be read, which the page then says. */
export async function openLinked(): Promise<boolean> {
  // Another link in the same tab is another job.
  addEventListener('hashchange', () => isLink() && location.reload());
  if (!isLink()) return false;
  const { decodeJob } = await import('~/job/linkText.ts');
  const found = await decodeJob(location.hash.slice(linkHash.length));
  if (found.ok) show(found.job, 'linked');
  else unread.value = `link.${found.reason}`;
  return found.ok;
}
