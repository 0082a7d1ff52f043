/** The processes of the air chart as they are typed: what happens, between which points, with how much air. */
import { read } from './read.ts';
import { type Cell, cellOf, type StateKey, stateKeys } from './states.ts';
import { cellText } from './tables.ts';
import type { TypedTable } from './types.ts';

export const processKinds = ['drying', 'cooling', 'heating', 'mixing'] as const;
export type ProcessKind = (typeof processKinds)[number];

export const processKeys = ['p1', 'p2', 'p3', 'p4', 'p5', 'p6', 'p7', 'p8'] as const;
export type ProcessKey = (typeof processKeys)[number];
export type PointKey = 'entering' | 'leaving' | StateKey | ProcessKey;

/** A process as it is typed. */
export interface ProcessRow {
  readonly key: ProcessKey;
  readonly kind: ProcessKind;
  readonly from: PointKey | null;
  readonly with: PointKey | null;
  readonly to: PointKey | null;
  readonly endDryBulb: Cell;
  /** Air as it moves where the process begins, or dry air by mass. */
  readonly airflow: Cell;
  readonly secondAirflow: Cell;
}

export const isProcessKey = (text: string): text is ProcessKey => isOneOf(processKeys, text);
export const isProcessKind = (text: string): text is ProcessKind => isOneOf(processKinds, text);

const isOneOf = <Key extends string>(keys: readonly Key[], text: string): text is Key =>
  (keys as readonly string[]).includes(text);
const pointKeys: readonly PointKey[] = ['entering', 'leaving', ...stateKeys, ...processKeys];

/** A row of the table; `null` where it has no key or no kind. */
export function processRow(table: TypedTable, row: readonly string[]): ProcessRow | null {
  const key = cellText(table, row, 'key');
  const kind = cellText(table, row, 'kind');
  if (!isProcessKey(key) || !isProcessKind(kind)) return null;
  const point = (column: string): PointKey | null => {
    const text = cellText(table, row, column);
    return isOneOf(pointKeys, text) ? text : null;
  };
  return {
    key,
    kind,
    from: point('from'),
    with: point('with'),
    to: point('to'),
    endDryBulb: cellOf(table, row, 'endDryBulb', 'state.dryBulb'),
    airflow: flowCell(table, row, 'airflow'),
    secondAirflow: flowCell(table, row, 'secondAirflow'),
  };
}

/** An airflow is a volume of air as it moves, unless its text has a unit of mass. */
function flowCell(table: TypedTable, row: readonly string[], column: string): Cell {
  const cell = cellOf(table, row, column, 'process.airflow');
  if (cell.read.state !== 'bad' || cell.read.code !== 'wrongUnit') return cell;
  const asMass = read(cell.text, 'process.dryAirFlow', 'kgPerS');
  return asMass.state === 'bad' && asMass.code === 'wrongUnit' ? cell : { ...cell, read: asMass };
}
