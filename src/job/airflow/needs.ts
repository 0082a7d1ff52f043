/** What a method still waits for. */
import type { Outcome } from '../../calc/types.ts';
import { joinChoices } from '../choices.ts';
import { entered, readEntered } from '../entered.ts';
import { joinQuantities, type QuantityKey } from '../quantities.ts';
import type { Job } from '../types.ts';
import { airflowChoices } from './choices.ts';
import { airflowQuantities } from './quantities.ts';

joinQuantities(airflowQuantities);
joinChoices(airflowChoices);

/** The SI values of several fields, or the fields among them that hold nothing usable. */
export function allOf<Key extends QuantityKey>(
  job: Job,
  ...keys: readonly Key[]
): Outcome<Readonly<Record<Key, number>>> {
  const values = keys.map((key) => [key, entered(job, key)] as const);
  const waiting = values.flatMap(([key, value]) => (value === null ? [key] : []));
  if (waiting.length > 0) return { ok: false, waiting, problem: null };
  return { ok: true, value: Object.fromEntries(values) as Readonly<Record<Key, number>> };
}

/** The SI value of a field that may be left empty: `null` then. A figure that cannot be used is waited for, never passed over. */
export function optional(job: Job, key: QuantityKey): Outcome<number | null> {
  const typed = readEntered(job, key);
  if (typed.state === 'bad') return { ok: false, waiting: [key], problem: null };
  return { ok: true, value: typed.state === 'read' ? typed.si : null };
}
