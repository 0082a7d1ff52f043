/** The whole table of quantities, for what has to know every key: records that come in, and the tests. */
import { airflowQuantities } from './airflow/quantities.ts';
import { joinQuantities, quantities } from './quantities.ts';

joinQuantities(airflowQuantities);

export const allQuantities = { ...quantities, ...airflowQuantities } as const;
