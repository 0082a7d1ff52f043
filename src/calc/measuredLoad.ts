import { coilLoad } from './coilLoad.ts';
import type { MeasuredFlow } from './measuredFlow.ts';
import { attempt, failureOf } from './outcome.ts';
import type { CoilLoad, MoistAir, Outcome, Test, Trace } from './types.ts';

/** What a test measures: the coil's load between its two probes, the blower where the test says it stands (heat in W). */
export function measuredLoad(
  test: Test,
  entering: Outcome<MoistAir>,
  leaving: Outcome<MoistAir>,
  flow: Outcome<MeasuredFlow>,
  blower: Outcome<number>,
  t?: Trace,
): Outcome<CoilLoad> {
  if (!entering.ok || !leaving.ok || !flow.ok || !blower.ok) return failureOf(entering, leaving, flow, blower);
  return attempt(() =>
    coilLoad(
      {
        entering: entering.value,
        leaving: leaving.value,
        dryAirFlow: flow.value.dryAirFlow,
        blower: { heat: blower.value, place: test.blower.place },
      },
      t,
    ),
  );
}
