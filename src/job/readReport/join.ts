import { joinChoices } from '../choices.ts';
import { joinQuantities } from '../quantities.ts';
import { readReportChoices } from './choices.ts';
import { readReportQuantities } from './quantities.ts';

/** Brings in the rows of the page that checks a report. Every module that reads them calls it first. */
export function joinReadReport(): void {
  joinQuantities(readReportQuantities);
  joinChoices(readReportChoices);
}
