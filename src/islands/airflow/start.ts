/** What the airflow sheet does once it stands. */
import { effect } from '@preact/signals';
import { airflowQuantities } from '~/job/airflow/quantities.ts';
import { airflowTables } from '~/job/airflow/tables.ts';
import type { Job } from '~/job/types.ts';
import { job, show, source } from '../jobStore.ts';
import { startSheet } from '../startSheet.ts';
import { airflowWays, allOpen, fetchFinder, type Method, openStep } from './model.ts';

/** Runs once after hydration. Returns what is to be undone when the page goes. */
export function start(): () => void {
  const stop = effect(() => {
    if (openStep.value !== null || allOpen.value || hasAirflow(job.value)) void fetchFinder();
  });
  const asked = location.hash.slice(1);
  const end = startSheet(airflowWays, () => {
    if (source.value === 'demo') void showAirflowDemo();
    if (airflowWays.steps.some((method) => method === asked)) openStep.value = asked as Method;
  });
  return () => {
    stop();
    end();
  };
}

/** The demo of this sheet has two ways filled in. */
async function showAirflowDemo(): Promise<void> {
  const { airflowDemo } = await import('~/job/demoAirflow.ts');
  if (source.value === 'demo') show(airflowDemo, 'demo');
}

/** Whether anything was typed on this sheet. */
function hasAirflow({ entered, tables }: Job): boolean {
  return [...Object.keys(entered), ...Object.keys(tables)].some(
    (key) => key in airflowQuantities || key in airflowTables,
  );
}
