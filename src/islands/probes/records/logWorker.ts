/** Loggers' records are read off the page: one worker for each thing that is done with them, and only the last answer counts. */
import { whenUntouched } from '../../untouched.ts';
import type { LogAsk, LogReply, LogTask } from '../../workers/log.ts';

/** Gives what asks the worker. `failed`: it could not go on; the next question starts it anew. */
export function logWorker(take: (reply: LogReply) => void, failed: () => void): (task: LogTask) => void {
  let worker: Worker | null = null;
  let ticket = 0;
  const started = () => {
    const fresh = new Worker(new URL('../../workers/log.ts', import.meta.url), { type: 'module' });
    fresh.onmessage = ({ data }: MessageEvent<LogReply>) => {
      if (data.ticket === ticket) whenUntouched(() => take(data));
    };
    fresh.onerror = () => {
      worker = null;
      failed();
    };
    return fresh;
  };
  return (task) => {
    worker ??= started();
    ticket++;
    worker.postMessage({ ticket, ...task } satisfies LogAsk);
  };
}
