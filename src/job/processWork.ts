/** What a process does to the air, and its loads: each kind by its own rule, or why it cannot be. Never throws. */
import { coilLoad } from '../calc/coilLoad.ts';
import { dryAirFlow } from '../calc/dryAirFlow.ts';
import { mix } from '../calc/mix.ts';
import { moistAir } from '../calc/moistAir.ts';
import { attempt, type Failure, lacking, waitingFor } from '../calc/outcome.ts';
import { prefixed } from '../calc/trace.ts';
import type { CoilLoad, MoistAir, Outcome, Trace } from '../calc/types.ts';
import type { PointKey, ProcessRow } from './processRows.ts';
import type { Cell } from './states.ts';

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

/** The points that processes may name, and the air there. */
export type Points = ReadonlyMap<PointKey, Outcome<MoistAir>>;

/** One process between these points; its steps to the trace. */
export function workProcess(row: ProcessRow, points: Points, t?: Trace): Outcome<ProcessResult> {
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

const isMass = ({ read: found }: Cell) =>
  found.state === 'read' && (found.unit === 'kgPerS' || found.unit === 'lbPerHour' || found.unit === 'kgPerHour');

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

function drying(row: ProcessRow, start: MoistAir, end: MoistAir, t?: Trace): Outcome<ProcessResult> {
  if (row.from === row.to) return problem('samePoint', 0, 0, 0);
  if (end.humidityRatio > start.humidityRatio + alike) {
    return problem('wetter', end.humidityRatio, 0, start.humidityRatio);
  }
  if (end.dryBulb > start.dryBulb) return problem('notCooled', end.dryBulb, start.dryBulb, start.dryBulb);
  return attempt(() => loaded(row, start, end, t));
}

function sensible(row: ProcessRow, start: MoistAir, _: MoistAir, t?: Trace): Outcome<ProcessResult> {
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

function loaded(row: ProcessRow, start: MoistAir, end: MoistAir, t?: Trace): ProcessResult {
  const flow = flowOf(row.airflow, start, t);
  const load = flow === null ? null : coilLoad({ entering: start, leaving: end, dryAirFlow: flow }, t);
  return { start, other: null, end, dryAirFlow: flow, share: null, load };
}

function mixing(row: ProcessRow, start: MoistAir, other: MoistAir, t?: Trace): Outcome<ProcessResult> {
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
