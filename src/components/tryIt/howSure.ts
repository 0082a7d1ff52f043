import { cubicFootPerMinute, fahrenheitDegree, type Test } from '~/calc/index.ts';
import { checkedExample, example, ratioOf, verdictOf } from '~/components/mistakes/index.ts';
import { ahead, dial } from './ahead.ts';

/** The line of the invented test, a fraction. */
export const line = example.line;

/** What can be said of a range, in the order of the row's figure. */
export const outcomes = ['meets', 'short', 'cannotTell'] as const;

/** Less air than in the other examples, m³/s: what it makes lies well below the line, and still it takes good readings to say so. */
const volumeFlow = 1110 * cubicFootPerMinute;

/**
 * The invented test with probes to so many kelvin, with an airflow to so much of itself, and with the probes checked side by
 * side (1) or not (0): its share of what it should make, and the ends of the range that decide, fractions, and the
 * place of the outcome.
 */
export function rangeOf(
  dryBulb: number,
  airflow: number,
  isChecked: number,
): readonly [share: number, low: number, high: number, outcome: number] {
  const from = isChecked === 1 ? checkedExample : example;
  const test: Test = {
    ...from,
    probeLimits: { ...from.probeLimits, dryBulb },
    airflow: { ...from.airflow, volumeFlow, limit: airflow },
  };
  const { low, high, outcome } = verdictOf(test);
  return [ratioOf(test).value, low, high, outcomes.indexOf(outcome)];
}

export const howSure = ahead(
  [
    dial(0.3 * fahrenheitDegree, 1.8 * fahrenheitDegree, 0.3 * fahrenheitDegree, 0.9 * fahrenheitDegree),
    dial(0.03, 0.2, 0.01, 0.07),
    dial(0, 1, 1, 0),
  ],
  rangeOf,
);
