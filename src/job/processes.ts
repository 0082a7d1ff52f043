/**
 * The processes between the points of the air chart. Drying goes from one point to another; heating and cooling without
 * water and the mixing of two streams end in a point of their own, which later processes may begin in.
 */
import { coilLoad } from '../calc/coilLoad.ts';
import { dryAirFlow } from '../calc/dryAirFlow.ts';
import { mix } from '../calc/mix.ts';
import { moistAir } from '../calc/moistAir.ts';
import { attempt, type Failure, lacking, waitingFor } from '../calc/outcome.ts';
import { prefixed } from '../calc/trace.ts';
import type { CoilLoad, MoistAir, Outcome, Trace } from '../calc/types.ts';
import { read } from './read.ts';
import { type Cell, cellOf, jobAir, namedStates, type StateKey, stateKeys } from './states.ts';
import { cellText } from './tables.ts';
import type { Job, TypedTable } from './types.ts';

export const processKinds = ['drying', 'cooling', 'heating', 'mixing'] as const;
export type ProcessKind = (typeof processKinds)[number];

export const processKeys = ['p1', 'p2', 'p3', 'p4', 'p5', 'p6', 'p7', 'p8'] as const;
export type ProcessKey = (typeof processKeys)[number];
export type PointKey = 'entering' | 'leaving' | StateKey | ProcessKey;

/** What a process comes to. Loads are what is taken out of the air, W: heating has a total below zero. */
export interface ProcessResult {
  readonly start: MoistAir;
  /** The second stream of a mixing. */
  readonly other: MoistAir | null;
  readonly end: MoistAir;
  /** Dry air at the end, kg/s; `null` while no airflow is stated. */
  readonly dryAirFlow: number | null;
  /** Of a mixing, the share of the first stream in the dry air. */
  readonly share: number | null;
  /** `null` for a mixing, and while no airflow is stated. */
  readonly load: CoilLoad | null;
}

export interface Process {
  readonly key: ProcessKey;
  readonly kind: ProcessKind;
  readonly from: PointKey | null;
  readonly with: PointKey | null;
  readonly to: PointKey | null;
  readonly endDryBulb: Cell;
  /** Air as it moves where the process begins, or dry air by mass. */
  readonly airflow: Cell;
  readonly secondAirflow: Cell;
  readonly outcome: Outcome<ProcessResult>;
}

/** The points that processes may name, and the air there. */
type Points = ReadonlyMap<PointKey, Outcome<MoistAir>>;

/** The processes, in their order; each may begin where an earlier one ends. Rows without a key or a kind are none. Never throws. */
export function processesOf(job: Job): readonly Process[] {
  return chain(job).processes;
}

/** The steps of one process, to a trace. */
export function traceProcess(job: Job, key: ProcessKey, trace: Trace): void {
  const { processes, points } = chain(job);
  const process = processes.find((one) => one.key === key);
  if (process?.outcome.ok) work(process, points, trace);
}

function chain(job: Job) {
  const table = job.tables.processes;
  const points = new Map<PointKey, Outcome<MoistAir>>([
    ['entering', jobAir(job, 'entering')],
    ['leaving', jobAir(job, 'leaving')],
    ...namedStates(job).map(({ key, air }) => [key, air] as const),
  ]);
  const processes: Process[] = [];
  for (const row of table?.rows ?? []) {
    const read = table && rowOf(table, row);
    if (!read || processes.some(({ key }) => key === read.key)) continue;
    const outcome = work(read, points);
    processes.push({ ...read, outcome });
    if (read.kind !== 'drying') points.set(read.key, outcome.ok ? { ok: true, value: outcome.value.end } : outcome);
  }
  return { processes, points };
}

export const isProcessKey = (text: string): text is ProcessKey => isOneOf(processKeys, text);
export const isProcessKind = (text: string): text is ProcessKind => isOneOf(processKinds, text);

const isOneOf = <Key extends string>(keys: readonly Key[], text: string): text is Key =>
  (keys as readonly string[]).includes(text);
const pointKeys: readonly PointKey[] = ['entering', 'leaving', ...stateKeys, ...processKeys];

