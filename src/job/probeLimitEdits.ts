/** The edits of the limits of the probes. */
import { withOwnUnit } from './edit.ts';
import type { Measured } from './readings.ts';
import type { Edit, Job, UnitKey } from './types.ts';
import { differenceUnit } from './units.ts';

const places = ['entering', 'leaving'] as const;

/** The edits for a ± typed for both probes, in the unit of a reading; '' takes it back. */
export function limitEdits(job: Job, what: Measured, text: string, unit: UnitKey): readonly Edit[] {
  return places.map((place): Edit => {
    const key = `${place}.${what}` as const;
    const { limit: _, ...kept } = job.entered[key] ?? { text: '', unit, origin: 'typed' };
    if (text === '') return { slot: 'entered', key, to: kept.text === '' ? undefined : kept };
    const limit = kept.unit === unit ? text : withOwnUnit(text, differenceUnit(unit));
    return { slot: 'entered', key, to: { ...kept, limit } };
  });
}
