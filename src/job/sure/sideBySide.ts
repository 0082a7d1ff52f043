/** What the side-by-side check of a job says: from stamped readings where there are any, else from the differences typed. */
import { standards } from '../../calc/confidence/standards.ts';
import { given } from '../../calc/readings.ts';
import type { ProbeDifference, SideBySide } from '../../calc/types.ts';
import { chosen, said } from '../choices.ts';
import { entered } from '../entered.ts';
import { measuredHere } from '../readings.ts';
import type { Job } from '../types.ts';
import { joinSure } from './join.ts';
import { comparedIn, measureHere } from './pairs.ts';
import { heldIn } from './standards.ts';

joinSure();

/** `null`: not checked, or nothing typed of it yet. */
export function sideBySideOf(job: Job): SideBySide | null {
  if (said(job, 'sideBySide') !== 'yes') return null;
  const inReturn = comparedIn(job, 'return');
  const inSupply = comparedIn(job, 'supply');
  const returnAir = inReturn?.difference ?? inSupply?.difference ?? typedDifference(job);
  if (!returnAir) return null;
  return {
    returnAir,
    supplyAir: inSupply?.difference ?? null,
    reference: chosen(job, 'probes.reference') ?? 'neither',
    drift: driftOf(job, returnAir),
    shared: sharedOf(job, inSupply?.difference ?? returnAir),
  };
}

/** Typed as what the taped probe, the supply's, showed more; a test takes the return probe less the supply probe. */
function typedDifference(job: Job): ProbeDifference | null {
  const dryBulb = entered(job, 'sideBySide.dryBulb');
  const wet = measuredHere(job)[1] === 'wetBulb';
  const humidity = entered(job, wet ? 'sideBySide.wetBulb' : 'sideBySide.humidity');
  if (dryBulb === null) return null;
  return { dryBulb: -dryBulb, humidity: humidity === null ? null : -humidity, scatter: null };
}

/** How far the differences are from those of the beginning, once they were looked at again. */
function driftOf(job: Job, first: ProbeDifference): SideBySide['drift'] {
  const last = comparedIn(job, 'end')?.difference;
  if (!last) return null;
  const humidity = given(last.humidity) && given(first.humidity) ? Math.abs(last.humidity - first.humidity) : 0;
  return { dryBulb: Math.abs(last.dryBulb - first.dryBulb), humidity };
}

/**
 * What is left of the error that both share, where they were held against a standard: by what they showed there, or, where nobody
 * typed that, as having agreed with it. `difference`: of the probes, in the air that is nearest to the standards.
 */
function sharedOf(job: Job, difference: ProbeDifference): SideBySide['shared'] {
  const held = chosen(job, 'probes.humidityStandard') ?? 'none';
  const hasBath = chosen(job, 'probes.iceBath') === 'yes';
  if (held === 'none' && !hasBath) return null;
  const bath = heldIn(job, 'iceBath', difference);
  const humidity = heldIn(job, held === 'salt' ? 'salt' : 'aspirated', difference);
  return {
    dryBulb: hasBath ? (bath?.limit ?? standards.iceBath.limit) : null,
    humidity: held === 'none' ? null : (humidity?.limit ?? standards.aspirated.limit[measureHere(job)]),
    error: { dryBulb: bath?.correction ?? 0, humidity: humidity?.correction ?? 0 },
  };
}
