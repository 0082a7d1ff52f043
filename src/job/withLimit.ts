import { withOwnUnit } from './edit.ts';
import type { Edit, Job, QuantityKey, UnitKey } from './types.ts';
import { differenceUnit } from './units.ts';

/** The edit for a ± typed with a reading, in the unit of the reading; '' takes it back, and the entry with it where nothing was read. */
export function withLimit(job: Job, key: QuantityKey, text: string, unit: UnitKey): Edit {
  const { limit: _, ...kept } = job.entered[key] ?? { text: '', unit, origin: 'typed' };
  if (text === '') return { slot: 'entered', key, to: kept.text === '' ? undefined : kept };
  const limit = kept.unit === unit ? text : withOwnUnit(text, differenceUnit(unit));
  return { slot: 'entered', key, to: { ...kept, limit } };
}
