/** The whole tables of quantities and choices, for what has to know every key: records that come in, and the tests. */
import { airflowChoices } from './airflow/choices.ts';
import { airflowQuantities } from './airflow/quantities.ts';
import { choices, joinChoices } from './choices.ts';
import { joinQuantities, quantities } from './quantities.ts';

joinQuantities(airflowQuantities);
joinChoices(airflowChoices);

export const allQuantities = { ...quantities, ...airflowQuantities } as const;
export const allChoices = { ...choices, ...airflowChoices } as const;
