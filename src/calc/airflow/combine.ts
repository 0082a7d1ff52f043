import { standardAirDensity } from '../constants.ts';
import type { Airflow } from '../dryAirFlow.ts';
import { CalcError } from '../errors.ts';
import { amount } from '../trace.ts';
import type { Remark, Trace } from '../types.ts';
import { type DisagreementCode, usualReason } from './disagreement.ts';
import { type AirflowFound, type AirflowMethod, type AirflowSource, reaching, remark } from './found.ts';
import { chiSquareAllowed, dot, leastWeights, type Matrix, solve } from './leastSquares.ts';

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

/** Two answers farther apart than their uncertainties, and what usually explains it. */
export interface Disagreement {
  readonly high: AirflowMethod;
  readonly low: AirflowMethod;
  /** Their difference over the mean, and how many of its standard uncertainties that is. */
  readonly gap: number;
  readonly apart: number;
  readonly usual: DisagreementCode;
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

/** Two figures this many standard uncertainties apart disagree: 95 % of a normal distribution. */
const farApart = 1.96;

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
  const chiSquare = degreesOfFreedom === 0 ? 0 : Math.max(0, dot(solve(covariance, off), off));
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
    sources: sourcesOf(counted, weights, birge),
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

/** Relative covariances: causes of one name move all the answers that have them. */
function covarianceOf(answers: readonly AirflowFound[]): Matrix {
  const causes = answers.map(({ sources }) => new Map(sources.map((source) => [source.name, reaching(source)])));
  return causes.map((one) =>
    causes.map((other) => {
      let sum = 0;
      for (const [name, reach] of one) sum += reach * (other.get(name) ?? 0);
      return sum;
    }),
  );
}

function sourcesOf(answers: readonly AirflowFound[], weights: readonly number[], birge: number): AirflowSource[] {
  const merged = new Map<string, AirflowSource>();
  answers.forEach(({ sources }, i) => {
    for (const source of sources) {
      const before = merged.get(source.name);
      const { u } = before ?? source;
      const reach = (weights[i] as number) * birge * reaching(source);
      const airflow = (before?.moves.airflow ?? 0) + reach / u;
      merged.set(source.name, { ...(before ?? source), moves: { airflow } });
    }
  });
  return [...merged.values()].filter(({ moves }) => moves.airflow !== 0);
}

function disagreementsOf(
  answers: readonly AirflowFound[],
  off: readonly number[],
  covariance: Matrix,
): readonly Disagreement[] {
  const pairs = answers.flatMap((_, i) => answers.slice(i + 1).map((__, k) => [i, i + 1 + k] as const));
  const found = pairs.map(([i, j]): Disagreement => {
    const [high, low] = (off[i] as number) >= (off[j] as number) ? [i, j] : [j, i];
    const gap = (off[high] as number) - (off[low] as number);
    const u = Math.sqrt(covariance[i]![i]! + covariance[j]![j]! - 2 * covariance[i]![j]!);
    const [more, less] = [answers[high]!.method, answers[low]!.method];
    return { high: more, low: less, gap, apart: gap / u, usual: usualReason(more, less) };
  });
  return found.filter(({ apart }) => apart > farApart).sort((a, b) => b.apart - a.apart);
}

function remarksOf(consistent: boolean, birge: number, degreesOfFreedom: number): readonly Remark[] {
  if (degreesOfFreedom === 0) return [remark('oneMethodOnly', 'note')];
  if (!consistent) return [remark('airflowsDisagree', 'doubt', amount('B', 'ratio', birge))];
  return birge > 1 ? [remark('airflowsScatter', 'note', amount('B', 'ratio', birge))] : [];
}

interface Working {
  readonly mean: number;
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  readonly birge: number;
  readonly u: number;
}

function traceMean(answers: readonly AirflowFound[], weights: readonly number[], working: Working, t: Trace): void {
  const { mean, chiSquare, degreesOfFreedom, birge, u } = working;
  const flow = amount('ṁ', 'massFlow', mean);
  t({
    id: 'airflow.combined.mean',
    equation: 'ṁ = Σgᵢ·ṁᵢ',
    puts: answers.flatMap(({ method, dryAirFlow }, i) => [
      amount(`g(${method})`, 'fraction', weights[i] as number),
      amount(`ṁ(${method})`, 'massFlow', dryAirFlow),
    ]),
    gives: flow,
    source: 'leastSquares',
  });
  t({
    id: 'airflow.combined.birge',
    equation: 'B = max(1, √(χ²/ν))',
    puts: [amount('χ²', 'ratio', chiSquare), amount('ν', 'count', degreesOfFreedom)],
    gives: amount('B', 'ratio', birge),
    source: 'birgeRatio',
  });
  t({
    id: 'airflow.combined.uncertainty',
    equation: 'u = B·√(ΣΣgᵢ·gⱼ·uᵢⱼ)',
    puts: [amount('B', 'ratio', birge)],
    gives: amount('u', 'fraction', u),
    source: 'leastSquares',
  });
}
