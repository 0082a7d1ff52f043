import { airflowFromHood } from '../../calc/airflow/hood.ts';
import { attempt } from '../../calc/outcome.ts';
import type { Trace } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import type { Job } from '../types.ts';
import { airHere } from './air.ts';
import { type Found, fieldsOf } from './found.ts';
import { gridRows, gridValue } from './grid.ts';

/** Airflow by a hood at the return grilles. */
export function fromHood(job: Job, t?: Trace): Found {
  const returns = Array.from({ length: gridRows(job, 'hood.returns') }, (_, row) =>
    gridValue(job, 'hood.returns', row, 'flow'),
  );
  if (returns.every((flow) => flow === null)) return { ok: false, waiting: ['hood.returns'], problem: null };
  return attempt(
    () =>
      airflowFromHood(
        {
          returns,
          hood: chosen(job, 'hood.kind') ?? 'plain',
          shownAs: chosen(job, 'hood.shownAs') ?? 'actual',
          covers: chosen(job, 'hood.covers') !== 'no',
          ductsTight: chosen(job, 'hood.tight') === 'yes',
          air: airHere(job, 'entering').air,
          speed: chosen(job, 'hood.speed'),
        },
        t,
      ),
    fieldsOf({ returns: 'hood.returns' }),
  );
}
