/** The clocks of a job that waits until it is steady: times of its start, so that a locked or restarted phone loses nothing. */
import { steadyRule } from '../../calc/confidence/steadyRule.ts';
import type { Job } from '../types.ts';

/** s since 1970; `null`: not begun, not changed since it began. */
export interface SteadyClock {
  readonly startedAt: number | null;
  readonly changedAt: number | null;
  /** No window of readings begins before this. */
  readonly notBefore: number | null;
}

const seconds = (iso: string | undefined): number | null => {
  const time = iso === undefined ? Number.NaN : Date.parse(iso) / 1000;
  return Number.isFinite(time) ? time : null;
};

export function steadyClock({ notes }: Job): SteadyClock {
  const startedAt = seconds(notes['steady.startedAt']);
  const changed = seconds(notes['steady.changedAt']);
  const changedAt = changed !== null && changed > (startedAt ?? -Infinity) ? changed : null;
  const begun = changedAt ?? startedAt;
  return { startedAt, changedAt, notBefore: begun === null ? null : begun + steadyRule.settle };
}
