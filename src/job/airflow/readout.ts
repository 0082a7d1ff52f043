import { airflowFromReadout } from '../../calc/airflow/readout.ts';
import { attempt } from '../../calc/outcome.ts';
import type { Trace } from '../../calc/types.ts';
import { chosen, said } from '../choices.ts';
import type { Job } from '../types.ts';
import { airHere } from './air.ts';
import { type Found, fieldsOf } from './found.ts';
import { allOf } from './needs.ts';

/** The flow that the control of the blower shows. How it counts the air is asked with place and kind, as for a typed figure. */
export function fromReadout(job: Job, t?: Trace): Found {
  const fields = allOf(job, 'readout.volumeFlow');
  if (!fields.ok) return fields;
  return attempt(
    () =>
      airflowFromReadout(
        {
          volumeFlow: fields.value['readout.volumeFlow'],
          shows: chosen(job, 'readout.shows') ?? 'unsure',
          ways: waysOf(job),
          speed: chosen(job, 'readout.speed'),
        },
        t,
      ),
    fieldsOf({ volumeFlow: 'readout.volumeFlow' }),
  );
}

/** Every way in which the figure may be counted, as far as nobody has said. */
function waysOf(job: Job) {
  const kind = said(job, 'airflow.kind') ?? 'unsure';
  const place = said(job, 'airflow.place') ?? 'unsure';
  const places = place === 'unsure' ? (['entering', 'leaving'] as const) : [place];
  const actual = places.map((one) => ({ specificVolume: airHere(job, one).air.specificVolume }));
  if (kind === 'standard') return ['standard'] as const;
  return kind === 'actual' ? actual : (['standard', ...actual] as const);
}
