/** Reads a pasted text here, or a large one and every file in a worker, so that nothing stands still under a finger. */
import type { Imported, Said } from '~/job/tableImport/index.ts';
import { importLimits } from '~/job/tableImport/limits.ts';
import type { Answer, Ask, OnTheWay } from '../workers/tableImport.ts';

export type Source = string | Blob;

/** Text that is read within a few ms. */
const small = 20_000;

let worker: Worker | null = null;
let sent: Source | null = null;
let ticket = 0;
let waiting: ((answer: Imported | null) => void) | null = null;
let onLines: (lines: number) => void = () => {};

/** Whether a source is read by the worker, so that somebody may wait for it. */
export const isLarge = (source: Source) => typeof source !== 'string' || source.length > small;

/** Stops what is being read, at once. */
export function stopReading(): void {
  worker?.terminate();
  worker = null;
  sent = null;
  waiting?.(null);
  waiting = null;
}

/** What was made of it, `tellLines` hearing on the way of how many lines it is; `null` where it could not be read, or where something newer was asked for meanwhile. */
export async function readSource(
  source: Source,
  said: Said,
  tellLines: (lines: number) => void,
): Promise<Imported | null> {
  waiting?.(null);
  waiting = null;
  if (typeof source !== 'string' && source.size > importLimits.bytes) {
    return { ok: false, code: 'tooLong', count: source.size };
  }
  if (typeof source === 'string' && !isLarge(source)) {
    const { importTable } = await import('~/job/tableImport/index.ts');
    return importTable(source, said);
  }
  onLines = tellLines;
  return askWorker(source, said);
}

function askWorker(source: Source, said: Said): Promise<Imported | null> {
  worker ??= started();
  ticket++;
  const ask: Ask = { ticket, said, ...(source === sent ? {} : { source }) };
  sent = source;
  return new Promise((resolve) => {
    waiting = resolve;
    worker?.postMessage(ask);
  });
}

function started(): Worker {
  const fresh = new Worker(new URL('../workers/tableImport.ts', import.meta.url), { type: 'module' });
  fresh.onmessage = ({ data }: MessageEvent<Answer | OnTheWay>) => {
    if (data.ticket !== ticket) return;
    if ('lines' in data) onLines(data.lines);
    else waiting?.(data.imported);
  };
  fresh.onerror = () => {
    worker = null;
    sent = null;
    waiting?.(null);
  };
  return fresh;
}
