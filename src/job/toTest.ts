/** The one place where what was typed becomes a whole test in SI. */
import { said } from './choices.ts';
import { linesOf } from './lineSet.ts';
import { type FindAirflow, measuredTest, type ToTest } from './measuredTest.ts';
import { ratingGrid } from './ratingGrid.ts';
import { ratingProblems } from './ratingProblems.ts';
import { otherLimitProblems } from './sure/otherLimits.ts';
import { sureIn } from './sure/sureIn.ts';
import { type ReadSheet, ratingIn } from './toRating.ts';
import type { Job } from './types.ts';
import { usesSheet } from './usesSheet.ts';

/**
 * The test that a job describes; an empty or a bad field is `null` in it. Without `find` an airflow that is found on its own
 * sheet is not there yet, nor without `readSheet` a rating that is a whole table.
 */
export function toTest(job: Job, find: FindAirflow | null = null, readSheet: ReadSheet | null = null): ToTest {
  const { test, problems: fields, assumed } = measuredTest(job, find);
  const problems = [...fields, ...otherLimitProblems(job)];
  const grid = ratingGrid(job);
  const rating = ratingIn(job, grid, readSheet);
  const basisAssumed = rating !== null && said(job, 'rating.basis') === null;
  return {
    test: { ...test, ...sureIn(job, test), rating, lineSet: linesOf(job).input },
    // A whole table takes the place of the cells, which are then not judged.
    problems: usesSheet(job) ? problems : [...problems, ...ratingProblems(grid)],
    assumed: basisAssumed ? [...assumed, 'rating.basis'] : assumed,
  };
}
