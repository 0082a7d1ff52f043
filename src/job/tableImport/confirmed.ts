import type { Edit } from '../types.ts';
import type { Found } from './imported.ts';
import { airflowTable, sheetTable } from './table.ts';

export interface Confirmed {
  readonly basis: 'net' | 'gross' | 'unsure' | undefined;
  readonly stage: string | undefined;
  readonly page: string;
  /** When, ISO 8601. */
  readonly at: string;
  /** The maker's factors that hold for this job, as texts; `undefined` leaves the field as it is. */
  readonly indoorMatch: string | undefined;
  readonly lineLength: string | undefined;
}

/** The edits by which a confirmed sheet becomes the table of a job. */
export function confirmedEdits(found: Found, said: Confirmed): readonly Edit[] {
  const { proposal, rows } = found;
  const airflow = proposal.factors.find(({ cause }) => cause === 'airflow');
  const unit = proposal.meanings.find(({ role }) => role === 'airflow')?.unit ?? 'cfm';
  const factor = (key: 'rating.indoorMatch' | 'rating.lineLength', text: string | undefined): Edit[] =>
    text === undefined
      ? []
      : [{ slot: 'entered', key, to: { text, unit: 'fraction', origin: 'from sheet', at: said.at } }];
  return [
    { slot: 'tables', key: 'ratingSheet', to: sheetTable(rows, proposal.meanings) },
    { slot: 'tables', key: 'ratingAirflow', to: airflow && airflowTable(airflow, airflow.unit ?? unit) },
    { slot: 'chosen', key: 'rating.from', to: 'sheet' },
    ...(said.basis === undefined ? [] : [{ slot: 'chosen', key: 'rating.basis', to: said.basis } as const]),
    { slot: 'chosen', key: 'rating.stage', to: said.stage },
    ...factor('rating.indoorMatch', said.indoorMatch),
    ...factor('rating.lineLength', said.lineLength),
    { slot: 'notes', key: 'rating.page', to: said.page === '' ? undefined : said.page },
    { slot: 'notes', key: 'rating.typedAt', to: said.at },
  ];
}
