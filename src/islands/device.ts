/** What a page fetches once it stands: the store of this device, the job of its address, and what follows every edit. */
export { saveEdits } from '../job/storage.ts';
export { followJob } from './followJob.ts';
export { openHere } from './ownJob.ts';
