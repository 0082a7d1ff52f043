/** The means of a steady record in the job: taken over into its fields, and what they are known to into its test. */
import type { LogColumn } from '../../calc/confidence/logColumns.ts';
import type { Steadiness } from '../../calc/confidence/steady.ts';
import type { HumidityMeasure } from '../../calc/sideBySide.ts';
import type { ErrorSource, TestInput } from '../../calc/types.ts';
import { format } from '../format.ts';
import { quantityOf, unitOf } from '../quantities.ts';
import { type Measured, measuredHere } from '../readings.ts';
import { cellText } from '../tables.ts';
import type { Edit, Entered, Job, QuantityKey, System, UnitKey } from '../types.ts';
import { sureTables } from './tables.ts';

type Batched = Exclude<LogColumn, 'supplyStatic'>;

/** The field that the mean of a column goes into, by the humidity that the probes show. */
function fieldOf(column: Batched, humidity: Measured): QuantityKey {
  if (column === 'outdoorDryBulb') return column;
  return column.endsWith('humidity')
    ? (`${column.replace('humidity', '')}${humidity}` as QuantityKey)
    : (column as QuantityKey);
}

/** Where the airflow sheet asks for it; its quantities are not on every page, so its units stand here. */
const staticField = 'fanTable.supplyStatic';
const staticUnits = { ip: ['inwcDuct', 3], si: ['paDuct', 1] } as const;

/** What a field holds that took a mean over. */
const meanIn = (mean: number, unit: UnitKey, decimals: number, at: string | null): Entered => ({
  text: format(mean, unit, decimals),
  unit,
  origin: 'from sheet',
  ...(at === null ? {} : { at }),
});

function staticEdit(mean: number, at: string | null, system: System): Edit {
  const [unit, decimals] = staticUnits[system];
  return { slot: 'entered', key: staticField, to: meanIn(mean, unit, decimals, at) };
}

const batched = sureTables['steady.batches'].filter((column): column is Batched => column !== 'to');

/** How means are taken over. */
export interface Taken {
  readonly stamp: string;
  readonly at: string | null;
  /** What the humidities of the record are. */
  readonly measure: HumidityMeasure;
  readonly system: System;
}

/**
 * The edits that take the means of a window over: each into its field, a digit finer than it is typed, and how far each of the
 * five parts of the window lies from them. `stamp` names the window; `at` is its end, ISO 8601, where the record has dates. Where
 * its humidities are of the other kind than the job reads, the job reads those from now on. The static pressure of the supply goes to
 * the airflow sheet, which asks for it.
 */
export function meansEdits(
  job: Job,
  { means, scatter }: Pick<Steadiness, 'means' | 'scatter'>,
  { stamp, at, measure: humidity, system }: Taken,
): readonly Edit[] {
  const columns = batched.filter((column) => means[column] !== undefined);
  const fields = columns.map((column): Edit => {
    const key = fieldOf(column, humidity);
    const unit = unitOf(key, system);
    const decimals = quantityOf(key).decimals[system] + 1;
    const was = job.entered[key];
    const to: Entered = {
      ...meanIn(means[column] as number, unit, decimals, at),
      ...(was?.limit !== undefined && was.unit === unit ? { limit: was.limit } : {}),
    };
    return { slot: 'entered', key, to };
  });
  const rows = scatter.map(({ moves }) => [
    stamp,
    // Three digits of a scatter are more than five batches know of it, and a link stays short.
    ...columns.map((column) => String(Number((moves[column] ?? 0).toPrecision(3)))),
  ]);
  const table = {
    columns: [{ key: 'to', unit: 'count' as const }, ...columns.map((key) => ({ key, unit: 'one' as const }))],
    rows,
  };
  const lists = (['entering', 'leaving'] as const).map(
    (place): Edit => ({ slot: 'tables', key: `${place}.readings`, to: undefined }),
  );
  const hasHumidity = columns.some((column) => column.endsWith('humidity'));
  const kind: readonly Edit[] =
    hasHumidity && measuredHere(job)[1] !== humidity ? [{ slot: 'chosen', key: 'humidityAs', to: humidity }] : [];
  return [
    ...fields,
    ...(means.supplyStatic === undefined ? [] : [staticEdit(means.supplyStatic, at, system)]),
    ...lists,
    ...kind,
    { slot: 'tables', key: 'steady.batches', to: rows.length === 0 ? undefined : table },
  ];
}

/** Whether a reading of the job is still the mean of a record. */
export function isMeanTaken(job: Job): boolean {
  const humidity = measuredHere(job)[1] ?? 'relativeHumidity';
  return batched.some((column) => job.entered[fieldOf(column, humidity)]?.origin === 'from sheet');
}

/** The scatter of the means, as causes of error; none for a reading that was typed anew since. */
export function scatterOf(job: Job): readonly ErrorSource<TestInput>[] {
  const table = job.tables['steady.batches'];
  if (table?.rows.length !== 5) return [];
  const humidity = measuredHere(job)[1] ?? 'relativeHumidity';
  const kept = batched.filter((column) => {
    const field = job.entered[fieldOf(column, humidity)];
    return field?.origin === 'from sheet' && table.columns.some(({ key }) => key === column);
  });
  if (kept.length === 0) return [];
  return table.rows.map((row): ErrorSource<TestInput> => {
    const moves = kept.map((column) => {
      const number = Number(cellText(table, row, column));
      // A record from outside may say anything; nothing that was read moves by more.
      return [column, Number.isFinite(number) ? Math.max(-20, Math.min(20, number)) : 0] as const;
    });
    return {
      name: 'readings',
      u: 1 / Math.sqrt(20),
      shape: 'normal',
      degreesOfFreedom: 4,
      moves: Object.fromEntries(moves),
    };
  });
}
