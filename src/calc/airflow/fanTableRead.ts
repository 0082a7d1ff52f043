import { CalcError, within } from '../errors.ts';
import { limits } from '../limits.ts';
import { airflowLimits, practice } from './limits.ts';

/** A maker's blower table as it is printed: a row for each external static pressure, a column for each speed. */
export interface FanTable {
  /** Pa, ascending. */
  readonly statics: readonly number[];
  /** m³/s for each static; `null` where nothing is printed. */
  readonly speeds: readonly { readonly name: string; readonly flows: readonly (number | null)[] }[];
}

/** A column read at a pressure: the flow, its slope (m³/s per Pa), and the printed rows on either side. */
export interface FanPoint {
  readonly flow: number;
  readonly slope: number;
  readonly low: FanRow;
  readonly high: FanRow;
}

export interface FanRow {
  readonly static: number;
  readonly flow: number;
}

/** A column that falls by less than this over the plateau holds its airflow: half-range over the middle. Our choice. */
const holdsWithin = 0.04;
/** Pa of the plateau that must be printed before anything is said. Our choice. */
const plateauSeen = 0.4;
/** A point this close to a printed row stands on it, Pa. */
const onTheRow = 1e-6;

/**
 * Throws a `CalcError` for a table that cannot be read: `noRows`, `notAscending`, `wrongLength`, or a pressure out of range
 * under its name ('fanTable.statics.2'). The flows of a column are looked at when it is read.
 */
export function checkFanTable({ statics, speeds }: FanTable): void {
  if (statics.length < 2 || speeds.length === 0) throw new CalcError('noRows', 'fanTable', statics.length, 2, 100);
  statics.forEach((value, i) => {
    within(`fanTable.statics.${i}`, value, airflowLimits.staticPressure);
    const before = statics[i - 1];
    if (before !== undefined && value <= before) {
      throw new CalcError('notAscending', `fanTable.statics.${i}`, value, before, airflowLimits.staticPressure[1]);
    }
  });
  speeds.forEach(({ flows }, column) => {
    if (flows.length !== statics.length) {
      throw new CalcError('wrongLength', `fanTable.speeds.${column}`, flows.length, statics.length, statics.length);
    }
  });
}

/**
 * The printed rows of one column, from the lowest pressure up. Throws a `CalcError` `missing` for a speed that the table does
 * not have, or that of a flow out of range ('fanTable.speeds.0.3': column and row from zero).
 */
export function fanColumn({ statics, speeds }: FanTable, speed: number): readonly FanRow[] {
  const flows = speeds[speed]?.flows;
  if (!flows) throw new CalcError('missing', 'speed', speed, 0, speeds.length - 1);
  return statics.flatMap((at, i) => {
    const flow = flows[i] ?? null;
    if (flow === null) return [];
    within(`fanTable.speeds.${speed}.${i}`, flow, limits.volumeFlow);
    return [{ static: at, flow }];
  });
}

/**
 * One speed read at a static pressure, Pa: linear between two printed rows that are neighbours, never beyond the column and
 * never across a gap. Throws a `CalcError` `outsideTable` (with the column's own range), `hole` (with the rows around it).
 */
export function fanFlowAt(table: FanTable, speed: number, pressure: number): FanPoint {
  const column = fanColumn(table, speed);
  if (column.length < 2) throw new CalcError('noRows', 'fanTable', column.length, 2, 100);
  const [first, last] = [column[0] as FanRow, column.at(-1) as FanRow];
  if (!(pressure >= first.static - onTheRow && pressure <= last.static + onTheRow)) {
    throw new CalcError('outsideTable', 'externalStatic', pressure, first.static, last.static);
  }
  const next = column.findIndex((row) => pressure <= row.static + onTheRow);
  const high = column[Math.max(1, next)] as FanRow;
  const low = column[Math.max(1, next) - 1] as FanRow;
  const onRow = [low, high].some((row) => Math.abs(row.static - pressure) <= onTheRow);
  const gap = table.statics.some((at) => at > low.static && at < high.static);
  if (gap && !onRow) throw new CalcError('hole', 'externalStatic', pressure, low.static, high.static);
  const slope = (high.flow - low.flow) / (high.static - low.static);
  return { flow: low.flow + slope * (pressure - low.static), slope, low, high };
}

/**
 * Whether a column stands for a motor that holds its airflow: over what it prints between about 25 and 250 Pa (0.1 and 1 in. w.c.,
 * common practice, no source) the flow stays within 4 % of its middle. Too little printed there says nothing: `null`.
 */
export function holdsAirflow(table: FanTable, speed: number): boolean | null {
  const [from, to] = practice.plateau;
  const inside = fanColumn(table, speed).filter((row) => row.static >= 0.9 * from && row.static <= 1.02 * to);
  const seen = (inside.at(-1)?.static ?? 0) - (inside[0]?.static ?? 0);
  if (seen < plateauSeen * (to - from)) return null;
  const flows = inside.map(({ flow }) => flow);
  const [least, most] = [Math.min(...flows), Math.max(...flows)];
  return (most - least) / (most + least) <= holdsWithin;
}
