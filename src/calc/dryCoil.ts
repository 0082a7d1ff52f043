import { bypassAtFlow, coilAir, ratedApparatus } from './coilModel.ts';
import { heatDryAir, standardPressureAtSeaLevel } from './constants.ts';
import { type DryOutArguments, dryOutOn, drySurface } from './dryOut.ts';
import { figureAt, locate, type Place } from './rated.ts';
import { axisOrder, usableSensible } from './tableCheck.ts';
import type { CoilHere, RatingConditions, RatingTable } from './types.ts';
import { wetBulbAt } from './wetBulb.ts';

/** A printed point whose sensible capacity is this share of its total stands for a dry coil. Our choice. */
const dryShare = 0.99;
/** Below this share, whatever the dry bulb adds, the coil is wet and nothing has to be worked out. Our choice. */
const surelyWet = 0.9;
/** Of cooler air than the table's at least this share of the difference reaches the coil: no bypass factor is above 0.3. */
const leastContact = 0.7;
/** The wet line under a row is never steeper than over this many kelvin: it guards a division. */
const leastRise = 0.1;
const wetBulbAxis = axisOrder.indexOf('enteringWetBulb');

/** The sensible capacities that may be read. */
type Column = readonly (number | null)[];

/** A reading of the table, and what is known of the air and of the steps that follow. W and kg/s. */
export interface DryCoilArguments {
  /** The conditions, and the airflow that the table is read at, kg/s. */
  readonly read: RatingConditions;
  readonly readFlow: number | undefined;
  readonly place: Place;
  /** The printed total there. */
  readonly total: number;
  /** Blower heat inside the printed figures, and the factor for the indoor unit. */
  readonly inside: number;
  readonly match: number;
  /** The airflow and the pressure here, and the gross capacity of all steps together over the gross reading. */
  readonly dryAirFlow: number;
  readonly pressure: number;
  readonly scale: number;
}

export interface DryCoil {
  /** The printed total with the coil as dry as it is at this dry bulb, W. */
  readonly total: number;
  readonly coil: CoilHere;
  /** Whether the table covers this: a dry coil works as at the wet bulb at which it turns dry. */
  readonly covered: boolean;
  /** By what share the reading between a dry row and a wet one may be out. */
  readonly smear: number;
}

/** The coil that the table describes: its bypass factor at a flow, kg/s, and the printed points that say where it turns dry. */
interface TableCoil {
  readonly bypassFactor: number;
  readonly dryAirFlow: number;
  /** The lowest wet point from the reading on. */
  readonly wet: Printed;
  /** Where it turns dry at the table's own dry bulb, °C, with the total of the dry row under it, W; `null` among wet rows. */
  readonly turning: { readonly wetBulb: number; readonly total: number } | null;
}

interface Printed {
  readonly wetBulb: number;
  readonly total: number;
  readonly sensible: number;
}

/**
 * What the dry bulb makes of the total. Printed totals hold for the dry bulb of the table; where its rows are dry, or the air
 * here is so dry that the coil is, the total moves with the dry bulb: a dry coil makes what it makes at the wet bulb at which
 * it turns dry, whatever the wet bulb (EnergyPlus Engineering Reference). `null` where the coil is wet beyond doubt, unless
 * `always` is asked for (without it the coil of a wet one is not looked for either), and where the table has no sensible capacity
 * here or does not say for which dry bulb and airflow it stands.
 */
export function dryCoil(table: RatingTable, args: DryCoilArguments, always: boolean): DryCoil | null {
  const { read, place, total, inside, match, dryAirFlow } = args;
  const { enteringDryBulb: dryBulb, enteringWetBulb: wetBulb } = read;
  const column = usableSensible(table);
  const sensible = column && figureAt(column, place);
  if (column === null || sensible === null || dryBulb === undefined) return null;
  if (!always && isWet(table, column, sensible, args)) return null;
  const coil = coilOf(table, column, args);
  if (!coil) return null;
  const bypassFactor = bypassAtFlow(coil.bypassFactor, dryAirFlow / coil.dryAirFlow);
  const printed = (at: number) => wetTotal(table, args, coil, at) ?? total;
  const grossAt = (at: number) => (printed(at) * match + inside) * args.scale;
  const here = { dryBulb, dryAirFlow, bypassFactor, pressure: args.pressure };
  const dryOutWetBulb = dryOutOn(grossAt, here, wetBulb, !always);
  if (dryOutWetBulb === null) return null;
  const first = table.axes.enteringWetBulb[0] as number;
  const effective = Math.max(wetBulb, dryOutWetBulb);
  const smeared = coil.turning !== null && wetBulb >= first;
  const ownTotal = smeared ? printed(Math.max(wetBulb, coil.turning.wetBulb)) : total;
  return {
    total: smeared ? total + printed(effective) - ownTotal : printed(effective),
    coil: { bypassFactor, dryOutWetBulb, dry: dryOutWetBulb > wetBulb },
    covered: effective >= first,
    smear: Math.abs(total - ownTotal) / total,
  };
}

