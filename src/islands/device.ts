/** What a page fetches once it stands: the store of this device, the job of its address, and what follows every edit. */
import { followSteps } from './undo/steps.ts';
import './lockedChanges.ts';

export { mergeEdits, onEdits, saveEdits } from '../job/storage.ts';
export { openHere } from './ownJob.ts';

followSteps();
