import { bypassAtFlow, type CoilDuty, coilAir, leavingAir, ratedApparatus } from './coilModel.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import type { Chain } from './expectationChain.ts';
import { figureAt } from './rated.ts';
import { usableSensible } from './tableCheck.ts';
import type { RatingConditions, RatingTable } from './types.ts';

/** Where the printed sensible capacity stands, and where it is wanted. */
interface Shift {
  readonly fromDryBulb: number;
  readonly toDryBulb: number;
  readonly fromFlow: number | undefined;
  readonly toFlow: number | undefined;
}

/**
 * Net sensible capacity to expect, W. Read from the table; then, where the table states one entering dry bulb or one airflow
 * and the air here has another, moved with the coil's own bypass factor: by ṁ·c_p·(1 − b) for each kelvin of dry bulb, and at
 * another airflow by the model's surface and b = exp(−A₀/ṁ). Never above the total. `null` where the table has no sensible
 * capacity or one above its total, does not say for which dry bulb it stands, or the coil of the rating has no apparatus dew
 * point (a dry coil) and a shift is needed. The rating's process is at sea level, as ratings are; the coil's here at the
 * pressure here.
 */
export function expectedSensible(table: RatingTable, conditions: RatingConditions, chain: Chain): number | null {
  if (chain.dryCoil?.coil.dry) return chain.steps.net;
  const column = usableSensible(table);
  const printed = column && figureAt(column, chain.place);
  const shift = shiftOf(table, conditions, chain);
  if (printed === null || shift === null) return null;
  const { steps, factors } = chain;
  const { inside, match } = factors;
  const own = factors.flow.sensible;
  const sensible = printed * match * (own ?? 1) + inside;
  const rated = { total: own === null ? steps.matched + inside : steps.gross, sensible };
  const here = needed(shift, chain) ? shifted(shift, conditions.enteringWetBulb, rated, chain) : rated.sensible;
  return here === null ? null : Math.min(here, steps.here) - factors.blowerPower;
}

function shiftOf(
  table: RatingTable,
  conditions: RatingConditions,
  { factors: { flow }, seaLevelFlow }: Chain,
): Shift | null {
  const [only, another] = table.axes.enteringDryBulb;
  // A dry bulb that nobody gave is no air, for which there is no figure either.
  const { enteringDryBulb: here = Number.NaN } = conditions;
  const stated = another === undefined ? only : here;
  if (stated === undefined) return null;
  const flows = table.axes.dryAirFlow;
  const toFlow = conditions.dryAirFlow ?? flows[0];
  const readAt = flows.length === 0 ? toFlow : (seaLevelFlow ?? flows[0]);
  const fromFlow = flows.length === 1 && flow.sensible === null ? flows[0] : readAt;
  return { fromDryBulb: stated, toDryBulb: here, fromFlow, toFlow };
}

function needed({ fromDryBulb, toDryBulb, fromFlow, toFlow }: Shift, { factors: { line, altitude } }: Chain): boolean {
  return fromDryBulb !== toDryBulb || fromFlow !== toFlow || line !== null || altitude.applies;
}

/** Capacities without blower heat, W. */
interface Gross {
  readonly total: number;
  readonly sensible: number;
}

/** The sensible capacity, W, of air that has the same wet bulb and another dry bulb or flow; all of `total` on a dry coil. */
function shifted(shift: Shift, wetBulb: number, rated: Gross, chain: Chain): number | null {
  const { fromDryBulb, toDryBulb, fromFlow, toFlow } = shift;
  const total = chain.steps.here;
  const from = duty(fromDryBulb, wetBulb, standardPressureAtSeaLevel, fromFlow, rated.total);
  const to = duty(toDryBulb, wetBulb, chain.pressure, toFlow, total);
  if (!from || !to) return null;
  const found = ratedApparatus(from, rated.sensible);
  // A dry row says nothing of the coil; the wet row above it may have.
  const known = chain.dryCoil?.coil;
  if (!found) return (known && leavingAir(to, known.bypassFactor)?.sensible) ?? null;
  const before = leavingAir(from, found.bypassFactor);
  const after = leavingAir(to, bypassAtFlow(found.bypassFactor, to.dryAirFlow / from.dryAirFlow));
  return before && after && rated.sensible + after.sensible - before.sensible;
}

function duty(
  dryBulb: number,
  wetBulb: number,
  pressure: number,
  dryAirFlow: number | undefined,
  total: number,
): CoilDuty | null {
  const entering = coilAir(dryBulb, wetBulb, pressure);
  return entering && dryAirFlow !== undefined ? { entering, dryAirFlow, total } : null;
}
