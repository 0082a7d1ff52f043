/** A table of one row, read at that row, and one step of what is expected of it. */
import {
  type DerateCause,
  expectedCapacity,
  type Multipliers,
  noMultipliers,
  type RatingRow,
  ratingTable,
} from '../../src/calc/index.ts';

export const flow = 0.68;
export const row: RatingRow = {
  outdoorDryBulb: 35,
  enteringWetBulb: 19.4,
  enteringDryBulb: 26.7,
  dryAirFlow: flow,
  total: 10000,
  sensible: 7200,
};
export const at = { outdoorDryBulb: 35, enteringWetBulb: 19.4, enteringDryBulb: 26.7, dryAirFlow: flow };
export const tableWith = (multipliers: Partial<Multipliers> = {}, rows: readonly RatingRow[] = [row]) =>
  ratingTable(rows, { basis: 'net', blowerPower: 300, multipliers: { ...noMultipliers, ...multipliers } });
export const step = (cause: DerateCause, table = tableWith(), conditions: object = {}, installation: object = {}) => {
  const found = expectedCapacity(table, { ...at, ...conditions }, { blowerPower: 450, ...installation }).derates.find(
    (derate) => derate.cause === cause,
  );
  if (!found) throw new Error(`no step ${cause}`);
  return found;
};
