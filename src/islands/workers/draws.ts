/** Draws a whole test many times, off the page: the test comes in, its ranges go out. */
import { type SimulatedAssessment, simulateAssessment } from '../../calc/confidence/simulateAssessment.ts';
import type { Test } from '../../calc/types.ts';

export interface Ask {
  readonly ticket: number;
  readonly test: Test;
  readonly draws: number;
  readonly seed: number;
}

export interface Answer {
  readonly ticket: number;
  /** `null`: it cannot be drawn. */
  readonly drawn: SimulatedAssessment | null;
}

addEventListener('message', ({ data: { ticket, test, draws, seed } }: MessageEvent<Ask>) => {
  const found = simulateAssessment(test, { draws, seed });
  postMessage({ ticket, drawn: found.ok ? found.value : null } satisfies Answer);
});
