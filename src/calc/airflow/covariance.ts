import { type AirflowFound, type AirflowSource, reaching } from './found.ts';
import type { Matrix } from './leastSquares.ts';

/** Relative covariances: causes of one name move all the answers that have them. */
export function covarianceOf(answers: readonly AirflowFound[]): Matrix {
  const causes = answers.map(({ sources }) => new Map(sources.map((source) => [source.name, reaching(source)])));
  return causes.map((one) =>
    causes.map((other) => {
      let sum = 0;
      for (const [name, reach] of one) sum += reach * (other.get(name) ?? 0);
      return sum;
    }),
  );
}

/** The causes of all answers as they reach a weighted mean that is widened by `birge`; a shared one once. */
export function mergedSources(
  answers: readonly AirflowFound[],
  weights: readonly number[],
  birge: number,
): AirflowSource[] {
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
