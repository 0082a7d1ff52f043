import { flowRange, onCurve } from '../airflowStep.ts';
import { bypassAtFlow, type CoilDuty, leavingAir } from '../coilModel.ts';
import { standardPressureAtSeaLevel } from '../constants.ts';
import { CalcError, within } from '../errors.ts';
import { expectedCapacity } from '../expectation.ts';
import type { ExpectationConditions } from '../expectationChain.ts';
import { limits } from '../limits.ts';
import { attempt } from '../outcome.ts';
import type { SourceKey } from '../sources.ts';
import type { Installation, Outcome, RatingTable } from '../types.ts';

/** What the system would do with another airflow. */
export interface AtAirflow {
  /** Of the airflow here. */
  readonly factor: number;
  readonly dryAirFlow: number;
  /** W; the sensible part is `null` where the table does not say enough. */
  readonly total: number;
  readonly sensible: number | null;
  readonly sensibleHeatRatio: number | null;
  /** How far the total may be out by what its steps admit: relative half-width, roots of squares; `null` where none is stated. */
  readonly band: number | null;
  readonly source: SourceKey;
}

/** The airflow here and what else is asked about it. */
export const airflowFactors = [0.8, 0.9, 1, 1.1, 1.2] as const;

/**
 * Net capacity at other airflows, all else as it is, from the rating: read between the blocks of a table that has several, else
 * by the maker's multipliers or the published flow curve. A table that states no airflow is taken to stand for the one here. Each
 * answer is an `Outcome`: an airflow beyond the table has the problem `outsideTable`. The blower's heat stays the same.
 */
export function atOtherAirflows(
  table: RatingTable,
  conditions: ExpectationConditions & { readonly dryAirFlow: number },
  installation: Installation,
  factors: readonly number[] = airflowFactors,
): readonly Outcome<AtAirflow>[] {
  const { pressure = standardPressureAtSeaLevel } = installation;
  const makers = table.multipliers.airflow.length > 0 || table.axes.dryAirFlow.length > 1;
  const stands = makers || table.axes.dryAirFlow.length > 0;
  const seaLevelFlow = (conditions.dryAirFlow * standardPressureAtSeaLevel) / pressure;
  const here = stands ? table : { ...table, axes: { ...table.axes, dryAirFlow: [seaLevelFlow] } };
  const source = sourceOf(table, makers);
  return factors.map((factor) =>
    attempt(() => {
      const dryAirFlow = factor * conditions.dryAirFlow;
      const { total, sensible, derates } = expectedCapacity(here, { ...conditions, dryAirFlow }, installation);
      const band = Math.hypot(...derates.map((step) => step.band));
      return { ...answer(factor, dryAirFlow, total, sensible), band, source };
    }),
  );
}

/**
 * The same from the coil that was measured, where there is no table: gross capacity by the flow curve, and what is sensible by
 * the coil model at the coil's own bypass factor, b = exp(−A₀/ṁ). An estimate. Throws a `CalcError` for a bypass factor that
 * is no fraction. `coilModel`.
 */
export function atOtherAirflowsByCoil(
  duty: CoilDuty,
  bypassFactor: number,
  factors: readonly number[] = airflowFactors,
): readonly Outcome<AtAirflow>[] {
  within('bypassFactor', bypassFactor, [1e-6, 1 - 1e-6]);
  within('total', duty.total, limits.capacity);
  return factors.map((factor) =>
    attempt(() => {
      const dryAirFlow = factor * duty.dryAirFlow;
      within('dryAirFlow', dryAirFlow, limits.dryAirFlow);
      const [least, most] = flowRange;
      if (factor < least || factor > most) throw new CalcError('outsideTable', 'factor', factor, least, most);
      const total = duty.total * onCurve(factor);
      const air = leavingAir({ ...duty, dryAirFlow, total }, bypassAtFlow(bypassFactor, factor));
      return { ...answer(factor, dryAirFlow, total, air?.sensible ?? null), band: null, source: 'coilModel' as const };
    }),
  );
}

function sourceOf({ from }: RatingTable, makers: boolean): SourceKey {
  if (from === 'generic') return 'genericCurves';
  return makers ? 'makersTable' : 'flowCurve';
}

function answer(factor: number, dryAirFlow: number, total: number, sensible: number | null) {
  const most = sensible === null ? null : Math.min(sensible, total);
  return { factor, dryAirFlow, total, sensible: most, sensibleHeatRatio: most === null ? null : most / total };
}
