/** The steps back of each job, kept beside the jobs: they come back with a page, and go with the job. */
import { inOneTransaction, type Shelf } from './database.ts';
import { deepest, readSteps, type UndoStep } from './undoSteps.ts';

/** All steps of a job: in the order of keys a list comes after every number. */
const ofJob = (id: string) => IDBKeyRange.bound([id], [id, []]);

/** The steps kept of a job, the first done first. None where nothing can be kept. */
export async function keptSteps(id: string): Promise<readonly UndoStep[]> {
  const found = await inOneTransaction((shelf) => shelf.objectStore('undo').getAll(ofJob(id)), ['undo']);
  return found.ok ? readSteps(found.value) : [];
}

/** Keeps a step, in place of itself when it was kept before, and forgets those that are too far back. */
export function keepStep(id: string, step: UndoStep): Promise<unknown> {
  return inOneTransaction(
    async (shelf) => {
      const undo = shelf.objectStore('undo');
      await undo.put(step, [id, step.begun]);
      const keys = await undo.getAllKeys(ofJob(id));
      await Promise.all(keys.slice(0, -deepest).map((key) => undo.delete(key)));
    },
    ['undo'],
  );
}

export function dropStep(id: string, { begun }: UndoStep): Promise<unknown> {
  return inOneTransaction((shelf) => shelf.objectStore('undo').delete([id, begun]), ['undo']);
}

/** Forgets the steps of a job that is taken off the device. */
export function dropSteps(shelf: Shelf, id: string): Promise<unknown> {
  return shelf.objectStore('undo').delete(ofJob(id));
}
