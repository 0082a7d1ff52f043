import { type Results, type Sure, sureOf, verdictOf } from './confidence/sure.ts';
import { expectedHere, ratingHere } from './expectedHere.ts';
import { type Measured, measure, measuredPart, neverThrowing } from './measured.ts';
import { attempt, orNull } from './outcome.ts';
import { probeSpread } from './probeSpread.ts';
import { ratioOf } from './ratio.ts';
import { remarksOf } from './remarks.ts';
import { corrected } from './sideBySide.ts';
import type { Assessment, Test, Trace } from './types.ts';

/**
 * Everything that can be said of a test, each part as an `Outcome`: its value, or the fields that it still waits for, or the
 * `Problem` in its way. Never throws, whatever is put in; a test that is no test has the problem `unreadable`. Fields in
 * `waiting`: `entering.dryBulb`, `entering.humidity`, `leaving.dryBulb`, `leaving.humidity`, `airflow.volumeFlow`,
 * `outdoorDryBulb`, `rating`, `rating.certified` and `rating.generic` (published curves), `fullSpeed`.
 *
 * The readings are corrected by the side-by-side check first. Measured and expected are compared net: this system's own blower
 * heat is taken off a load measured without it. Ranges and the verdict are to first order. With a trace every result opens
 * into its steps; those of the two states of the air carry `entering.` and `leaving.` in front.
 */
export function assess(test: Test, t?: Trace): Assessment {
  return neverThrowing(() => assessed(corrected(test), t));
}

/** Measured, expected and the ratio without a range, of a test whose readings are corrected. */
export function resultsOf(test: Test, t?: Trace): Results {
  const measured = measure(test, t);
  const { entering, flow, blower, load } = measured;
  const rating = ratingHere(test, entering, flow, t);
  const expected = expectedHere(rating, t);
  return { ...measured, rating, expected, ratio: ratioOf(load, expected, orNull(blower) ?? 0, t) };
}

function assessed(test: Test, t?: Trace): Assessment {
  const results = resultsOf(test, t);
  return assessmentOf(test, results, sureOf(test, results));
}

/** The assessment that results and their certainty make. */
export function assessmentOf(test: Test, results: Results, sure: Sure): Assessment {
  const { rating, expected } = results;
  const facts = {
    ...measuredFacts(test, results),
    rating: orNull(rating),
    expected: orNull(expected),
    ratio: orNull(sure.ratio),
  };
  const remarks = remarksOf(facts);
  const verdict = verdictOf(test, sure, rating, remarks);
  return { ...measuredPart(test, results), expected, ...sure, verdict, remarks };
}

/** What the measured half says to those who make remarks. */
function measuredFacts(test: Test, { entering, leaving, flow, load }: Measured) {
  const spread = entering.ok && leaving.ok ? attempt(() => probeSpread(test, entering.value, leaving.value)) : null;
  return {
    test,
    entering: orNull(entering),
    leaving: orNull(leaving),
    spread: spread && orNull(spread),
    flow: orNull(flow),
    load: orNull(load),
  };
}
