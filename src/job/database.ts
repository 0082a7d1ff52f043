/**
 * The database on this device, 'ton-for-ton': 'jobs' holds records by id; 'state' holds which job is open, and records that could
 * not be read, set aside as they were; 'tables' holds the makers' tables of jobs, for later ones; 'undo' holds the steps back of
 * each job, under its id and the time of the step.
 */
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';

interface Shelves extends DBSchema {
  /** What stands here was written by some version of this site: it is read through the schema. */
  jobs: { key: string; value: { readonly id: string } };
  state: { key: string; value: unknown };
  tables: { key: string; value: { readonly id: string } };
  undo: { key: [id: string, begun: number]; value: unknown };
}

/** Under which name 'state' holds the id of the job that is open. */
export const openKey = 'open';

type ShelfName = 'jobs' | 'state' | 'tables' | 'undo';
export type Shelf = IDBPTransaction<Shelves, ShelfName[], 'readwrite'>;

/**
 * `refused`: no storage here (a private window, switched off). `full`: no room. `otherVersion`: pages of another version of this
 * site hold the database or the record; closing them and loading this page again helps.
 */
export type StorageTrouble = 'refused' | 'full' | 'otherVersion';

/** What an error that storage gave means for a person. */
export function troubleOf(error: unknown): StorageTrouble {
  const name = typeof error === 'object' && error !== null && 'name' in error ? error.name : undefined;
  if (name === 'QuotaExceededError') return 'full';
  return name === 'VersionError' ? 'otherVersion' : 'refused';
}

/** An error that counts as `otherVersion`, of the name that the database itself gives. */
export function otherVersion(): Error {
  return Object.assign(new Error('held by another version'), { name: 'VersionError' });
}

export type Done<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly trouble: StorageTrouble };

/** Does the work in one transaction over some shelves, all of it or nothing. Never rejects. */
export async function inOneTransaction<T>(
  work: (shelf: Shelf) => Promise<T>,
  names: ShelfName[] = ['jobs', 'state'],
): Promise<Done<T>> {
  try {
    const shelf = (await database()).transaction(names, 'readwrite');
    const [value] = await Promise.all([undoneOnError(shelf, work), shelf.done]);
    return { ok: true, value };
  } catch (error) {
    return { ok: false, trouble: troubleOf(error) };
  }
}

async function undoneOnError<T>(shelf: Shelf, work: (shelf: Shelf) => Promise<T>): Promise<T> {
  try {
    return await work(shelf);
  } catch (error) {
    try {
      shelf.abort();
    } catch {
      // It has ended already.
    }
    throw error;
  }
}

let opened: Promise<IDBPDatabase<Shelves>> | undefined;

function database(): Promise<IDBPDatabase<Shelves>> {
  opened ??= open().catch((error: unknown) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

async function open(): Promise<IDBPDatabase<Shelves>> {
  let giveUp = (): void => {};
  const blocked = new Promise<never>((_, reject) => {
    giveUp = () => reject(otherVersion());
  });
  const coming = openDB<Shelves>('ton-for-ton', 3, {
    // Each step brings the database of the version before to the next; none of them is ever changed.
    upgrade(shelves, from) {
      if (from < 1) {
        shelves.createObjectStore('jobs', { keyPath: 'id' });
        shelves.createObjectStore('state');
      }
      if (from < 2) shelves.createObjectStore('tables', { keyPath: 'id' });
      if (from < 3) shelves.createObjectStore('undo');
    },
    blocked() {
      giveUp();
      // Should it open after all, it must not stand in anyone's way.
      coming.then((late) => late.close()).catch(() => {});
    },
    blocking(_current, _next, event) {
      opened = undefined;
      (event.target as IDBDatabase).close();
    },
    terminated() {
      opened = undefined;
    },
  });
  return Promise.race([coming, blocked]);
}
