import { standardAirDensity } from '../constants.ts';
import type { Airflow } from '../dryAirFlow.ts';
import { CalcError } from '../errors.ts';
import { amount } from '../trace.ts';
import type { Remark, Trace } from '../types.ts';
import { traceMean } from './combineTrace.ts';
import { covarianceOf, mergedSources } from './covariance.ts';
import { type Disagreement, disagreementsOf } from './disagreement.ts';
import { type AirflowFound, type AirflowSource, remark } from './found.ts';
import { chiSquareAllowed, dot, leastWeights, solve } from './leastSquares.ts';
import type { AirflowMethod } from './methods.ts';

/** Why an answer does not count in the mean. */
export type LeftOut = 'setting' | 'partial' | 'otherSpeed' | 'speedUnsure';

export interface Weighed {
  readonly method: AirflowMethod;
  /** kg/s. */
  readonly dryAirFlow: number;
  /** Standard uncertainty, a fraction. */
  readonly u: number;
  readonly weight: number;
}

/** The mean of several methods, as standard air. */
export interface CombinedAirflow extends Airflow {
  readonly dryAirFlow: number;
  /** Standard uncertainty of the mean, a fraction, widened where the methods disagree. */
  readonly u: number;
  /** The causes of all methods as they reach the mean; a shared one once. */
  readonly sources: readonly AirflowSource[];
  readonly weighed: readonly Weighed[];
  readonly leftOut: readonly { readonly method: AirflowMethod; readonly why: LeftOut }[];
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  /** The most that χ² should come to, nineteen times in twenty. */
  readonly allowed: number;
  readonly consistent: boolean;
  /** What the uncertainty was multiplied by: √(χ²/ν), never below 1. */
  readonly birge: number;
  readonly disagreements: readonly Disagreement[];
  readonly remarks: readonly Remark[];
}

/**
 * Several answers as one: the mean with the least variance, over complete evidence on the cooling speed. Causes of one name are
 * one cause, so answers that share a gauge are correlated and their mean is no better than the gauge. Relative uncertainties
 * count, at the common mean: a low answer gets no weight for being low. Where the answers scatter more than their uncertainties
 * allow the result is widened by the Birge ratio. Throws a `CalcError` `noEvidence` where nothing is left to count, `repeatedRow`
 * for one method twice. JCGM 100, `birgeRatio`.
 */
export function combineAirflows(answers: readonly AirflowFound[], t?: Trace): CombinedAirflow {
  const repeated = answers.findIndex(({ method }, i) => answers.findIndex((one) => one.method === method) < i);
  if (repeated >= 0) throw new CalcError('repeatedRow', 'methods', repeated, 0, answers.length - 1);
  const leftOut = answers.flatMap((answer) => {
    const why = reasonToLeaveOut(answer);
    return why ? [{ method: answer.method, why }] : [];
  });
  const counted = answers.filter((answer) => reasonToLeaveOut(answer) === null);
  if (counted.length === 0) throw new CalcError('noEvidence', 'methods', 0, 1, answers.length);
  const covariance = covarianceOf(counted);
  const weights = leastWeights(covariance);
  const flows = counted.map((answer) => answer.dryAirFlow);
  const mean = dot(flows, weights);
  const off = flows.map((flow) => flow / mean - 1);
  const degreesOfFreedom = counted.length - 1;
  const chiSquare = Math.max(0, dot(solve(covariance, off), off));
  const birge = degreesOfFreedom === 0 ? 1 : Math.max(1, Math.sqrt(chiSquare / degreesOfFreedom));
  const u =
    birge *
    Math.sqrt(
      dot(
        covariance.map((row) => dot(row, weights)),
        weights,
      ),
    );
  const allowed = chiSquareAllowed(degreesOfFreedom);
  const consistent = chiSquare <= allowed;
  if (t) traceMean(counted, weights, { mean, chiSquare, degreesOfFreedom, birge, u }, t);
  return {
    volumeFlow: mean / standardAirDensity,
    at: 'standard',
    dryAirFlow: mean,
    u,
    sources: mergedSources(counted, weights, birge),
    weighed: counted.map((answer, i) => ({
      method: answer.method,
      dryAirFlow: answer.dryAirFlow,
      u: answer.u,
      weight: weights[i] as number,
    })),
    leftOut,
    chiSquare,
    degreesOfFreedom,
    allowed,
    consistent,
    birge,
    disagreements: disagreementsOf(counted, off, covariance),
    remarks: remarksOf(consistent, birge, degreesOfFreedom),
  };
}

function reasonToLeaveOut({ evidence, partial, speed }: AirflowFound): LeftOut | null {
  if (!evidence) return 'setting';
  if (speed !== 'cooling') return speed === 'other' ? 'otherSpeed' : 'speedUnsure';
  return partial ? 'partial' : null;
}

function remarksOf(consistent: boolean, birge: number, degreesOfFreedom: number): readonly Remark[] {
  if (degreesOfFreedom === 0) return [remark('oneMethodOnly', 'note')];
  if (!consistent) return [remark('airflowsDisagree', 'doubt', amount('B', 'ratio', birge))];
  return birge > 1 ? [remark('airflowsScatter', 'note', amount('B', 'ratio', birge))] : [];
}
