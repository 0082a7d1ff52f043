/** Jobs in a file: JSON with the kind of file, its version, and the records. What comes in is hostile until it is read. */
import { inOrder } from './canonical.ts';
import { jobVersion, readJob } from './schema.ts';
import type { Job } from './types.ts';

export const fileKind = 'ton-for-ton jobs';
/** Characters; a job of every table filled is a hundredth of that. */
export const longestFile = 20_000_000;
const mostJobs = 5000;

/** `notAFile`: no file of jobs. `newer`: of a later version of the site. `broken`: one of its jobs breaks the rules. */
export type FileRefusal = 'notAFile' | 'newer' | 'broken' | 'tooLong';
export type ReadJobFile =
  | { readonly ok: true; readonly jobs: readonly Job[] }
  | {
      readonly ok: false;
      readonly reason: FileRefusal;
      /** Which of its jobs, from 1, where it is one of them. */
      readonly at?: number;
    };

export function writeJobFile(jobs: readonly Job[]): string {
  return JSON.stringify({ kind: fileKind, version: jobVersion, jobs }, null, 1);
}

/** The jobs of a file, all of them or none. Never throws, whatever the text. */
export function readJobFile(text: string): ReadJobFile {
  if (text.length > longestFile) return { ok: false, reason: 'tooLong' };
  const file = parsed(text);
  if (typeof file !== 'object' || file === null || !('kind' in file) || file.kind !== fileKind) {
    return { ok: false, reason: 'notAFile' };
  }
  if (!('version' in file) || typeof file.version !== 'number') return { ok: false, reason: 'notAFile' };
  if (file.version > jobVersion) return { ok: false, reason: 'newer' };
  if (!('jobs' in file) || !Array.isArray(file.jobs)) return { ok: false, reason: 'notAFile' };
  if (file.jobs.length > mostJobs) return { ok: false, reason: 'tooLong' };
  const jobs: Job[] = [];
  for (const [index, value] of file.jobs.entries()) {
    const found = readJob(value);
    if (!found.ok) return { ok: false, reason: found.reason === 'newer' ? 'newer' : 'broken', at: index + 1 };
    jobs.push(found.job);
  }
  return { ok: true, jobs };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

export interface Incoming {
  readonly fresh: readonly Job[];
  readonly same: readonly Job[];
  /** Kept here under the same name with other figures: they come as copies, and nothing is overwritten. */
  readonly differing: readonly Job[];
}

/** What a file would bring to the jobs that are kept. */
export function compared(jobs: readonly Job[], kept: readonly Job[]): Incoming {
  const here = new Map(kept.map((job) => [job.id, JSON.stringify(inOrder(job))]));
  const kindOf = (job: Job) => {
    const other = here.get(job.id);
    return other === undefined ? 'fresh' : other === JSON.stringify(inOrder(job)) ? 'same' : 'differing';
  };
  const of = (kind: keyof Incoming) => jobs.filter((job) => kindOf(job) === kind);
  return { fresh: of('fresh'), same: of('same'), differing: of('differing') };
}
