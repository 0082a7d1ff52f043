/** The whole lists of quantities, choices and tables, for what has to know every key: records that come in, and the tests. */
import { airflowChoices } from './airflow/choices.ts';
import { airflowQuantities } from './airflow/quantities.ts';
import { airflowTables } from './airflow/tables.ts';
import { choices, joinChoices } from './choices.ts';
import { joinQuantities, quantities } from './quantities.ts';
import { tables } from './tables.ts';

joinQuantities(airflowQuantities);
joinChoices(airflowChoices);

export const allQuantities = { ...quantities, ...airflowQuantities } as const;
export const allChoices = { ...choices, ...airflowChoices } as const;
export const allTables = { ...tables, ...airflowTables } as const;
