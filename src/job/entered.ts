/** What the fields of a job say, read. */
import { standardPressure } from '../calc/index.ts';
import type { QuantityKey } from './quantities.ts';
import { type Read, type ReadContext, read } from './read.ts';
import type { Job, System } from './types.ts';
import { units } from './units.ts';

/** What was typed for a quantity, read. */
export function readEntered(job: Job, key: QuantityKey, context?: ReadContext): Read {
  const entered = job.entered[key];
  return entered === undefined ? { state: 'empty' } : read(entered.text, key, entered.unit, context);
}

/** The SI value, or `null` when nothing usable was typed. */
export function siOf(reading: Read): number | null {
  return reading.state === 'read' ? reading.si : null;
}

export function entered(job: Job, key: QuantityKey): number | null {
  return siOf(readEntered(job, key));
}

/** Pressure at the site, Pa: an instrument's there, else that of the height above sea level, which counts as zero when empty. */
export function sitePressure(job: Job): number {
  return entered(job, 'barometer') ?? standardPressure(entered(job, 'altitude') ?? 0);
}

/**
 * The system that the job was typed in, by its temperatures. What an unanswered question means may depend on it, and never on
 * the system that a page happens to show: so that a job means the same to everyone.
 */
export function systemOf(job: Job): System {
  const typed = job.entered.outdoorDryBulb ?? job.entered['entering.dryBulb'] ?? job.entered['leaving.dryBulb'];
  return typed !== undefined && units[typed.unit] === units.degC ? 'si' : 'ip';
}
