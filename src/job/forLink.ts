import { sheetNear } from './ratingSheet.ts';
import type { Job } from './types.ts';
import { usesSheet } from './usesSheet.ts';

/**
 * The job as a link carries it: a whole table of the maker reduced to the rows that this job reads and the next ones beside
 * them, or left out where other figures are read. Every figure that the job gives stays the same.
 */
export function forLink(job: Job): Job {
  const { ratingSheet, ratingAirflow, ...tables } = job.tables;
  if (!ratingSheet || !usesSheet(job)) return { ...job, tables };
  return {
    ...job,
    tables: { ...tables, ratingSheet: sheetNear(job, ratingSheet), ...(ratingAirflow && { ratingAirflow }) },
  };
}
