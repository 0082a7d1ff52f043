/** An airflow as this sheet writes it. */
import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { inUnitOf, joined, ofKind, percent, type Shown } from '../show.ts';

export function flowText({ volumeFlow }: { readonly volumeFlow: number }): string {
  return joined(ofKind('volumeFlow', volumeFlow));
}

/** The dry-air flow as so much standard air. */
export const standardText = (dryAirFlow: number) => flowText({ volumeFlow: standardVolumeFlow(dryAirFlow) });

/** Twice the standard uncertainty, as it stands behind an airflow. */
export const sureText = (u: number) => `±${percent(2 * u)}`;

/** A share with one decimal. */
export const fine = (share: number): Shown => inUnitOf(share, 'percent', 1);
export const percentFine = (share: number) => joined(fine(share));
