/**
 * The measured half of an assessment: what follows from the two probes and the airflow alone. `assess` builds on it; a page
 * that has fetched no more than this can show its first figure.
 */
import { blowerHere } from './blowerHere.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import { hangTogether } from './hangTogether.ts';
import { flowOf, type MeasuredFlow } from './measuredFlow.ts';
import { measuredLoad } from './measuredLoad.ts';
import { noRanges } from './measuredRanges.ts';
import { attempt, type Failure, orNull, waitingFor } from './outcome.ts';
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

/** The parts of an assessment that the measured half fills. */
export function measuredPart(test: Test, { pressure, entering, leaving, flow, load }: Measured) {
  const known = { test, entering: orNull(entering), leaving: orNull(leaving), load: orNull(load) };
  return {
    pressure: orNull(pressure) ?? standardPressureAtSeaLevel,
    entering,
    leaving,
    measured: load,
    checks: hangTogether({ ...known, dryAirFlow: orNull(flow)?.dryAirFlow ?? null }),
  } satisfies Partial<Assessment>;
}

/**
 * The assessment as far as it goes without the rating, ranges and remarks: its other parts are not there and wait for nothing
 * that could be named. Never throws. `assess` gives the same, and the rest.
 */
export function assessMeasured(read: Test): Assessment {
  return neverThrowing(() => {
    const test = corrected(read);
    const rest = waitingFor();
    const none = { ranges: noRanges, improvements: [], remarks: [] };
    return { ...measuredPart(test, measure(test)), expected: rest, ratio: rest, verdict: rest, ...none };
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
