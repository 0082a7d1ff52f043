import { standardPressureAtSeaLevel } from '../constants.ts';
import { within } from '../errors.ts';
import { limits } from '../limits.ts';
import { attempt, orNull } from '../outcome.ts';
import { amount } from '../trace.ts';
import type { Trace } from '../types.ts';
import { checkFanTable, type FanTable, fanFlowAt, holdsAirflow } from './fanTableRead.ts';
import { fanTableRemarks, traceRead } from './fanTableSaid.ts';
import { type AirflowFound, type BlowerSpeed, type Cause, found, ofLimit } from './found.ts';
import { type AirThere, checkAir, type Gauge, gaugeCause, manometer } from './instruments.ts';
import { airflowLimits } from './limits.ts';

export type Motor = 'fixedSpeed' | 'constantAirflow' | 'unsure';

export interface FanTableReading {
  readonly table: FanTable;
  /** Which column, from zero. */
  readonly column: number;
  readonly motor: Motor;
  /** Static pressures on the two sides of the rated unit, Pa; their signs do not matter. */
  readonly supplyStatic: number;
  readonly returnStatic: number;
  /** Station pressure, Pa. */
  readonly pressure: number;
  /** The air that goes through the blower. */
  readonly air: AirThere;
  readonly gauge?: Gauge;
  readonly speed?: BlowerSpeed | undefined;
}

export interface FanTableFound extends AirflowFound {
  readonly externalStatic: number;
  /** The pressure at which the table was read, Pa: as if the air were as dense as at sea level. */
  readonly tableStatic: number;
  /** What the motor was taken for. */
  readonly motor: Motor;
  /** Whether the column holds its airflow; `null` where too little is printed. */
  readonly holds: boolean | null;
  /** Every column of the table there, m³/s; `null` where it prints nothing there. */
  readonly columns: readonly (number | null)[];
}

/** Standard uncertainties, common practice, no source: the wheel, the filter and the voltage as the table wants them. */
const curve = 0.05;
/** What the place of the holes does to the pressure, Pa: 0.03 in. w.c. */
const place = 7.5;
/** Temperature and dampness move the density by so much at one pressure: half-width. */
const density = 0.02;

/**
 * Airflow from the maker's table by external static pressure, actual m³/s at the blower. A fixed-speed fan moves the same volume
 * in thin air against less pressure, so the static measured is divided by the density ratio (station pressure over that at sea
 * level) before the table is read (`fanLaws`). A motor that holds its airflow may hold the volume or the mass there: the middle
 * is taken and the band widened by half the difference. Interpolation inside only. Throws a `CalcError`: see `checkFanTable` and
 * `fanFlowAt`; and for a pressure that is no number.
 */
export function airflowFromFanTable(reading: FanTableReading, t?: Trace): FanTableFound {
  const { table, column, pressure, air, gauge = manometer, speed } = reading;
  checkFanTable(table);
  within('pressure', pressure, limits.pressure);
  checkAir(air);
  const external = externalStatic(reading, t);
  const holds = holdsAirflow(table, column);
  const motor =
    reading.motor === 'unsure' && holds !== null ? (holds ? 'constantAirflow' : 'fixedSpeed') : reading.motor;
  const ratio = pressure / standardPressureAtSeaLevel;
  const tableStatic = motor === 'fixedSpeed' ? external / ratio : external;
  const point = fanFlowAt(table, column, tableStatic);
  const band = flowBand(reading, motor, point.flow, external, ratio);
  traceRead(external, ratio, tableStatic, point, band, motor, t);
  const elasticity = (point.slope * tableStatic) / point.flow;
  const causes: readonly Cause[] = [
    { name: 'fanTable.curve', u: curve, basis: 'commonPractice' },
    {
      name: 'fanTable.place',
      u: Math.abs((point.slope * place * tableStatic) / external / point.flow) || 0,
      basis: 'commonPractice',
    },
    { name: 'fanTable.density', u: ofLimit(density), moves: elasticity, basis: 'definition', shape: 'rectangular' },
    gaugeCause(gauge, elasticity),
    { name: 'fanTable.altitude', u: ofLimit(band.half / band.middle), basis: 'fanLaws', shape: 'rectangular' },
  ];
  const remarks = fanTableRemarks(reading, motor, holds, external, band.half / band.middle);
  const at = { specificVolume: air.specificVolume };
  const answer = found({ method: 'fanTable', volumeFlow: band.middle, at, causes, remarks, speed }, t);
  const columns = table.speeds.map((_, i) => orNull(attempt(() => fanFlowAt(table, i, tableStatic).flow)));
  return { ...answer, externalStatic: external, tableStatic, motor, holds, columns };
}

/** Both sides of the unit together, Pa, whatever their signs. */
function externalStatic({ supplyStatic, returnStatic }: FanTableReading, t?: Trace): number {
  within('supplyStatic', Math.abs(supplyStatic), airflowLimits.staticPressure);
  within('returnStatic', Math.abs(returnStatic), airflowLimits.staticPressure);
  const external = Math.abs(supplyStatic) + Math.abs(returnStatic);
  t?.({
    id: 'airflow.fanTable.external',
    equation: 'pₑ = |pₛ| + |pᵣ|',
    puts: [amount('pₛ', 'airPressure', supplyStatic), amount('pᵣ', 'airPressure', returnStatic)],
    gives: amount('pₑ', 'airPressure', external),
    source: 'highStatic',
  });
  return external;
}

export interface Band {
  readonly middle: number;
  readonly half: number;
}

/** Every volume that the motor may be moving here, m³/s: the middle and half of the difference. */
function flowBand(
  { table, column }: FanTableReading,
  motor: Motor,
  flow: number,
  external: number,
  ratio: number,
): Band {
  if (motor === 'fixedSpeed') return { middle: flow, half: 0 };
  const flows = [flow, flow / ratio];
  if (motor === 'unsure') flows.push(fanFlowAt(table, column, external / ratio).flow);
  const [least, most] = [Math.min(...flows), Math.max(...flows)];
  return { middle: (least + most) / 2, half: (most - least) / 2 };
}
