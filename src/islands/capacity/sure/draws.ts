/**
 * The range by Monte Carlo beside the one to first order. A worker draws when the figures have come to rest and the page is
 * looked at; until it answers, and where there are no workers, first order stands alone.
 */
import { computed, effect, signal } from '@preact/signals';
import type { SimulatedAssessment } from '~/calc/confidence/simulateAssessment.ts';
import type { Test } from '~/calc/types.ts';
import { draws, seed } from '../../drawOptions.ts';
import { assessment, interpreted } from '../../store.ts';
import { whenUntouched } from '../../untouched.ts';
import type { Answer, Ask } from '../../workers/draws.ts';

/** Figures rest after that long without a change, ms. */
const rest = 700;

const found = signal<{ readonly of: Test; readonly drawn: SimulatedAssessment | null } | null>(null);

/** What the draws of these very figures came to; `null` until they have. */
export const drawn = computed(() => (found.value?.of === interpreted.value.test ? found.value.drawn : null));

let worker: Worker | null = null;
let ticket = 0;

function ask(test: Test): void {
  worker ??= started();
  worker.postMessage({ ticket: ++ticket, test, draws, seed } satisfies Ask);
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    // Nothing may move under a finger that is coming down.
    if (data.ticket === ticket) whenUntouched(() => (found.value = { of: test, drawn: data.drawn }));
  };
}

function started(): Worker {
  const fresh = new Worker(new URL('../../workers/draws.ts', import.meta.url), { type: 'module' });
  fresh.onerror = () => {
    worker = null;
  };
  return fresh;
}

/** Draws for as long as there is a share to draw for. Returns what ends it. */
export function keepDrawing(): () => void {
  const stop = effect(() => {
    const { test } = interpreted.value;
    if (!assessment.value.ratio.ok) return;
    const timer = setTimeout(() => whenSeen(() => ask(test)), rest);
    return () => clearTimeout(timer);
  });
  return () => {
    stop();
    worker?.terminate();
    worker = null;
  };
}

/** Now, or when the page is looked at again; of what was asked meanwhile the last only. */
let waiting: (() => void) | null = null;
function whenSeen(work: () => void): void {
  if (document.visibilityState === 'visible') {
    work();
    return;
  }
  if (!waiting) document.addEventListener('visibilitychange', seen, { once: true });
  waiting = work;
}

function seen(): void {
  waiting?.();
  waiting = null;
}
