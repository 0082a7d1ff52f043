import { chosen } from './choices.ts';
import type { Job } from './types.ts';

/** Whether the figures come from a whole table of the maker, and not from the cells around the conditions. */
export const usesSheet = (job: Job) => chosen(job, 'rating.from') === 'sheet' && job.tables.ratingSheet !== undefined;
