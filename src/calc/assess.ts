import { expectedHere, ratingHere } from './expectedHere.ts';
import { measure, measuredFacts, measuredPart, neverThrowing } from './measured.ts';
import { type Failure, lacking, orNull, waitingFor } from './outcome.ts';
import { ratioOf } from './ratio.ts';
import { given } from './readings.ts';
import { remarksOf } from './remarks.ts';
import type { Assessment, Outcome, Ratio, Remark, Test, Trace } from './types.ts';

/**
 * Everything that can be said of a test, each part as an `Outcome`: its value, or the fields that it still waits for, or the
 * `Problem` in its way. Never throws, whatever is put in; a test that is no test has the problem `unreadable`. Fields in
 * `waiting`: `entering.dryBulb`, `entering.humidity`, `leaving.dryBulb`, `leaving.humidity`, `airflow.volumeFlow`,
 * `outdoorDryBulb`, `rating`, `rating.certified` and `rating.generic` (published curves), `fullSpeed`, `range`.
 *
 * Measured and expected are compared net: this system's own blower heat is taken off a load measured without it. With a trace
 * every result opens into its steps; those of the two states of the air carry `entering.` and `leaving.` in front.
 */
export function assess(test: Test, t?: Trace): Assessment {
  return neverThrowing(() => assessed(test, t));
}

function assessed(test: Test, t?: Trace): Assessment {
  const measured = measure(test, t);
  const { entering, flow, blower, load } = measured;
  const rating = ratingHere(test, entering, flow, t);
  const expected = expectedHere(rating, t);
  const ratio = ratioOf(load, expected, orNull(blower) ?? 0, t);
  const facts = {
    ...measuredFacts(test, measured),
    rating: orNull(rating),
    expected: orNull(expected),
    ratio: orNull(ratio),
  };
  const remarks = remarksOf(facts);
  return { ...measuredPart(measured, facts), expected, ratio, verdict: verdictOf(test, ratio, remarks), remarks };
}

/** No verdict yet: something is missing, or a remark withholds it, or only the range of the ratio is still to be worked out. */
function verdictOf({ fullSpeed }: Test, ratio: Outcome<Ratio>, remarks: readonly Remark[]): Failure {
  const speed: Outcome<unknown> = given(fullSpeed) ? { ok: true, value: fullSpeed } : waitingFor('fullSpeed');
  const withheld = remarks.some(({ weight }) => weight === 'stop');
  return lacking(ratio, speed) ?? (withheld ? waitingFor() : waitingFor('range'));
}
