/** What a job says of how sure its readings are, for its test. */
import type { Test } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import type { Job } from '../types.ts';
import { joinSure } from './join.ts';
import { limitsOf } from './limits.ts';
import { otherLimitsOf } from './otherLimits.ts';
import { sideBySideOf } from './sideBySide.ts';
import { scatterOf } from './steadyMeans.ts';
import { supplyPointsOf } from './supplyPoints.ts';

joinSure();

/** Chances on either side of a range. */
const confidences = { nine: 0.9, nineteen: 0.95 } as const;

/** The parts of the test that say how sure it is, in the place of those that are assumed. */
export function sureIn(
  job: Job,
  test: Test,
): Pick<Test, 'airflow' | 'probeLimits' | 'otherLimits' | 'sideBySide' | 'supplyPoints' | 'scatter' | 'confidence'> {
  return {
    ...limitsOf(job, test),
    otherLimits: otherLimitsOf(job),
    sideBySide: sideBySideOf(job),
    supplyPoints: supplyPointsOf(job),
    scatter: scatterOf(job),
    confidence: confidences[chosen(job, 'sure.confidence') ?? 'nine'],
  };
}
