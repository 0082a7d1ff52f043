import { amount } from './trace.ts';
import type { RatingTable, Trace } from './types.ts';

/** Capacity over the air mass flow ratio f: 0.8 + 0.2·f, 1 at the flow of the table. */
const flowCurve = { fixed: 0.8, perFlow: 0.2 } as const;
/** Flow ratios that the published curves are taken for. */
const flowRange = [0.7, 1.3] as const;

export interface AirflowStep {
  /** Measured over stated dry-air flow; 1 where the step does not apply. */
  readonly ratio: number;
  readonly factor: number;
  readonly outside: boolean;
}

const none: AirflowStep = { ratio: 1, factor: 1, outside: false };

/**
 * What another airflow than the table's makes of the capacity. Only for a table that stands for exactly one dry-air flow
 * (with two or more the table itself is read between them), and only when the flow here is known. The published curves are
 * for the mass flow and for the capacity without blower heat. They do not agree: at 80 % flow this one gives 0.960, six
 * others 0.954 to 0.966, and one regression of laboratory faults 0.862. Source: see `flowCurve` in the bibliography.
 */
export function airflowStep(table: RatingTable, dryAirFlow: number | undefined): AirflowStep {
  const [stated, second] = table.axes.dryAirFlow;
  if (stated === undefined || second !== undefined || dryAirFlow === undefined) return none;
  const ratio = dryAirFlow / stated;
  if (Math.abs(ratio - 1) < 1e-9) return none;
  const outside = ratio < flowRange[0] - 1e-9 || ratio > flowRange[1] + 1e-9;
  return { ratio, factor: flowCurve.fixed + flowCurve.perFlow * ratio, outside };
}

/** The dry-air flows, kg/s, that the curves cover around the one that a table states. */
export function flowCovered(stated: number): readonly [number, number] {
  return [flowRange[0] * stated, flowRange[1] * stated];
}

/** The working of the step; `before` is the capacity at the table's own flow, W. */
export function traceAirflowStep(table: RatingTable, dryAirFlow: number, step: AirflowStep, before: number, t: Trace) {
  const ratio = amount('f', 'ratio', step.ratio);
  t({
    id: 'expectation.flowRatio',
    equation: 'f = ṁ/ṁᵣ',
    puts: [amount('ṁ', 'massFlow', dryAirFlow), amount('ṁᵣ', 'massFlow', table.axes.dryAirFlow[0] as number)],
    gives: ratio,
    source: 'definition',
  });
  t({
    id: 'expectation.airflow',
    equation: 'Q₂ = Q·(k₀ + k₁·f)',
    puts: [
      amount('Q', 'power', before),
      amount('k₀', 'ratio', flowCurve.fixed),
      amount('k₁', 'ratio', flowCurve.perFlow),
      ratio,
    ],
    gives: amount('Q₂', 'power', before * step.factor),
    source: 'flowCurve',
  });
}
