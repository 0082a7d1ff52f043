import { airflowStep } from '../airflowStep.ts';
import { bypassAtFlow, type CoilDuty, leavingAir } from '../coilModel.ts';
import { CalcError, within } from '../errors.ts';
import { type ExpectationConditions, expectedCapacity } from '../expectation.ts';
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
  readonly source: SourceKey;
}

/** The airflow here and what else is asked about it. */
export const airflowFactors = [0.8, 0.9, 1, 1.1, 1.2] as const;

/**
 * Net capacity at other airflows, all else as it is, from the rating: read between the blocks of a table that has several, else
 * by the published flow curve (see `airflowStep`). A table that states no airflow is taken to stand for the one here. Each
 * answer is an `Outcome`: an airflow beyond the table has the problem `outsideTable`. The blower's heat stays the same.
 */
export function atOtherAirflows(
  table: RatingTable,
  conditions: ExpectationConditions & { readonly dryAirFlow: number },
  installation: Installation,
  factors: readonly number[] = airflowFactors,
): readonly Outcome<AtAirflow>[] {
  const stated = table.axes.dryAirFlow.length;
  const here = stated > 0 ? table : { ...table, axes: { ...table.axes, dryAirFlow: [conditions.dryAirFlow] } };
  return factors.map((factor) =>
    attempt(() => {
      const dryAirFlow = factor * conditions.dryAirFlow;
      const { total, sensible } = expectedCapacity(here, { ...conditions, dryAirFlow }, installation);
      return answer(factor, dryAirFlow, total, sensible, stated > 1 ? 'makersTable' : 'flowCurve');
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
      const step = flowFactor(factor);
      const total = duty.total * step;
      const air = leavingAir({ ...duty, dryAirFlow, total }, bypassAtFlow(bypassFactor, factor));
      return answer(factor, dryAirFlow, total, air?.sensible ?? null, 'coilModel');
    }),
  );
}

/** The published flow curve at a share of the airflow here. Throws `outsideTable` beyond what the curves cover. */
function flowFactor(factor: number): number {
  const one: RatingTable = {
    from: 'generic',
    basis: 'gross',
    blowerPower: 0,
    axes: { outdoorDryBulb: [], enteringWetBulb: [], enteringDryBulb: [], dryAirFlow: [1] },
    total: [1],
    sensible: null,
    power: null,
    band: 0,
  };
  const step = airflowStep(one, factor);
  if (step.outside) throw new CalcError('outsideTable', 'factor', factor, 0.7, 1.3);
  return step.factor;
}

function answer(
  factor: number,
  dryAirFlow: number,
  total: number,
  sensible: number | null,
  source: SourceKey,
): AtAirflow {
  const most = sensible === null ? null : Math.min(sensible, total);
  return { factor, dryAirFlow, total, sensible: most, sensibleHeatRatio: most === null ? null : most / total, source };
}
