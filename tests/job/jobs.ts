import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import type { Job, QuantityKey, UnitKey } from '../../src/job/types.ts';

type Chosen = Job['chosen'];
type Typed = Readonly<Partial<Record<QuantityKey, readonly [text: string, unit: UnitKey, limit?: string]>>>;

/** A job in which these texts were typed and these answers chosen. */
export function jobWith(typed: Typed, chosen: Chosen = {}): Job {
  const fields = Object.entries(typed).map(([key, [text, unit, limit]]) => ({
    slot: 'entered' as const,
    key: key as QuantityKey,
    to: { text, unit, origin: 'typed' as const, ...(limit === undefined ? {} : { limit }) },
  }));
  return { ...applyEdits(emptyJob('test'), fields), chosen };
}

/** Return air of a wet bulb and an outdoor temperature, both as typed in °F. */
export function atFahrenheit(outdoors: string, wetBulb: string, typed: Typed = {}, chosen: Chosen = {}): Job {
  const readings: Typed = {
    'entering.dryBulb': ['80', 'degF'],
    'entering.wetBulb': [wetBulb, 'degF'],
    outdoorDryBulb: [outdoors, 'degF'],
  };
  return jobWith({ ...readings, ...typed }, { humidityAs: 'wetBulb', ...chosen });
}