/** A quick look that settles most readings: among wet figures, and too much drying left for the dry bulb here to matter. */
function isWet(
  table: RatingTable,
  column: Column,
  sensible: number,
  { read, place, total, dryAirFlow }: DryCoilArguments,
): boolean {
  const { enteringDryBulb, enteringWetBulb, dryAirFlow: flows } = table.axes;
  if (read.enteringWetBulb < (enteringWetBulb[0] as number)) return false;
  const warmer = enteringDryBulb.length === 1 ? (read.enteringDryBulb as number) - (enteringDryBulb[0] as number) : 0;
  const more = dryAirFlow * heatDryAir * warmer * (warmer < 0 ? leastContact : 1);
  const faster = flows.length === 1 ? Math.max(1, dryAirFlow / (flows[0] as number)) : 1;
  if ((sensible + more) * faster >= surelyWet * total) return false;
  // However wet the reading itself, it is a mixture where the row below it is a dry one.
  const low = figureAt(column, place, wetBulbAxis) as number;
  return low < dryShare * (figureAt(table.total, place, wetBulbAxis) as number);
}

/** The coil from the lowest wet figure at or above the reading; `null` where the table has none that tells. */
function coilOf(table: RatingTable, column: Column, args: DryCoilArguments): TableCoil | null {
  const { read, readFlow, place, inside, match } = args;
  const [stated, another] = table.axes.enteringDryBulb;
  const dryBulb = another === undefined ? stated : read.enteringDryBulb;
  const flow = (table.axes.dryAirFlow.length === 1 ? table.axes.dryAirFlow[0] : readFlow) as number;
  if (dryBulb === undefined) return null;
  const rows = table.axes.enteringWetBulb;
  const lowest = place.low[wetBulbAxis] as number;
  let dryTotal: number | null = null;
  for (const row of rows.slice(lowest)) {
    const printed = pointAt(table, column, args, row);
    if (printed === null) return null;
    if (printed.sensible >= dryShare * printed.total) {
      dryTotal = printed.total;
      continue;
    }
    // Among wet rows the reading itself tells more than the row below it.
    const wet = pointAt(table, column, args, Math.max(row, read.enteringWetBulb));
    const entering = wet && coilAir(dryBulb, wet.wetBulb, standardPressureAtSeaLevel);
    if (wet === null || entering === null) return null;
    const duty = { entering, dryAirFlow: flow, total: wet.total * match + inside };
    const found = ratedApparatus(duty, wet.sensible * match + inside);
    if (!found) return null;
    const { bypassFactor } = found;
    const from = { dryBulb, dryAirFlow: flow, bypassFactor, pressure: standardPressureAtSeaLevel };
    const turning =
      dryTotal === null ? null : { total: dryTotal, wetBulb: turningOf(from, dryTotal * match + inside, wet) };
    return { bypassFactor, dryAirFlow: flow, wet, turning };
  }
  return null;
}

function pointAt(
  table: RatingTable,
  column: Column,
  { read, readFlow }: DryCoilArguments,
  wetBulb: number,
): Printed | null {
  const place = locate(table, read, wetBulb, readFlow);
  const total = figureAt(table.total, place);
  const sensible = figureAt(column, place);
  return total === null || sensible === null ? null : { wetBulb, total, sensible };
}

/** The wet bulb at which the coil of the table turns dry whose dry row, without blower heat, has this total, W: below its wet row. */
function turningOf(coil: Omit<DryOutArguments, 'total'>, total: number, wet: Printed): number {
  const surface = drySurface({ ...coil, total });
  const found = surface && wetBulbAt(coil.dryBulb, surface.humidityRatio, coil.pressure);
  return Math.min(found ?? wet.wetBulb, wet.wetBulb - leastRise);
}

/** Total of the wet coil at a wet bulb, W as printed: from the table, and below its lowest wet row on the line to where it turns dry. */
function wetTotal(
  table: RatingTable,
  { read, readFlow }: DryCoilArguments,
  { wet, turning }: TableCoil,
  at: number,
): number | null {
  if (turning === null || at >= wet.wetBulb) return figureAt(table.total, locate(table, read, at, readFlow));
  return wet.total + ((wet.total - turning.total) / (wet.wetBulb - turning.wetBulb)) * (at - wet.wetBulb);
}
