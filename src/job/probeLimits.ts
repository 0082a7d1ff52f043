/** The limits of the probes: a ± stands with the readings it was typed for, and one figure holds for both probes. */
import { probeClasses } from '../calc/confidence/probeClasses.ts';
import { type Read, readLimit } from './read.ts';
import type { Measured } from './readings.ts';
import type { Job } from './types.ts';
import { differenceUnit } from './units.ts';

const places = ['entering', 'leaving'] as const;

const possible: Readonly<Record<Measured, readonly [number, number]>> = {
  dryBulb: [0.01, 5],
  relativeHumidity: [0.001, 0.2],
  wetBulb: [0.01, 5],
};

/** The ± typed for each probe, read. */
export function readProbeLimits(job: Job, what: Measured): readonly { readonly key: string; readonly read: Read }[] {
  return places.map((place) => {
    const { limit = '', unit } = job.entered[`${place}.${what}`] ?? {};
    const reading: Read =
      unit === undefined ? { state: 'empty' } : readLimit(limit, differenceUnit(unit), possible[what]);
    return { key: `${place}.${what}.limit`, read: reading };
  });
}

/** The half-width that holds for both probes, SI: the wider of the two, the usual one where none was typed. */
export function probeLimit(job: Job, what: Measured): { readonly si: number; readonly assumed: boolean } {
  const typed = readProbeLimits(job, what).flatMap(({ read }) => (read.state === 'read' ? [read.si] : []));
  const assumed = typed.length < places.length;
  return { si: Math.max(...typed, ...(assumed ? [probeClasses.ordinary[what]] : [])), assumed };
}
