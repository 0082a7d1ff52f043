/** What the airflow sheet does once it stands. */
import { effect } from '@preact/signals';
import { airflowQuantities } from '~/job/airflow/quantities.ts';
import { airflowTables } from '~/job/airflow/tables.ts';
import type { Job } from '~/job/types.ts';
import { takeEarly } from '../early.ts';
import { job } from '../jobStore.ts';
import { follow, open } from '../opening.ts';
import { fetchFinder, isDesk, openPart, type Part } from './model.ts';

/** Runs once after hydration. Returns what is to be undone when the page goes. */
export function start(): () => void {
  const wide = matchMedia('(min-width: 68.75em)');
  const width = () => {
    if (!matchMedia('print').matches) isDesk.value = wide.matches;
  };
  takeEarly();
  width();
  wide.addEventListener('change', width);
  const unfollow = follow();
  const stop = effect(() => {
    if (openPart.value !== null || hasAirflow(job.value)) void fetchFinder();
  });
  const asked = location.hash.slice(1);
  void open(new URLSearchParams(location.search)).then(() => {
    if (document.getElementById(`step-${asked}`)) openPart.value = asked as Part;
  });
  return () => {
    stop();
    wide.removeEventListener('change', width);
    unfollow();
  };
}

/** Whether anything was typed on this sheet. */
function hasAirflow({ entered, tables }: Job): boolean {
  return [...Object.keys(entered), ...Object.keys(tables)].some(
    (key) => key in airflowQuantities || key in airflowTables,
  );
}
