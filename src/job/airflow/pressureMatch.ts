import { airflowFromPressureMatch, type PressureMatchFound } from '../../calc/airflow/pressureMatch.ts';
import { attempt } from '../../calc/outcome.ts';
import type { Trace } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import type { Job } from '../types.ts';
import { airHere } from './air.ts';
import { type Found, fieldsOf } from './found.ts';
import { allOf } from './needs.ts';

/** Airflow by a calibrated fan that brings the supply static to what the system's own blower makes. */
export function fromPressureMatch(job: Job, t?: Trace): Found<PressureMatchFound> {
  const fields = allOf(job, 'match.fanFlow', 'match.normal', 'match.reached');
  if (!fields.ok) return fields;
  return attempt(
    () =>
      airflowFromPressureMatch(
        {
          fanFlow: fields.value['match.fanFlow'],
          shownAs: chosen(job, 'match.shownAs') ?? 'uncorrected',
          pressureNormal: fields.value['match.normal'],
          pressureReached: fields.value['match.reached'],
          air: airHere(job, 'entering').air,
          speed: chosen(job, 'match.speed'),
        },
        t,
      ),
    fieldsOf({ fanFlow: 'match.fanFlow', pressureNormal: 'match.normal', pressureReached: 'match.reached' }),
  );
}
