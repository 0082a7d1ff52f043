/** The list of a visit: when each step of the job was done. A tick notes the time; a clock is the time at which something began. */
import { steadyRule } from '../calc/confidence/steadyRule.ts';
import type { Edit, Job, NoteKey } from './types.ts';

/** In the order of the job. The clock of the test itself is the one that the probe sheet keeps. */
const visitKeys = {
  rating: 'visit.rating',
  running: 'steady.startedAt',
  probes: 'visit.probes',
  airflow: 'visit.airflow',
  placed: 'visit.placed',
  steady: 'visit.steady',
  read: 'visit.read',
  outdoors: 'visit.outdoors',
} as const satisfies Readonly<Record<string, NoteKey>>;

export type VisitItem = keyof typeof visitKeys;
export const visitItems = Object.keys(visitKeys) as readonly VisitItem[];

/** When an item was ticked, ISO 8601; `null` while it is not. */
export const tickedAt = ({ notes }: Job, item: VisitItem): string | null => notes[visitKeys[item]] ?? null;

/** The edits that tick an item now, or take its tick away. A test that begins anew has had no change yet. */
export function tick(job: Job, item: VisitItem, now: string): readonly Edit[] {
  const to = tickedAt(job, item) === null ? now : undefined;
  const clock: Edit = { slot: 'notes', key: visitKeys[item], to };
  return item === 'running' ? [clock, { slot: 'notes', key: 'steady.changedAt', to: undefined }] : [clock];
}

/** Before when it is not steady: some time after full speed began, or after the last change; `null` while nothing runs. */
export function notSteadyBefore({ notes }: Job): string | null {
  const begun = Date.parse(notes['steady.changedAt'] ?? notes['steady.startedAt'] ?? '');
  return Number.isNaN(begun) ? null : new Date(begun + steadyRule.settle * 1000).toISOString();
}
