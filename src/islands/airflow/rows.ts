/** How many rows of a grid are open to be typed into: those that are filled and one more. */
import { gridRows } from '~/job/airflow/grid.ts';
import type { AirflowTableKey } from '~/job/airflow/tables.ts';
import { job } from '../jobStore.ts';

export function openRows(table: AirflowTableKey, most: number, least = 1): number {
  return Math.min(most, Math.max(least, gridRows(job.value, table) + 1));
}
