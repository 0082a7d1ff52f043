/** An airflow as this sheet writes it. */
import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { formatNumber } from '~/job/format.ts';
import { system } from '../jobStore.ts';
import { inUnitOf, joined, ofKind, percent } from '../show.ts';

/** To three figures: no method is surer than that. */
export function flowText({ volumeFlow }: { readonly volumeFlow: number }): string {
  return joined(ofKind('volumeFlow', volumeFlow));
}

/** The dry-air flow as so much standard air. */
export const standardText = (dryAirFlow: number) => flowText({ volumeFlow: standardVolumeFlow(dryAirFlow) });

/** Twice the standard uncertainty, as it stands behind an airflow. */
export const sureText = (u: number) => `±${percent(2 * u)}`;

/** A share with one decimal. */
export const percentFine = (share: number) => `${formatNumber(100 * share, 1)}\u00a0%`;

export const perCapacityUnit = () => (system.value === 'ip' ? 'cfmPerTon' : 'lsPerKw');
export const perCapacityText = (si: number) => joined(inUnitOf(si, perCapacityUnit(), 0));