function rowOf(table: TypedTable, row: readonly string[]): Omit<Process, 'outcome'> | null {
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

const isMass = ({ read: found }: Cell) =>
  found.state === 'read' && (found.unit === 'kgPerS' || found.unit === 'lbPerHour' || found.unit === 'kgPerHour');

type Row = Omit<Process, 'outcome'>;

function work(row: Row, points: Points, t?: Trace): Outcome<ProcessResult> {
  const start = pointAt(row.from, 'from', points);
  const second =
    row.kind === 'mixing'
      ? pointAt(row.with, 'with', points)
      : row.kind === 'drying'
        ? pointAt(row.to, 'to', points)
        : null;
  const bad = [row.endDryBulb, row.airflow, row.secondAirflow].map(badCell).find((one) => one !== null);
  const lack = lacking(start, ...(second ? [second] : []), ...(bad ? [bad] : []));
  if (lack !== null || !start.ok) return lack ?? waitingFor('from');
  const worker = { drying, cooling: sensible, heating: sensible, mixing }[row.kind];
  return worker(row, start.value, second?.ok ? second.value : start.value, t);
}

function pointAt(key: PointKey | null, name: string, points: Points): Outcome<MoistAir> {
  const air = key === null ? undefined : points.get(key);
  if (air === undefined) return waitingFor(name);
  return air.ok ? air : waitingFor(name);
}

function badCell({ read: found }: Cell): Failure | null {
  if (found.state !== 'bad') return null;
  const problem = { code: found.code, quantity: 'cell', value: 0, min: found.min, max: found.max };
  return { ok: false, waiting: [], problem };
}

/** The dry-air flow of a cell, kg/s, its volume being that of `air`; `null` where none is stated. */
function flowOf({ read: found, ...cell }: Cell, air: MoistAir, t?: Trace): number | null {
  if (found.state !== 'read') return null;
  if (isMass({ read: found, ...cell })) return found.si;
  return dryAirFlow({ volumeFlow: found.si, at: { specificVolume: air.specificVolume } }, t);
}

function problem(code: string, value: number, min: number, max: number): Failure {
  return { ok: false, waiting: [], problem: { code, quantity: 'process', value, min, max } };
}

/** Water in the air that no reading tells apart: a hundredth of a gram a kilogram. */
const alike = 1e-5;

function drying(row: Row, start: MoistAir, end: MoistAir, t?: Trace): Outcome<ProcessResult> {
  if (row.from === row.to) return problem('samePoint', 0, 0, 0);
  if (end.humidityRatio > start.humidityRatio + alike) {
    return problem('wetter', end.humidityRatio, 0, start.humidityRatio);
  }
  if (end.dryBulb > start.dryBulb) return problem('notCooled', end.dryBulb, start.dryBulb, start.dryBulb);
  return attempt(() => loaded(row, start, end, t));
}

function sensible(row: Row, start: MoistAir, _: MoistAir, t?: Trace): Outcome<ProcessResult> {
  if (row.endDryBulb.read.state !== 'read') return waitingFor('endDryBulb');
  const dryBulb = row.endDryBulb.read.si;
  const { pressure, humidityRatio, dewPoint } = start;
  if (row.kind === 'heating' && dryBulb < start.dryBulb)
    return problem('notHeated', dryBulb, start.dryBulb, start.dryBulb);
  if (row.kind === 'cooling' && dryBulb > start.dryBulb)
    return problem('notCooled', dryBulb, start.dryBulb, start.dryBulb);
  if (row.kind === 'cooling' && dryBulb < dewPoint) return problem('belowDewPoint', dryBulb, dewPoint, start.dryBulb);
  return attempt(() => {
    const end = moistAir({ dryBulb, pressure, humidityRatio }, prefixed(t, 'end'));
    return loaded(row, start, end, t);
  });
}

function loaded(row: Row, start: MoistAir, end: MoistAir, t?: Trace): ProcessResult {
  const flow = flowOf(row.airflow, start, t);
  const load = flow === null ? null : coilLoad({ entering: start, leaving: end, dryAirFlow: flow }, t);
  return { start, other: null, end, dryAirFlow: flow, share: null, load };
}

function mixing(row: Row, start: MoistAir, other: MoistAir, t?: Trace): Outcome<ProcessResult> {
  if (row.from === row.with) return problem('samePoint', 0, 0, 0);
  const flow = flowOf(row.airflow, start, prefixed(t, 'first'));
  const second = flowOf(row.secondAirflow, other, prefixed(t, 'second'));
  if (flow === null || second === null) {
    return waitingFor(...(flow === null ? ['airflow'] : []), ...(second === null ? ['secondAirflow'] : []));
  }
  return attempt(() => {
    const mixed = mix({ air: start, dryAirFlow: flow }, { air: other, dryAirFlow: second }, t);
    const share = flow / mixed.dryAirFlow;
    return { start, other, end: mixed.air, dryAirFlow: mixed.dryAirFlow, share, load: null };
  });
}
