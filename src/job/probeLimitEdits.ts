/** The edits of the limits of the probes. */
import type { Measured } from './readings.ts';
import type { Edit, Job, UnitKey } from './types.ts';
import { withLimit } from './withLimit.ts';

const places = ['entering', 'leaving'] as const;

/** The edits for a ± typed for both probes, in the unit of a reading; '' takes it back. */
export function limitEdits(job: Job, what: Measured, text: string, unit: UnitKey): readonly Edit[] {
  return places.map((place) => withLimit(job, `${place}.${what}`, text, unit));
}
