import { type FlowFactor, flowCovered, flowFactor, isFlowOutside } from './airflowStep.ts';
import { type AltitudeStep, altitudeStep } from './altitudeStep.ts';
import { blowerInside } from './blowerHeat.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import { type DryCoil, dryCoil } from './dryCoil.ts';
import { CalcError, within } from './errors.ts';
import { limits } from './limits.ts';
import { type Beyond, figureAt, highRow, locate, type Place } from './rated.ts';
import { axisOrder, checkCapacity } from './tableCheck.ts';
import type { Axis, Installation, LineSetFactor, RatingConditions, RatingTable } from './types.ts';

export interface ExpectationConditions extends RatingConditions {
  /** What to do beyond the table; `refuse` when left out. */
  readonly beyond?: Beyond;
  /** The size on the nameplate, W: where the steps begin. Left out, they begin at the certified capacity, or at the reading. */
  readonly nominal?: number | undefined;
  /** The certified capacity at the rating point, W. */
  readonly certified?: number | undefined;
}

/** The capacity after each step, W. */
export interface Steps {
  readonly atTemperatures: number;
  readonly matched: number;
  readonly atAirflow: number;
  readonly gross: number;
  readonly lined: number;
  readonly here: number;
  readonly net: number;
}

/** What the steps are worked out with. */
export interface Factors {
  /** Blower heat inside the printed figures, and this system's own, W. */
  readonly inside: number;
  readonly blowerPower: number;
  readonly match: number;
  readonly flow: FlowFactor;
  /** Whether airflow and altitude act on the gross capacity: the published curve does, a maker's figures are as printed. */
  readonly onGross: boolean;
  readonly line: LineSetFactor | null;
  readonly altitude: AltitudeStep;
}

export interface Chain {
  readonly steps: Steps;
  readonly factors: Factors;
  readonly place: Place;
  /** The reading of the table before the dry bulb is looked at, W. */
  readonly printed: number;
  /** The measured volume as if at sea level, kg/s: what the table and its airflow step are read at. */
  readonly seaLevelFlow: number | undefined;
  /** The airflow here, or the one that the table states, kg/s. */
  readonly flowHere: number | undefined;
  readonly pressure: number;
  /** What the dry bulb made of the reading; `null` where the coil is wet beyond doubt or nothing is known of it. */
  readonly dryCoil: DryCoil | null;
  readonly outside: readonly Axis[];
}

/**
 * Every step of an expectation. Throws what `expectedCapacity` says. `describe` asks for the coil in any case; without it the
 * coil is only looked at where it may be dry.
 */
export function chainOf(
  table: RatingTable,
  conditions: ExpectationConditions,
  installation: Installation,
  describe = false,
): Chain {
  const { blowerPower, pressure = standardPressureAtSeaLevel } = installation;
  within('blowerPower', blowerPower, limits.blowerPower);
  within('pressure', pressure, limits.pressure);
  if (conditions.nominal !== undefined) checkCapacity('nominal', conditions.nominal);
  if (conditions.certified !== undefined) checkCapacity('certified', conditions.certified);
  const { dryAirFlow } = conditions;
  const seaLevelFlow = dryAirFlow === undefined ? undefined : (dryAirFlow * standardPressureAtSeaLevel) / pressure;
  const place = locate(table, conditions, conditions.enteringWetBulb, seaLevelFlow);
  const total = figureAt(table.total, place);
  if (total === null) throw holeAt(table, conditions, place);
  const factors: Factors = {
    inside: blowerInside(table),
    blowerPower,
    match: table.multipliers.indoorMatch ?? 1,
    flow: flowFactor(table, seaLevelFlow),
    onGross: table.axes.dryAirFlow.length === 1 && table.multipliers.airflow.length === 0,
    line: lineOf(table, installation),
    altitude: altitudeStep(table, { read: conditions, printed: total, dryAirFlow, pressure }),
  };
  const wet = stepsFrom(total, factors);
  const { inside, match } = factors;
  const scale = wet.here / (wet.matched + inside);
  const flowHere = dryAirFlow ?? table.axes.dryAirFlow[0];
  const found =
    flowHere === undefined
      ? null
      : dryCoil(
          table,
          {
            read: conditions,
            readFlow: seaLevelFlow,
            place,
            total,
            inside,
            match,
            dryAirFlow: flowHere,
            pressure,
            scale,
          },
          describe,
        );
  const outside = outsideOf(table, conditions, place, found, pressure);
  if (conditions.beyond !== 'extend') refuseOutside(table, conditions, outside);
  const steps = found === null ? wet : stepsFrom(found.total, factors);
  checkCapacity('expected.total', steps.atTemperatures);
  checkCapacity('expected.total', steps.net);
  return { steps, factors, place, printed: total, seaLevelFlow, flowHere, pressure, dryCoil: found, outside };
}

