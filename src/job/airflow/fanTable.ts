import { airflowFromFanTable, type FanTableFound } from '../../calc/airflow/fanTable.ts';
import type { FanTable } from '../../calc/airflow/fanTableRead.ts';
import { attempt } from '../../calc/outcome.ts';
import type { Trace } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import { sitePressure } from '../entered.ts';
import type { Job } from '../types.ts';
import { airHere } from './air.ts';
import { type Found, fieldsOf } from './found.ts';
import { gridCell, gridRows, gridValue } from './grid.ts';
import { allOf } from './needs.ts';

export const fanColumns = ['flow1', 'flow2', 'flow3', 'flow4', 'flow5'] as const;

/** How many speeds have something typed, up to the last of them. */
export function fanSpeeds(job: Job): number {
  const rows = Array.from({ length: gridRows(job, 'fanTable') }, (_, row) => row);
  return (
    1 + fanColumns.findLastIndex((column) => rows.some((row) => gridCell(job, 'fanTable', row, column).text !== ''))
  );
}

/** The table as typed, rows in the order of their pressure; a row without a pressure is not there yet. */
function fanTableOf(job: Job): FanTable {
  const rows = Array.from({ length: gridRows(job, 'fanTable') }, (_, row) => ({
    static: gridValue(job, 'fanTable', row, 'static'),
    flows: fanColumns.map((column) => gridValue(job, 'fanTable', row, column)),
  }));
  const usable = rows.flatMap((row) => (row.static === null ? [] : [{ ...row, static: row.static }]));
  const sorted = usable.toSorted((one, other) => one.static - other.static);
  return {
    statics: sorted.map((row) => row.static),
    speeds: fanColumns.map((name, column) => ({ name, flows: sorted.map(({ flows }) => flows[column] ?? null) })),
  };
}

/** Airflow from the maker's fan table. The blower of an air handler stands in the supply air, that of a furnace in the return. */
export function fromFanTable(job: Job, t?: Trace): Found<FanTableFound> {
  const fields = allOf(job, 'fanTable.supplyStatic', 'fanTable.returnStatic');
  const table = fanTableOf(job);
  const column = Number(chosen(job, 'fanTable.column')) - 1;
  const printed = table.speeds[column]?.flows.filter((flow) => flow !== null).length ?? 0;
  if (!fields.ok) return printed < 2 ? { ...fields, waiting: [...fields.waiting, 'fanTable'] } : fields;
  if (printed < 2) return { ok: false, waiting: ['fanTable'], problem: null };
  const place = chosen(job, 'equipment.kind') === 'furnaceCoil' ? 'entering' : 'leaving';
  return attempt(
    () =>
      airflowFromFanTable(
        {
          table,
          column,
          motor: chosen(job, 'fanTable.motor') ?? 'unsure',
          supplyStatic: fields.value['fanTable.supplyStatic'],
          returnStatic: fields.value['fanTable.returnStatic'],
          pressure: sitePressure(job),
          air: airHere(job, place).air,
          speed: chosen(job, 'fanTable.speed'),
        },
        t,
      ),
    fieldsOf({ supplyStatic: 'fanTable.supplyStatic', returnStatic: 'fanTable.returnStatic' }),
  );
}
