/** The one place where what was typed becomes a test in SI. Nothing is rounded, and no measurement becomes another. */
import { standardVolumeFlow } from '../calc/dryAirFlow.ts';
import type { ErrorSource, Outcome, Test } from '../calc/types.ts';
import { blowerKindHere } from './blowerKinds.ts';
import { airflowMethods, blowerPlaces, chosen, said } from './choices.ts';
import { entered } from './entered.ts';
import { linesOf } from './lineSet.ts';
import { probeLimit } from './probeLimits.ts';
import { type FieldProblem, fieldProblems } from './problems.ts';
import { ratingGrid } from './ratingGrid.ts';
import { meanReading, measuredHere } from './readings.ts';
import { type ReadSheet, ratingIn } from './toRating.ts';
import type { Job } from './types.ts';
import { usesSheet } from './usesSheet.ts';

export type Assumed =
  | 'altitude'
  | 'airflow.place'
  | 'airflow.kind'
  | 'blower.place'
  | 'rating.basis'
  | 'probeLimits.dryBulb'
  | 'probeLimits.relativeHumidity'
  | 'probeLimits.wetBulb'
  | 'line';

export interface ToTest {
  readonly test: Test;
  readonly problems: readonly FieldProblem[];
  /** What nobody said and the test takes for granted. */
  readonly assumed: readonly Assumed[];
}

/** The line until one is agreed on. Our choice. */
export const usualLine = 0.9;
/** The chance on either side of a range until another is asked for: nine in ten. */
const usualConfidence = 0.9;

/** Works out the airflow that the airflow sheet finds. It is fetched by those who need it: see `airflow/find.ts`. */
export type FindAirflow = (
  job: Job,
) => Outcome<{ readonly dryAirFlow: number; readonly sources: readonly ErrorSource<'airflow'>[] }>;

/**
 * The test that a job describes; an empty or a bad field is `null` in it. Without `find` an airflow that is found on its own
 * sheet is not there yet, nor without `readSheet` a rating that is a whole table.
 */
export function toTest(job: Job, find: FindAirflow | null = null, readSheet: ReadSheet | null = null): ToTest {
  const assumed: Assumed[] = [];
  const orAssumed = <T>(given: T | null, fallback: T, what: Assumed): T => {
    if (given === null) assumed.push(what);
    return given ?? fallback;
  };
  const altitude = entered(job, 'altitude');
  const barometer = entered(job, 'barometer');
  if (altitude === null && barometer === null) assumed.push('altitude');
  const method = airflowMethods[chosen(job, 'airflow.method') ?? 'unsure'];
  const equipment = chosen(job, 'equipment.kind');
  const grid = ratingGrid(job);
  const test: Test = {
    entering: meanReading(job, 'entering'),
    leaving: meanReading(job, 'leaving'),
    airflow: isFound(job)
      ? foundIn(job, find)
      : {
          volumeFlow: entered(job, 'airflow.volumeFlow'),
          place: orAssumed(said(job, 'airflow.place'), method.place, 'airflow.place'),
          kind: orAssumed(said(job, 'airflow.kind'), method.kind, 'airflow.kind'),
          limit: method.limit,
          sources: null,
        },
    altitude,
    barometer,
    outdoorDryBulb: entered(job, 'outdoorDryBulb'),
    fullSpeed: said(job, 'fullSpeed'),
    rating: ratingIn(job, grid, readSheet),
    lineSet: linesOf(job).input,
    blower: {
      place: orAssumed(said(job, 'blower.place'), blowerPlaces[equipment ?? 'airHandler'], 'blower.place'),
      power: entered(job, 'blower.power'),
      kind: blowerKindHere(job),
    },
    nominalCapacity: entered(job, 'nominalCapacity'),
    line: orAssumed(entered(job, 'line'), usualLine, 'line'),
    probeLimits: {
      dryBulb: probeLimit(job, 'dryBulb').si,
      relativeHumidity: probeLimit(job, 'relativeHumidity').si,
      wetBulb: probeLimit(job, 'wetBulb').si,
    },
    sideBySide: null,
    supplyPoints: [],
    scatter: [],
    confidence: usualConfidence,
  };
  if (test.rating !== null && said(job, 'rating.basis') === null) assumed.push('rating.basis');
  for (const what of measuredHere(job)) if (probeLimit(job, what).assumed) assumed.push(`probeLimits.${what}`);
  return { test, problems: fieldProblems(job, usesSheet(job) ? null : grid), assumed };
}

/** Whether the airflow is the one found on its own sheet. The typed one is kept beside it. */
export function isFound(job: Job): boolean {
  return chosen(job, 'airflow.from') === 'found';
}

/** The airflow found, as the standard air that its dry air comes to: that needs no place. */
function foundIn(job: Job, find: FindAirflow | null): Test['airflow'] {
  const found = find?.(job);
  const volumeFlow = found?.ok ? standardVolumeFlow(found.value.dryAirFlow) : null;
  return {
    volumeFlow,
    place: 'entering',
    kind: 'standard',
    limit: null,
    sources: found?.ok ? found.value.sources : null,
  };
}