/** The steps from a reading of the table, W. */
function stepsFrom(reading: number, factors: Factors): Steps {
  const { inside, blowerPower, match, flow, onGross, line, altitude } = factors;
  const matched = reading * match;
  const atAirflow = onGross ? (matched + inside) * flow.total - inside : matched * flow.total;
  const gross = atAirflow + inside;
  const lined = gross * (line?.factor ?? 1);
  const here = lined * (onGross ? altitude.ratio : (atAirflow * altitude.ratio + inside) / gross);
  return { atTemperatures: reading, matched, atAirflow, gross, lined, here, net: here - blowerPower };
}

/** The maker's own factor for the line outranks every other. */
function lineOf({ multipliers }: RatingTable, { lineSet = null }: Installation): LineSetFactor | null {
  const own = multipliers.lineLength;
  if (own !== null) return { factor: own, low: own, high: own, source: 'makersTable' };
  if (lineSet === null) return null;
  within('lineSet.low', lineSet.low, limits.multiplier);
  within('lineSet.factor', lineSet.factor, [lineSet.low, lineSet.high]);
  within('lineSet.high', lineSet.high, limits.multiplier);
  return lineSet;
}

/** What a table covers on an axis; `null` where it does not vary with it. One stated airflow covers what the flow curve does. */
export function tableRange(table: RatingTable, axis: Axis): readonly [number, number] | null {
  if (axis === 'dryAirFlow') return flowCovered(table);
  const rows = table.axes[axis];
  return rows.length > 1 ? [rows[0] as number, rows[rows.length - 1] as number] : null;
}

/** Where the table does not reach. Below its lowest wet bulb it does where a coil is dry: there the wet bulb says nothing. */
function outsideOf(
  table: RatingTable,
  conditions: ExpectationConditions,
  place: Place,
  found: DryCoil | null,
  pressure: number,
): readonly Axis[] {
  const flow = isFlowOutside(table, conditions.dryAirFlow, pressure);
  const dry = found?.covered && conditions.enteringWetBulb < (table.axes.enteringWetBulb[0] as number);
  const axes = place.outside.filter((axis) => axis !== 'dryAirFlow' && !(dry && axis === 'enteringWetBulb'));
  return flow ? [...axes, 'dryAirFlow'] : axes;
}

function refuseOutside(table: RatingTable, conditions: ExpectationConditions, [axis]: readonly Axis[]): void {
  if (axis === undefined) return;
  const [low, high] = tableRange(table, axis) as readonly [number, number];
  throw new CalcError('outsideTable', axis, conditions[axis] as number, low, high);
}

function holeAt(table: RatingTable, conditions: RatingConditions, place: Place): CalcError {
  const rows = table.axes.enteringWetBulb;
  const wetBulb = axisOrder.indexOf('enteringWetBulb');
  const [low, high] = [rows[place.low[wetBulb] as number] as number, rows[highRow(place, wetBulb)] as number];
  return new CalcError('hole', 'enteringWetBulb', conditions.enteringWetBulb, low, high);
}
