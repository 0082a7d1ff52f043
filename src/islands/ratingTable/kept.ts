/** The tables of this device: the list of the earlier ones, and the keeping of this job's own. */
import { effect, signal } from '@preact/signals';
import { hasTable, type KeptTable, keepTable, keptTables, removeTable, tableOf } from '~/job/keptTables.ts';
import { usesSheet } from '~/job/usesSheet.ts';
import { job, loaded, source } from '../jobStore.ts';

/** The tables of other jobs, the latest first; `null` until they have been looked for. */
export const tables = signal<readonly KeptTable[] | null>(null);

/** After the last key of a figure, ms. */
const pause = 800;

/** Keeps the table of this job whenever it changes, and lists those of others. Returns what ends that. */
export function keepOwn(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last = '';
  let listed = '';
  const stop = effect(() => {
    const now = job.value;
    // The demo, and what a link shows, touch nothing of this device.
    if (!loaded.value || source.value !== 'own') return;
    if (listed !== now.id) {
      listed = now.id;
      void list();
    }
    if (!hasTable(now)) return;
    const text = JSON.stringify(tableOf(now));
    if (text === last) return;
    last = text;
    clearTimeout(timer);
    // A whole table is taken over at one tap, after which the page may be left: it is kept at once.
    if (usesSheet(now)) void keepTable(now);
    else timer = setTimeout(() => void keepTable(now), pause);
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}

export async function list(): Promise<void> {
  const done = await keptTables(job.value.id);
  tables.value = done.ok ? done.value : [];
}

export async function remove(table: KeptTable): Promise<void> {
  await removeTable(table.id);
  await list();
}

export async function putBack(table: KeptTable): Promise<void> {
  await keepTable(table);
  await list();
}
