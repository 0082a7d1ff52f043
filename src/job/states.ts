/** The points of the air chart: return and supply air of the job, and up to eight named states, as they are typed. */
import { moistAir } from '../calc/moistAir.ts';
import { attempt, lacking, waitingFor } from '../calc/outcome.ts';
import type { MoistAir, Outcome } from '../calc/types.ts';
import { sitePressure } from './entered.ts';
import type { QuantityKey } from './quantities.ts';
import { type Read, read } from './read.ts';
import { meanReading, type Place } from './readings.ts';
import { cellText, tables } from './tables.ts';
import type { Job, TypedTable, UnitKey } from './types.ts';

export const stateKeys = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'] as const;
export type StateKey = (typeof stateKeys)[number];

export const humidityMeasures = ['relativeHumidity', 'wetBulb', 'dewPoint', 'humidityRatio'] as const;
export type HumidityMeasure = (typeof humidityMeasures)[number];

/** A typed text, what a bare number in it means, and what it says. */
export interface Cell {
  readonly text: string;
  readonly unit: UnitKey;
  readonly read: Read;
}

export interface NamedState {
  readonly key: StateKey;
  readonly name: string;
  readonly dryBulb: Cell;
  /** The measure of humidity that is given; `null` while none is. */
  readonly measure: HumidityMeasure | null;
  readonly humidity: Cell;
  readonly air: Outcome<MoistAir>;
}

const noCell: Cell = { text: '', unit: 'count', read: { state: 'empty' } };

/** The named states, in their order. Rows without a key of their own are no states. Never throws. */
export function namedStates(job: Job): readonly NamedState[] {
  const table = job.tables.states;
  if (table === undefined) return [];
  const keys = table.rows.map((row) => cellText(table, row, 'key'));
  return table.rows.flatMap((row, index) => {
    const key = keys[index];
    return isStateKey(key) && keys.indexOf(key) === index ? [stateOf(table, row, key, sitePressure(job))] : [];
  });
}

export function isStateKey(key: string | undefined): key is StateKey {
  return (stateKeys as readonly (string | undefined)[]).includes(key);
}

function stateOf(table: TypedTable, row: readonly string[], key: StateKey, pressure: number): NamedState {
  const given = humidityMeasures.filter((measure) => cellText(table, row, measure).trim() !== '');
  const measure = given[0] ?? null;
  const dryBulb = cellOf(table, row, 'dryBulb', 'state.dryBulb');
  const humidity = measure === null ? noCell : cellOf(table, row, measure, `state.${measure}`);
  return {
    key,
    name: cellText(table, row, 'name'),
    dryBulb,
    measure,
    humidity,
    air: given.length > 1 ? twoHumidities : airOf(dryBulb, measure, humidity, pressure),
  };
}

const twoHumidities: Outcome<MoistAir> = {
  ok: false,
  waiting: [],
  problem: { code: 'twoHumidities', quantity: 'humidity', value: 2, min: 1, max: 1 },
};

/** A cell read as a quantity; the unit of its column is what a bare number in it means. */
export function cellOf(table: TypedTable, row: readonly string[], column: string, quantity: QuantityKey): Cell {
  const unit = table.columns.find(({ key }) => key === column)?.unit;
  if (unit === undefined) return noCell;
  const text = cellText(table, row, column);
  return { text, unit, read: read(text, quantity, unit) };
}

function airOf(dryBulb: Cell, measure: HumidityMeasure | null, humidity: Cell, pressure: number): Outcome<MoistAir> {
  const cells = [
    ['dryBulb', dryBulb],
    ['humidity', humidity],
  ] as const;
  const lack = lacking(...cells.map(([name, cell]) => outcomeOf(name, cell.read)));
  if (lack !== null || dryBulb.read.state !== 'read' || humidity.read.state !== 'read' || measure === null) {
    return lack ?? waitingFor('humidity');
  }
  const { si } = humidity.read;
  const t = dryBulb.read.si;
  return attempt(() => moistAir({ dryBulb: t, pressure, [measure]: si }));
}

function outcomeOf(quantity: string, found: Read): Outcome<number> {
  if (found.state === 'read') return { ok: true, value: found.si };
  if (found.state === 'empty') return waitingFor(quantity);
  const { code, min, max } = found;
  return { ok: false, waiting: [], problem: { code, quantity, value: 0, min, max } };
}

/** Return or supply air of the job: the mean of what was read there. */
export function jobAir(job: Job, place: Place): Outcome<MoistAir> {
  const { dryBulb, relativeHumidity, wetBulb } = meanReading(job, place);
  const humid = wetBulb ?? relativeHumidity;
  if (dryBulb === null || humid === null) {
    return waitingFor(...(dryBulb === null ? ['dryBulb'] : []), ...(humid === null ? ['humidity'] : []));
  }
  const pressure = sitePressure(job);
  return attempt(() =>
    moistAir({ dryBulb, pressure, ...(wetBulb === null ? { relativeHumidity: humid } : { wetBulb }) }),
  );
}

/** A table of states without rows, its columns in the units of a system. */
export function emptyStates(system: 'ip' | 'si'): TypedTable {
  const temperature: UnitKey = system === 'ip' ? 'degF' : 'degC';
  const unit: Readonly<Record<string, UnitKey>> = {
    dryBulb: temperature,
    relativeHumidity: 'percent',
    wetBulb: temperature,
    dewPoint: temperature,
    humidityRatio: system === 'ip' ? 'grainsPerLb' : 'gPerKg',
  };
  return { columns: tables.states.map((key) => ({ key, unit: unit[key] ?? 'count' })), rows: [] };
}
