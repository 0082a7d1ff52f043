import { blowerHere } from './blowers.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import { expectedHere, ratingHere } from './expectedHere.ts';
import { hangTogether } from './hangTogether.ts';
import { flowOf } from './measuredFlow.ts';
import { measuredLoad } from './measuredLoad.ts';
import { attempt, type Failure, lacking, orNull, waitingFor } from './outcome.ts';
import { probeSpread } from './probeSpread.ts';
import { ratioOf } from './ratio.ts';
import { airOf, given, pressureOf } from './readings.ts';
import { remarksOf } from './remarks.ts';
import type { Assessment, Outcome, Ratio, Remark, Test, Trace } from './types.ts';

/**
 * Everything that can be said of a test, each part as an `Outcome`: its value, or the fields that it still waits for, or the
 * `Problem` in its way. Never throws, whatever is put in; a test that is no test has the problem `unreadable`. Fields in
 * `waiting`: `entering.dryBulb`, `entering.humidity`, `leaving.dryBulb`, `leaving.humidity`, `airflow.volumeFlow`,
 * `outdoorDryBulb`, `rating`, `fullSpeed`, `range`.
 *
 * Measured and expected are compared net: this system's own blower heat is taken off a load measured without it. With a trace
 * every result opens into its steps; those of the two states of the air carry `entering.` and `leaving.` in front.
 */
export function assess(test: Test, t?: Trace): Assessment {
  try {
    return assessed(test, t);
  } catch {
    return unreadable();
  }
}

function assessed(test: Test, t?: Trace): Assessment {
  const pressure = pressureOf(test, t);
  const entering = airOf('entering', test.entering, pressure, t);
  const leaving = airOf('leaving', test.leaving, pressure, t);
  const flow = flowOf(test, entering, leaving, t);
  const dryAirFlow = orNull(flow)?.dryAirFlow ?? null;
  const blower = attempt(
    () => blowerHere(test, dryAirFlow, flow.ok ? t : undefined),
    () => 'blower.power',
  );
  const measured = measuredLoad(test, entering, leaving, flow, blower, t);
  const rating = ratingHere(test, entering, flow, t);
  const expected = expectedHere(rating, t);
  const ratio = ratioOf(measured, expected, orNull(blower) ?? 0, t);
  const known = { test, entering: orNull(entering), leaving: orNull(leaving), load: orNull(measured) };
  const spread = entering.ok && leaving.ok ? attempt(() => probeSpread(test, entering.value, leaving.value)) : null;
  const remarks = remarksOf({
    ...known,
    spread: spread && orNull(spread),
    flow: orNull(flow),
    rating: orNull(rating),
    expected: orNull(expected),
    ratio: orNull(ratio),
  });
  return {
    pressure: orNull(pressure) ?? standardPressureAtSeaLevel,
    entering,
    leaving,
    measured,
    expected,
    ratio,
    verdict: verdictOf(test, ratio, remarks),
    checks: hangTogether({ ...known, dryAirFlow }),
    remarks,
  };
}

/** No verdict yet: something is missing, or a remark withholds it, or only the range of the ratio is still to be worked out. */
function verdictOf({ fullSpeed }: Test, ratio: Outcome<Ratio>, remarks: readonly Remark[]): Failure {
  const speed: Outcome<unknown> = given(fullSpeed) ? { ok: true, value: fullSpeed } : waitingFor('fullSpeed');
  const withheld = remarks.some(({ weight }) => weight === 'stop');
  return lacking(ratio, speed) ?? (withheld ? waitingFor() : waitingFor('range'));
}

function unreadable(): Assessment {
  const problem = { code: 'unreadable', quantity: 'test', value: 0, min: 0, max: 0 };
  const none: Failure = { ok: false, waiting: [], problem };
  return {
    pressure: standardPressureAtSeaLevel,
    entering: none,
    leaving: none,
    measured: none,
    expected: none,
    ratio: none,
    verdict: none,
    checks: [],
    remarks: [],
  };
}
