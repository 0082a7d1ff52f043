/** The whole lists of quantities, choices and tables, for what has to know every key: records that come in, and the tests. */
import { airflowChoices } from './airflow/choices.ts';
import { airflowQuantities } from './airflow/quantities.ts';
import { airflowTables } from './airflow/tables.ts';
import { choices, joinChoices } from './choices.ts';
import { ductChoices } from './ducts/choices.ts';
import { ductQuantities } from './ducts/quantities.ts';
import { joinQuantities, quantities } from './quantities.ts';
import { readReportChoices } from './readReport/choices.ts';
import { readReportQuantities } from './readReport/quantities.ts';
import { sureChoices } from './sure/choices.ts';
import { sureQuantities } from './sure/quantities.ts';
import { sureTables } from './sure/tables.ts';
import { tables } from './tables.ts';

joinQuantities({ ...airflowQuantities, ...sureQuantities, ...ductQuantities, ...readReportQuantities });
joinChoices({ ...airflowChoices, ...sureChoices, ...ductChoices, ...readReportChoices });

export const allQuantities = {
  ...quantities,
  ...airflowQuantities,
  ...sureQuantities,
  ...ductQuantities,
  ...readReportQuantities,
} as const;
export const allChoices = {
  ...choices,
  ...airflowChoices,
  ...sureChoices,
  ...ductChoices,
  ...readReportChoices,
} as const;
export const allTables = { ...tables, ...airflowTables, ...sureTables } as const;
