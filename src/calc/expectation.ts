import { type AirflowStep, airflowStep, flowCovered, traceAirflowStep } from './airflowStep.ts';
import { blowerInside } from './blowerHeat.ts';
import { CalcError, within } from './errors.ts';
import { expectedSensible } from './expectedSensible.ts';
import { limits } from './limits.ts';
import { type Beyond, figureAt, locate, type Place } from './rated.ts';
import { traceRated } from './ratedTrace.ts';
import { axisOrder, checkCapacity } from './tableCheck.ts';
import { amount } from './trace.ts';
import type { Axis, Derate, Expectation, Installation, RatingConditions, RatingTable, Trace } from './types.ts';

export interface ExpectationConditions extends RatingConditions {
  /** What to do beyond the table; `refuse` when left out. */
  readonly beyond?: Beyond;
  /** The size on the nameplate, W: where the steps begin. Left out, they begin at the reading of the table. */
  readonly nominal?: number;
}

/** The capacity after each step, W. */
export interface Chain {
  readonly place: Place;
  readonly flow: AirflowStep;
  readonly atTemperatures: number;
  readonly atAirflow: number;
  readonly gross: number;
  readonly net: number;
}

/**
 * Net capacity that this system should have here and now, W, from its table in steps: read at these temperatures; brought to
 * this airflow; the blower heat inside a net table added back; this system's own blower heat taken off. Each step is listed
 * as a derate; one that does not apply has the factor 1. `sensible` is `null` where the table does not say enough.
 *
 * Throws a `CalcError` `outsideTable` (or `hole`, with the rows of the wet bulb around it) unless `beyond` is `extend`, when
 * `outside` names the axes; `notPositive` when blower heat eats all of the capacity; and what `rated` throws.
 */
export function expectedCapacity(
  table: RatingTable,
  conditions: ExpectationConditions,
  installation: Installation,
  t?: Trace,
): Expectation {
  const chain = chainOf(table, conditions, installation);
  if (t) traceChain(table, conditions, installation, chain, t);
  return {
    basis: 'net',
    total: chain.net,
    sensible: expectedSensible(table, conditions, installation, chain),
    outside: outsideOf(chain),
    derates: deratesOf(table, conditions, chain),
  };
}

/** The total of `expectedCapacity` alone, W: the same chain, for callers that ask a hundred thousand times. */
export function expectedTotal(
  table: RatingTable,
  conditions: ExpectationConditions,
  installation: Installation,
): number {
  return chainOf(table, conditions, installation).net;
}

function chainOf(table: RatingTable, conditions: ExpectationConditions, installation: Installation): Chain {
  within('blowerPower', installation.blowerPower, limits.blowerPower);
  if (conditions.nominal !== undefined) checkCapacity('nominal', conditions.nominal);
  const place = locate(table, conditions);
  const flow = airflowStep(table, conditions.dryAirFlow);
  if (conditions.beyond !== 'extend') refuseOutside(table, conditions, place, flow);
  const atTemperatures = figureAt(table.total, table, place);
  if (atTemperatures === null) throw holeAt(table, conditions, place);
  checkCapacity('expected.total', atTemperatures);
  const atAirflow = atTemperatures * flow.factor;
  const gross = atAirflow + blowerInside(table);
  const net = gross - installation.blowerPower;
  checkCapacity('expected.total', net);
  return { place, flow, atTemperatures, atAirflow, gross, net };
}

/** What a table covers on an axis; `null` where it does not vary with it. One stated airflow covers what the flow curve does. */
export function tableRange(table: RatingTable, axis: Axis): readonly [number, number] | null {
  const rows = table.axes[axis];
  if (rows.length > 1) return [rows[0] as number, rows[rows.length - 1] as number];
  return axis === 'dryAirFlow' && rows[0] !== undefined ? flowCovered(rows[0]) : null;
}

function refuseOutside(table: RatingTable, conditions: ExpectationConditions, place: Place, flow: AirflowStep): void {
  const axis = place.outside[0] ?? (flow.outside ? 'dryAirFlow' : null);
  if (!axis) return;
  const [low, high] = tableRange(table, axis) as readonly [number, number];
  throw new CalcError('outsideTable', axis, conditions[axis] as number, low, high);
}

function holeAt(table: RatingTable, conditions: ExpectationConditions, place: Place): CalcError {
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

function outsideOf({ place, flow }: Chain): readonly Axis[] {
  return flow.outside ? [...place.outside, 'dryAirFlow'] : place.outside;
}

function deratesOf(table: RatingTable, conditions: ExpectationConditions, chain: Chain): readonly Derate[] {
  const step = (cause: Derate['cause'], before: number, after: number, source: Derate['source']): Derate => ({
    cause,
    factor: after / before,
    before,
    after,
    source,
  });
  const reading = table.from === 'table' ? 'makersTable' : 'genericCurves';
  return [
    step('temperatures', conditions.nominal ?? chain.atTemperatures, chain.atTemperatures, reading),
    step('airflow', chain.atTemperatures, chain.atAirflow, 'flowCurve'),
    step('blowerInside', chain.atAirflow, chain.gross, 'coilModel'),
    step('blowerHere', chain.gross, chain.net, 'coilModel'),
  ];
}

function traceChain(
  table: RatingTable,
  conditions: ExpectationConditions,
  installation: Installation,
  chain: Chain,
  t: Trace,
): void {
  const { place, flow, atTemperatures, atAirflow, gross, net } = chain;
  traceRated(table, conditions, place, atTemperatures, t);
  if (flow.factor !== 1) traceAirflowStep(table, conditions.dryAirFlow as number, flow, atTemperatures, t);
  const reading = flow.factor === 1 ? 'Q' : 'Q₂';
  t({
    id: 'expectation.gross',
    equation: `Q₃ = ${reading} + Pᵣ`,
    puts: [amount(reading, 'power', atAirflow), amount('Pᵣ', 'power', blowerInside(table))],
    gives: amount('Q₃', 'power', gross),
    source: 'coilModel',
  });
  t({
    id: 'expectation.net',
    equation: 'Q₄ = Q₃ − Pᵦ',
    puts: [amount('Q₃', 'power', gross), amount('Pᵦ', 'power', installation.blowerPower)],
    gives: amount('Q₄', 'power', net),
    source: 'coilModel',
  });
}
