/**
 * The readings of the two probes. The fields hold the latest one; earlier ones stand in a list. What counts is the mean of
 * the list and the fields, each quantity on its own.
 */
import type { AirReading } from '../calc/types.ts';
import { chosen } from './choices.ts';
import { withOwnUnit } from './edit.ts';
import { readEntered } from './entered.ts';
import { type Read, read } from './read.ts';
import { cellText, tables } from './tables.ts';
import type { Edit, Entered, Job, TypedTable, UnitKey } from './types.ts';

export type Place = 'entering' | 'leaving';
export type Measured = 'dryBulb' | 'relativeHumidity' | 'wetBulb';

export interface ListedReading {
  readonly time: string;
  readonly probe: string;
  readonly reads: Readonly<Record<Measured, Read>>;
}

const measured = ['dryBulb', 'relativeHumidity', 'wetBulb'] as const;

/** The quantities that the probes show in this job: a humidity of the other kind is kept, and not used. */
export function measuredHere(job: Job): readonly Measured[] {
  return ['dryBulb', chosen(job, 'humidityAs') ?? 'relativeHumidity'];
}

/** The earlier readings, oldest first. */
export function listedReadings(job: Job, place: Place): readonly ListedReading[] {
  const table = job.tables[`${place}.readings`];
  if (table === undefined) return [];
  const unitIn = (column: string) => table.columns.find(({ key }) => key === column)?.unit;
  return table.rows.map((row) => {
    const readCell = (column: Measured): Read => {
      const unit = unitIn(column);
      return unit === undefined ? { state: 'empty' } : read(cellText(table, row, column), `${place}.${column}`, unit);
    };
    return {
      time: cellText(table, row, 'time'),
      probe: cellText(table, row, 'probe'),
      reads: {
        dryBulb: readCell('dryBulb'),
        relativeHumidity: readCell('relativeHumidity'),
        wetBulb: readCell('wetBulb'),
      },
    };
  });
}

/** The mean of everything read at a place, SI; `null` where nothing usable is. */
export function meanReading(job: Job, place: Place): AirReading {
  const here = measuredHere(job);
  const list = listedReadings(job, place);
  const mean = (what: Measured): number | null => {
    if (!here.includes(what)) return null;
    const reads = [...list.map(({ reads }) => reads[what]), readEntered(job, `${place}.${what}`)];
    const values = reads.flatMap((one) => (one.state === 'read' ? [one.si] : []));
    return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
  };
  return { dryBulb: mean('dryBulb'), relativeHumidity: mean('relativeHumidity'), wetBulb: mean('wetBulb') };
}

/** Moves the fields of a probe into its list, so that another reading can be typed; nothing to do when they are empty. */
export function addReading(job: Job, place: Place): readonly Edit[] {
  const fields = measured.map((what) => job.entered[`${place}.${what}`]);
  if (fields.every((field) => field === undefined || field.text.trim() === '')) return [];
  const slot = `${place}.readings` as const;
  const table = job.tables[slot] ?? newList(fields);
  const texts: Readonly<Record<string, string>> = {
    time: fields.find((field) => field?.at !== undefined)?.at ?? '',
    probe: job.notes[`${place}.probe`] ?? '',
    ...Object.fromEntries(measured.map((what, index) => [what, asIn(table, what, fields[index])])),
  };
  const row = table.columns.map(({ key }) => texts[key] ?? '');
  return [
    { slot: 'tables', key: slot, to: { columns: table.columns, rows: [...table.rows, row] } },
    ...measured.map((what, index): Edit => ({ slot: 'entered', key: `${place}.${what}`, to: emptied(fields[index]) })),
  ];
}

/** Takes one reading out of the list. */
export function removeReading(job: Job, place: Place, index: number): readonly Edit[] {
  const slot = `${place}.readings` as const;
  const table = job.tables[slot];
  if (table === undefined) return [];
  const rows = table.rows.filter((_, at) => at !== index);
  return [{ slot: 'tables', key: slot, to: rows.length === 0 ? undefined : { columns: table.columns, rows } }];
}

/** An empty list whose columns are in the units of the fields. */
function newList([dryBulb, relativeHumidity, wetBulb]: readonly (Entered | undefined)[]): TypedTable {
  const temperature = dryBulb?.unit ?? wetBulb?.unit ?? 'degF';
  const unit: Readonly<Record<string, UnitKey>> = {
    dryBulb: temperature,
    relativeHumidity: relativeHumidity?.unit ?? 'percent',
    wetBulb: wetBulb?.unit ?? temperature,
  };
  return { columns: tables['entering.readings'].map((key) => ({ key, unit: unit[key] ?? 'count' })), rows: [] };
}

/** The text of a field for a column; where the column has another unit, the field's is written behind the number. */
function asIn(table: TypedTable, column: Measured, field: Entered | undefined): string {
  if (field === undefined) return '';
  const unit = table.columns.find(({ key }) => key === column)?.unit;
  return unit === field.unit ? field.text : withOwnUnit(field.text, field.unit);
}

/** The field without its text; its ± stays, because it belongs to the probe. */
function emptied(field: Entered | undefined): Entered | undefined {
  if (field?.limit === undefined) return undefined;
  const { at: _, ...kept } = field;
  return { ...kept, text: '' };
}
