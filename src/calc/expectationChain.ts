import { type FlowFactor, flowCovered, flowFactor } from './airflowStep.ts';
import { type AltitudeStep, altitudeStep } from './altitudeStep.ts';
import { blowerInside } from './blowerHeat.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import { CalcError, within } from './errors.ts';
import { limits } from './limits.ts';
import { type Beyond, figureAt, locate, type Place } from './rated.ts';
import { axisOrder, checkCapacity } from './tableCheck.ts';
import type { Axis, Installation, LineSetFactor, RatingConditions, RatingTable } from './types.ts';

export interface ExpectationConditions extends RatingConditions {
  /** What to do beyond the table; `refuse` when left out. */
  readonly beyond?: Beyond;
  /** The size on the nameplate, W: where the steps begin. Left out, they begin at the certified capacity, or at the reading. */
  readonly nominal?: number;
  /** The certified capacity at the rating point, W. */
  readonly certified?: number;
}

/** The capacity after each step, W, and what the steps were worked out with. */
export interface Chain {
  readonly place: Place;
  /** The measured volume as if at sea level, kg/s: what the table and its airflow step are read at. */
  readonly seaLevelFlow: number | undefined;
  readonly flow: FlowFactor;
  readonly line: LineSetFactor | null;
  readonly altitude: AltitudeStep;
  readonly pressure: number;
  readonly atTemperatures: number;
  readonly matched: number;
  readonly atAirflow: number;
  readonly gross: number;
  readonly lined: number;
  readonly here: number;
  readonly net: number;
}

/** Every step of an expectation. Throws what `expectedCapacity` says. */
export function chainOf(table: RatingTable, conditions: ExpectationConditions, installation: Installation): Chain {
  const { blowerPower, pressure = standardPressureAtSeaLevel } = installation;
  within('blowerPower', blowerPower, limits.blowerPower);
  within('pressure', pressure, limits.pressure);
  if (conditions.nominal !== undefined) checkCapacity('nominal', conditions.nominal);
  if (conditions.certified !== undefined) checkCapacity('certified', conditions.certified);
  const { dryAirFlow } = conditions;
  const seaLevelFlow = dryAirFlow === undefined ? undefined : (dryAirFlow * standardPressureAtSeaLevel) / pressure;
  const read = seaLevelFlow === dryAirFlow ? conditions : { ...conditions, dryAirFlow: seaLevelFlow as number };
  const place = locate(table, read);
  const flow = flowFactor(table, seaLevelFlow);
  if (conditions.beyond !== 'extend') refuseOutside(table, read, place, flow);
  const atTemperatures = figureAt(table.total, table, place);
  if (atTemperatures === null) throw holeAt(table, conditions, place);
  checkCapacity('expected.total', atTemperatures);
  const { indoorMatch } = table.multipliers;
  const matched = atTemperatures * (indoorMatch ?? 1);
  const atAirflow = matched * flow.total;
  const gross = atAirflow + blowerInside(table);
  const line = lineOf(table, installation);
  const lined = gross * (line?.factor ?? 1);
  const altitude = altitudeStep(table, { read, place, dryAirFlow, seaLevelFlow, pressure });
  const here = lined * altitude.factor;
  const net = here - blowerPower;
  checkCapacity('expected.total', net);
  return {
    place,
    seaLevelFlow,
    flow,
    line,
    altitude,
    pressure,
    atTemperatures,
    matched,
    atAirflow,
    gross,
    lined,
    here,
    net,
  };
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
  const rows = table.axes[axis];
  if (rows.length > 1) return [rows[0] as number, rows[rows.length - 1] as number];
  return axis === 'dryAirFlow' ? flowCovered(table) : null;
}

function refuseOutside(table: RatingTable, read: RatingConditions, place: Place, flow: FlowFactor): void {
  const axis = place.outside[0] ?? (flow.outside ? 'dryAirFlow' : null);
  if (!axis) return;
  const [low, high] = tableRange(table, axis) as readonly [number, number];
  throw new CalcError('outsideTable', axis, read[axis] as number, low, high);
}

function holeAt(table: RatingTable, conditions: RatingConditions, place: Place): CalcError {
  const rows = table.axes.enteringWetBulb;
  const at = conditions.enteringWetBulb;
  const wetBulb = axisOrder.indexOf('enteringWetBulb');
  return new CalcError(
    'hole',
    'enteringWetBulb',
    at,
    rows[place.low[wetBulb] as number] ?? at,
    rows[place.high[wetBulb] as number] ?? at,
  );
}
