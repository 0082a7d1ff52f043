import { airflowFromFlowGrid, type FlowGridFound } from '../../calc/airflow/flowGrid.ts';
import { attempt } from '../../calc/outcome.ts';
import type { Trace } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import type { Job } from '../types.ts';
import { airHere } from './air.ts';
import { type Found, fieldsOf } from './found.ts';
import { gridRows, gridValue } from './grid.ts';
import { allOf } from './needs.ts';

/** Airflow by metering plates in the filter slots. */
export function fromFlowGrid(job: Job, t?: Trace): Found<FlowGridFound> {
  const fields = allOf(job, 'flowGrid.normal', 'flowGrid.withGrid');
  const plates = Array.from({ length: gridRows(job, 'flowGrid.plates') }, (_, row) =>
    gridValue(job, 'flowGrid.plates', row, 'flow'),
  );
  const read = plates.some((plate) => plate !== null);
  if (!fields.ok) return read ? fields : { ...fields, waiting: ['flowGrid.plates', ...fields.waiting] };
  if (!read) return { ok: false, waiting: ['flowGrid.plates'], problem: null };
  return attempt(
    () =>
      airflowFromFlowGrid(
        {
          plates,
          shownAs: chosen(job, 'flowGrid.shownAs') ?? 'uncorrected',
          pressureNormal: fields.value['flowGrid.normal'],
          pressureWithGrid: fields.value['flowGrid.withGrid'],
          air: airHere(job, 'entering').air,
          speed: chosen(job, 'flowGrid.speed'),
        },
        t,
      ),
    fieldsOf({ pressureNormal: 'flowGrid.normal', pressureWithGrid: 'flowGrid.withGrid', plates: 'flowGrid.plates' }),
  );
}
