import { CalcError, within } from '../errors.ts';
import { limits } from '../limits.ts';
import { amount } from '../trace.ts';
import type { Trace } from '../types.ts';
import { checkFanTable, type FanRow, type FanTable, fanColumn, fanFlowAt } from './fanTableRead.ts';
import { airflowLimits } from './limits.ts';

/** One part of the ducts: what it costs at the airflow measured, and how many times as much it resists now. */
export interface DuctPart {
  /** Pa at `flow`. */
  readonly drop: number;
  /** 1: as it was. 2: a filter that resists twice as much. See `partlyShut`. */
  readonly times: number;
}

export interface DuctSystem {
  readonly table: FanTable;
  /** Column of the speed that runs; a fixed-speed blower. */
  readonly column: number;
  /** m³/s at which the drops were measured. */
  readonly flow: number;
  readonly parts: readonly DuctPart[];
  /** Power of the flow that the pressure goes with: 2, down to 1.8 with much filter and coil. 2 when left out. */
  readonly exponent?: number;
}

export interface DuctPoint {
  /** m³/s and Pa where the blower's curve meets the system's. */
  readonly flow: number;
  readonly static: number;
}

export interface DuctSystemFound {
  readonly before: DuctPoint;
  readonly after: DuctPoint;
  /** Relative change of the airflow. */
  readonly change: number;
}

/** Pressure, Pa, that ducts take at a flow: Σ times·drop·(V̇/V̇₀)ⁿ. */
export function systemStatic({ flow, parts, exponent = 2 }: Omit<DuctSystem, 'table' | 'column'>, at: number): number {
  return parts.reduce((sum, { drop, times }) => sum + drop * times, 0) * (at / flow) ** exponent;
}

/** How many times as much branches resist when a share of equal ones is shut: 1/(1 − s)ⁿ. */
export function partlyShut(share: number, exponent = 2): number {
  within('share', share, [0, 0.95]);
  return (1 - share) ** -exponent;
}

/**
 * What a change of the ducts does to the airflow of a fixed-speed blower: where its printed curve meets the system's curve,
 * before and after. An estimate: the curve is the maker's, the parts share one exponent, and nothing is said of motors that
 * change their speed. Throws a `CalcError` `outsideTable` where the curves do not meet in what is printed, `notDescending` for a
 * curve that does not fall, and for figures out of range. `fanLaws`.
 */
export function ductSystem(system: DuctSystem, t?: Trace): DuctSystemFound {
  const { table, flow, parts, exponent = 2 } = system;
  checkFanTable(table);
  within('flow', flow, limits.volumeFlow);
  within('exponent', exponent, [1, 2.5]);
  parts.forEach(({ drop, times }, i) => {
    within(`parts.${i}.drop`, drop, airflowLimits.staticPressure);
    within(`parts.${i}.times`, times, [0, 1000]);
  });
  const asItWas = { ...system, parts: parts.map(({ drop }) => ({ drop, times: 1 })) };
  const before = meeting(asItWas);
  const after = meeting(system);
  t?.({
    id: 'airflow.ductSystem',
    equation: 'p = Σkᵢ·pᵢ·(V̇/V̇₀)ⁿ',
    puts: [
      amount('Σkᵢ·pᵢ', 'airPressure', systemStatic(system, flow)),
      amount('V̇₀', 'volumeFlow', flow),
      amount('n', 'ratio', exponent),
      amount('V̇', 'volumeFlow', after.flow),
    ],
    gives: amount('p', 'airPressure', after.static),
    source: 'fanLaws',
  });
  return { before, after, change: after.flow / before.flow - 1 };
}

/** Pa within which the meeting point is found. */
const closeEnough = 1e-9;

/** Where the two curves meet: above it the blower needs less than the ducts take, below it more. By halving. */
function meeting(system: DuctSystem): DuctPoint {
  const rows = fanColumn(system.table, system.column);
  const [first, last] = ends(rows);
  const over = (pressure: number) =>
    pressure - systemStatic(system, fanFlowAt(system.table, system.column, pressure).flow);
  if (over(first.static) > 0 || over(last.static) < 0) {
    const at = over(last.static) < 0 ? systemStatic(system, last.flow) : systemStatic(system, first.flow);
    throw new CalcError('outsideTable', 'externalStatic', at, first.static, last.static);
  }
  let [low, high] = [first.static, last.static];
  while (high - low > closeEnough * Math.max(1, high)) {
    const middle = (low + high) / 2;
    if (over(middle) > 0) high = middle;
    else low = middle;
  }
  return { flow: fanFlowAt(system.table, system.column, high).flow, static: high };
}

function ends(rows: readonly FanRow[]): readonly [FanRow, FanRow] {
  if (rows.length < 2) throw new CalcError('noRows', 'fanTable', rows.length, 2, 100);
  rows.forEach((row, i) => {
    const before = rows[i - 1];
    if (before && row.flow > before.flow) {
      throw new CalcError('notDescending', `fanTable.${i}`, row.flow, limits.volumeFlow[0], before.flow);
    }
  });
  return [rows[0] as FanRow, rows.at(-1) as FanRow];
}
