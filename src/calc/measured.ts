/**
 * The measured half of an assessment: what follows from the two probes and the airflow alone. `assess` builds on it; a page
 * that has fetched no more than this can show its first figure.
 */
import { airflowRules } from './airflowRemarks.ts';
import { airRules } from './airRemarks.ts';
import { blowerHere } from './blowerHere.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import { type Facts, type Rule, ranked, remarksBy } from './facts.ts';
import { hangTogether } from './hangTogether.ts';
import { flowOf, type MeasuredFlow } from './measuredFlow.ts';
import { measuredLoad } from './measuredLoad.ts';
import { noRanges } from './measuredRanges.ts';
import { attempt, type Failure, orNull, waitingFor } from './outcome.ts';
import { probeSpread } from './probeSpread.ts';
import { airOf, pressureOf } from './readings.ts';
import { corrected } from './sideBySide.ts';
import type { Assessment, CoilLoad, MoistAir, Outcome, Test, Trace } from './types.ts';

/** The parts that `assess` goes on from. */
export interface Measured {
  readonly pressure: Outcome<number>;
  readonly entering: Outcome<MoistAir>;
  readonly leaving: Outcome<MoistAir>;
  readonly flow: Outcome<MeasuredFlow>;
  /** Heat of this system's own blower, W. */
  readonly blower: Outcome<number>;
  readonly load: Outcome<CoilLoad>;
}

/** The remarks that need no rating, in the order in which they are made. */
export const measuredRules: readonly Rule[] = [...airRules, ...airflowRules];

/** What a test measures; the steps of the two states of the air carry `entering.` and `leaving.` in front. */
export function measure(test: Test, t?: Trace): Measured {
  const pressure = pressureOf(test, t);
  const entering = airOf('entering', test.entering, pressure, t);
  const leaving = airOf('leaving', test.leaving, pressure, t);
  const flow = flowOf(test, entering, leaving, t);
  const blower = attempt(
    () => blowerHere(test, orNull(flow)?.dryAirFlow ?? null, flow.ok ? t : undefined),
    () => 'blower.power',
  );
  const load = measuredLoad(test, entering, leaving, flow, blower, t);
  return { pressure, entering, leaving, flow, blower, load };
}

/** What is known for remarks when nothing is known of the rating. */
export function measuredFacts(test: Test, { entering, leaving, flow, load }: Measured): Facts {
  const spread = entering.ok && leaving.ok ? attempt(() => probeSpread(test, entering.value, leaving.value)) : null;
  return {
    test,
    entering: orNull(entering),
    leaving: orNull(leaving),
    spread: spread && orNull(spread),
    flow: orNull(flow),
    load: orNull(load),
    rating: null,
    expected: null,
    ratio: null,
  };
}

/** The parts of an assessment that the measured half fills. */
export function measuredPart(measured: Measured, facts: Facts) {
  const { pressure, entering, leaving, load } = measured;
  return {
    pressure: orNull(pressure) ?? standardPressureAtSeaLevel,
    entering,
    leaving,
    measured: load,
    checks: hangTogether({ ...facts, dryAirFlow: facts.flow?.dryAirFlow ?? null }),
  } satisfies Partial<Assessment>;
}

/**
 * The assessment as far as it goes without the rating: its other parts are not there and wait for nothing that could be
 * named. Never throws. `assess` gives the same, and the rest.
 */
export function assessMeasured(read: Test): Assessment {
  return neverThrowing(() => {
    const test = corrected(read);
    const measured = measure(test);
    const facts = measuredFacts(test, measured);
    const rest = waitingFor();
    const none = { ranges: noRanges, improvements: [] };
    const remarks = ranked(remarksBy(measuredRules, facts));
    return { ...measuredPart(measured, facts), expected: rest, ratio: rest, verdict: rest, ...none, remarks };
  });
}

/** An assessment whatever is put in: a test that is no test has the problem `unreadable` in every part. */
export function neverThrowing(work: () => Assessment): Assessment {
  try {
    return work();
  } catch {
    const problem = { code: 'unreadable', quantity: 'test', value: 0, min: 0, max: 0 };
    const none: Failure = { ok: false, waiting: [], problem };
    const parts = { entering: none, leaving: none, measured: none, expected: none, ratio: none, verdict: none };
    return {
      pressure: standardPressureAtSeaLevel,
      ...parts,
      ranges: noRanges,
      improvements: [],
      checks: [],
      remarks: [],
    };
  }
}
