import type { SourceKey } from './sources.ts';
import type { BlowerKind } from './types.ts';

interface BlowerDefault {
  /** W for each 1000 cubic feet a minute of standard air. */
  readonly power: number;
  readonly source: SourceKey;
}

/**
 * What a blower draws where nobody has measured it. The first five stand for the blower inside a rating, by the era and the
 * kind of rating; the others for one in the field, by its motor.
 */
export const blowerDefaults: Readonly<Record<BlowerKind, BlowerDefault>> = {
  ratedCoilOnly: { power: 365, source: 'blowerDefault' },
  ratedCoilOnlySeer2: { power: 441, source: 'blowerSeer2' },
  ratedMobileHomeSeer2: { power: 406, source: 'blowerSeer2' },
  ratedWithBlower: { power: 250, source: 'blowerField' },
  ratedWithBlowerSeer2: { power: 281, source: 'blowerField' },
  permanentSplit: { power: 500, source: 'blowerField' },
  electronic: { power: 375, source: 'blowerField' },
  ductedMiniSplit: { power: 180, source: 'blowerField' },
};
