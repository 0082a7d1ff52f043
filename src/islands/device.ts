/** What a page fetches once it stands: the store of this device, and the job that its address may carry. */
export { keepJob, mergeEdits, onEdits, openJob, saveEdits } from '../job/storage.ts';
export { openLinked } from './linked.ts';

import './lockedChanges.ts';
