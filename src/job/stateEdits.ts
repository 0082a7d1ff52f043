/** The edits of the named states: to add one, to type in it, to give its humidity in another measure, to move it, to drop it. */
import { saturationHumidityRatio } from '../calc/humidityRatio.ts';
import { moistAir } from '../calc/moistAir.ts';
import type { MoistAir } from '../calc/types.ts';
import { typed } from './edit.ts';
import { sitePressure } from './entered.ts';
import { complete, rowOf, withoutRow, withRow, withTexts } from './keyedRows.ts';
import { withoutState } from './processEdits.ts';
import { type QuantityKey, quantityOf, unitOf } from './quantities.ts';
import { listedReadings, measuredHere, type Place } from './readings.ts';
import { emptyStates, type HumidityMeasure, humidityMeasures, type StateKey, stateKeys } from './states.ts';
import { rowLimits } from './tables.ts';
import type { Edit, Job, System, TypedTable, UnitKey } from './types.ts';
import { fromSi, toSi } from './units.ts';

export type StateColumn = 'name' | 'dryBulb' | HumidityMeasure;
type Texts = Readonly<Partial<Record<StateColumn, string>>>;
/** A place on the chart, SI. */
export type Spot = Pick<MoistAir, 'dryBulb' | 'humidityRatio'>;

/** The first key that no state has; `null` when there is no room. */
export function freeKey(job: Job): StateKey | null {
  const table = job.tables.states;
  if (table === undefined) return 'a';
  if (table.rows.length >= (rowLimits.states ?? 0)) return null;
  return stateKeys.find((key) => rowOf(table, key) < 0) ?? null;
}

/** One state more, empty or with these texts in the units of a system; nothing when there is no room. */
export function addState(job: Job, system: System, texts: Texts = {}): readonly Edit[] {
  const key = freeKey(job);
  if (key === null) return [];
  return [write(withRow(tableOf(job, system), key, texts, typedIn(system)))];
}

/** Texts typed for a state, a bare number in them being in the unit of a system. */
export function setState(job: Job, key: StateKey, texts: Texts, system: System): readonly Edit[] {
  const table = tableOf(job, system);
  return rowOf(table, key) < 0 ? [] : [write(withTexts(table, key, texts, typedIn(system)))];
}

/** Takes a state away, and its name out of the processes that begin or end in it. */
export function removeState(job: Job, key: StateKey): readonly Edit[] {
  const table = job.tables.states;
  if (table === undefined) return [];
  const { columns, rows } = withoutRow(table, key);
  const to = rows.length === 0 ? undefined : { columns, rows };
  return [{ slot: 'tables', key: 'states', to }, ...withoutState(job, key)];
}

/** The same air given by another measure, rounded as that measure is shown. It is no reading, so it may be converted. */
export function giveAs(job: Job, key: StateKey, measure: HumidityMeasure, air: MoistAir, system: System) {
  const blank = Object.fromEntries(humidityMeasures.map((one) => [one, '']));
  return setState(job, key, { ...blank, [measure]: textOf(measure, air[measure], system) }, system);
}

/**
 * Moves a state to a place on the chart, in the measure in which it is given. The texts are rounded as they are shown, so
 * that the fields hold what the chart draws; rounding never carries the state above saturation.
 */
export function moveState(
  job: Job,
  key: StateKey,
  measure: HumidityMeasure,
  spot: Spot,
  system: System,
): readonly Edit[] {
  const { dryBulb, humidity } = textsAt(spot, measure, sitePressure(job), system);
  return setState(job, key, { dryBulb, [measure]: humidity }, system);
}

/** Whether a point of the job can be moved: the mean of several readings cannot. */
export function isMovable(job: Job, place: Place): boolean {
  return listedReadings(job, place).length === 0;
}

/** Moves the return or supply air of the job. The new figures were read at no time, so they carry none. */
export function moveJobAir(job: Job, place: Place, spot: Spot, system: System): readonly Edit[] {
  if (!isMovable(job, place)) return [];
  const measure = measuredHere(job)[1] === 'wetBulb' ? 'wetBulb' : 'relativeHumidity';
  const keys = { dryBulb: `${place}.dryBulb`, humidity: `${place}.${measure}` } as const;
  const [cold, hot] = quantityOf(keys.dryBulb).possible;
  const reachable = { ...spot, dryBulb: Math.min(hot, Math.max(cold, spot.dryBulb)) };
  const { dryBulb, humidity } = textsAt(reachable, measure, sitePressure(job), system);
  return [
    typed(job, keys.dryBulb, dryBulb, unitOf(keys.dryBulb, system)),
    typed(job, keys.humidity, humidity, unitOf(keys.humidity, system)),
  ];
}

/** The texts of a place on the chart, rounded without leaving what can be: no more water than fits, and no less than none. */
export function textsAt(spot: Spot, measure: HumidityMeasure, pressure: number, system: System) {
  const text = textOf('dryBulb', spot.dryBulb, system);
  const dryBulb = toSi(Number(text), unitOf('state.dryBulb', system));
  const most = saturationHumidityRatio(dryBulb, pressure);
  const airWith = (humidityRatio: number) => moistAir({ dryBulb, pressure, humidityRatio })[measure];
  const ends = [airWith(0), airWith(most)] as const;
  return {
    dryBulb: text,
    humidity: textOf(measure, airWith(Math.min(most, Math.max(0, spot.humidityRatio))), system, ends),
  };
}

const anything = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const;

/** An SI value as a person would type it, to the digits shown, inside what is possible and inside `ends`. */
function textOf(
  measure: 'dryBulb' | HumidityMeasure,
  si: number,
  system: System,
  ends: readonly [number, number] = anything,
): string {
  const key: QuantityKey = `state.${measure}`;
  const unit = unitOf(key, system);
  const { decimals, possible } = quantityOf(key);
  const scale = 10 ** decimals[system];
  const inSteps = (value: number) => fromSi(value, unit) * scale;
  const least = Math.ceil(inSteps(Math.max(ends[0], possible[0])) - 1e-6);
  const most = Math.floor(inSteps(Math.min(ends[1], possible[1])) + 1e-6);
  const steps = Math.min(most, Math.max(least, Math.round(inSteps(si))));
  return (steps / scale + 0).toFixed(decimals[system]);
}

const isWords = (column: string): column is 'key' | 'name' => column === 'key' || column === 'name';

const typedIn = (system: System) => (column: string, kept: UnitKey) =>
  isWords(column) ? kept : unitOf(`state.${column as Exclude<StateColumn, 'name'>}`, system);

const tableOf = (job: Job, system: System) => complete(job.tables.states, emptyStates(system));

function write(to: TypedTable): Edit {
  return { slot: 'tables', key: 'states', to };
}
