/** The draws of one test after another, in a worker that lives as long as they take. */
import type { SimulatedAssessment } from '~/calc/confidence/simulateAssessment.ts';
import type { Test } from '~/calc/types.ts';
import { draws, seed } from './drawOptions.ts';
import type { Answer, Ask } from './workers/draws.ts';

/** What the draws of each test come to, in their order; `null` where there are none, or no workers here. */
export async function drawAll(tests: readonly Test[]): Promise<readonly (SimulatedAssessment | null)[]> {
  const worker = new Worker(new URL('./workers/draws.ts', import.meta.url), { type: 'module' });
  const found: (SimulatedAssessment | null)[] = [];
  for (const [ticket, test] of tests.entries()) {
    found.push(
      await new Promise<SimulatedAssessment | null>((resolve) => {
        worker.onmessage = ({ data }: MessageEvent<Answer>) => resolve(data.drawn);
        worker.onerror = () => resolve(null);
        worker.postMessage({ ticket, test, draws, seed } satisfies Ask);
      }),
    );
  }
  worker.terminate();
  return found;
}
