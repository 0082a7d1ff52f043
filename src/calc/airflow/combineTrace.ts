import { amount } from '../trace.ts';
import type { Trace } from '../types.ts';
import type { AirflowFound } from './found.ts';

/** What a mean was worked out to. */
interface Working {
  readonly mean: number;
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  readonly birge: number;
  readonly u: number;
}

/** The working of `combineAirflows`. */
export function traceMean(
  answers: readonly AirflowFound[],
  weights: readonly number[],
  working: Working,
  t: Trace,
): void {
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
