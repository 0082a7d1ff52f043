/** What the airflow sheet does once it stands. */
import { effect } from '@preact/signals';
import { airflowQuantities } from '~/job/airflow/quantities.ts';
import { airflowTables } from '~/job/airflow/tables.ts';
import type { Job } from '~/job/types.ts';
import { job } from '../jobStore.ts';
import { startSheet } from '../startSheet.ts';
import { fetchFinder, isDesk, openPart, type Part } from './model.ts';

/** Runs once after hydration. Returns what is to be undone when the page goes. */
export function start(): () => void {
  const stop = effect(() => {
    if (openPart.value !== null || hasAirflow(job.value)) void fetchFinder();
  });
  const asked = location.hash.slice(1);
  const end = startSheet({ isDesk }, () => {
    if (document.getElementById(`step-${asked}`)) openPart.value = asked as Part;
  });
  return () => {
    stop();
    end();
  };
}

/** Whether anything was typed on this sheet. */
function hasAirflow({ entered, tables }: Job): boolean {
  return [...Object.keys(entered), ...Object.keys(tables)].some(
    (key) => key in airflowQuantities || key in airflowTables,
  );
}
