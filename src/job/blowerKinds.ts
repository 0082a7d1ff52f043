/** What a blower's power is assumed by where nobody has measured it: its motor, or the kind and the era of its rating. */
import type { BlowerKind } from '../calc/types.ts';
import { type ChoiceValue, chosen } from './choices.ts';
import type { Job } from './types.ts';

type Era = Exclude<ChoiceValue<'rating.era'>, 'unsure'>;

/** A furnace’s coil is rated without a blower; all other equipment with its own. */
const ratedKinds: Readonly<Record<Era, { readonly coilOnly: BlowerKind; readonly withBlower: BlowerKind }>> = {
  seer: { coilOnly: 'ratedCoilOnly', withBlower: 'ratedWithBlower' },
  seer2: { coilOnly: 'ratedCoilOnlySeer2', withBlower: 'ratedWithBlowerSeer2' },
};

export function blowerKindHere(job: Job): BlowerKind | null {
  const motor = chosen(job, 'blower.motor');
  if (motor === 'permanentSplit' || motor === 'electronic') return motor;
  return chosen(job, 'equipment.kind') === 'ductedMiniSplit' ? 'ductedMiniSplit' : null;
}

export function blowerKindRated(job: Job): BlowerKind | null {
  const era = chosen(job, 'rating.era');
  if (era === undefined || era === 'unsure') return null;
  const equipment = chosen(job, 'equipment.kind');
  if (equipment === undefined) return null;
  return ratedKinds[era][equipment === 'furnaceCoil' ? 'coilOnly' : 'withBlower'];
}
