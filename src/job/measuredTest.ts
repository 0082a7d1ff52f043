/**
 * The measured half of what was typed, as a test in SI: nothing is rounded, and no measurement becomes another. `toTest` adds the
 * rating and the line set; a page that has fetched no more than this can measure.
 */
import { standardVolumeFlow } from '../calc/dryAirFlow.ts';
import { emptyTest } from '../calc/emptyTest.ts';
import type { ErrorSource, Outcome, Test } from '../calc/types.ts';
import { blowerKindHere } from './blowerKinds.ts';
import { airflowMethods, blowerPlaces, chosen, said } from './choices.ts';
import { entered } from './entered.ts';
import { probeLimit } from './probeLimits.ts';
import { type FieldProblem, fieldProblems } from './problems.ts';
import { meanReading, measuredHere } from './readings.ts';
import type { Job } from './types.ts';

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

/** Works out the airflow that the airflow sheet finds. It is fetched by those who need it: see `airflow/find.ts`. */
export type FindAirflow = (
  job: Job,
) => Outcome<{ readonly dryAirFlow: number; readonly sources: readonly ErrorSource<'airflow'>[] }>;

/**
 * The test that a job describes, its rating left out; an empty or a bad field is `null` in it. Without `find` an airflow that is found on its own
 * sheet is not there yet.
 */
export function measuredTest(job: Job, find: FindAirflow | null = null): ToTest {
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
  const test: Test = {
    ...emptyTest,
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
    blower: {
      place: orAssumed(said(job, 'blower.place'), blowerPlaces[equipment ?? 'airHandler'], 'blower.place'),
      power: entered(job, 'blower.power'),
      kind: blowerKindHere(job),
    },
    nominalCapacity: entered(job, 'nominalCapacity'),
    line: orAssumed(entered(job, 'line'), emptyTest.line, 'line'),
    probeLimits: {
      dryBulb: probeLimit(job, 'dryBulb').si,
      relativeHumidity: probeLimit(job, 'relativeHumidity').si,
      wetBulb: probeLimit(job, 'wetBulb').si,
    },
  };
  for (const what of measuredHere(job)) if (probeLimit(job, what).assumed) assumed.push(`probeLimits.${what}`);
  return { test, problems: fieldProblems(job), assumed };
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
