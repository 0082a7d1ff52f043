import { airCosts } from './air.ts';
import { airflowCosts } from './airflow.ts';
import { expectedCosts } from './expected.ts';

export { type Cost, checkedExample, example, expectedOf, high, loadOf, ratioOf, states, verdictOf } from './example.ts';

/** What each common mistake costs, by its name in the articles. */
export const costs = { ...airCosts, ...airflowCosts, ...expectedCosts } as const;
