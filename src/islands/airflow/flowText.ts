/** An airflow as this sheet writes it. */
import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { formatNumber, unitLabel } from '~/job/format.ts';
import { displayUnit, fromSi } from '~/job/units.ts';
import { airflowSheet } from '~/words/en/airflowSheet.ts';
import { system } from '../jobStore.ts';
import { inUnitOf, joined, ofKind, type Shown } from '../show.ts';

interface Sure {
  readonly volumeFlow: number;
  readonly u: number;
}

export function flowText({ volumeFlow }: { readonly volumeFlow: number }): string {
  return joined(ofKind('volumeFlow', volumeFlow));
}

/** The dry-air flow as so much standard air. */
export const standardText = (dryAirFlow: number) => flowText({ volumeFlow: standardVolumeFlow(dryAirFlow) });

/** Nineteen times in twenty the airflow lies between these: two standard uncertainties on either side, m³/s. */
export const endsOf = ({ volumeFlow, u }: Sure): readonly [number, number] => [
  Math.max(0, volumeFlow * (1 - 2 * u)),
  volumeFlow * (1 + 2 * u),
];

/** Those ends as a person reads them, rounded outward, without a unit. */
export function endTexts(sure: Sure): readonly [string, string] {
  const unit = displayUnit.volumeFlow[system.value];
  const [low, high] = endsOf(sure);
  return [formatNumber(Math.floor(fromSi(low, unit)), 0), formatNumber(Math.ceil(fromSi(high, unit)), 0)];
}

/** "between 973 and 1,371 cfm". */
export function betweenText(sure: Sure): string {
  const [low, high] = endTexts(sure);
  return airflowSheet.between(low, `${high}\u00a0${unitLabel(displayUnit.volumeFlow[system.value])}`);
}

/** A share with one decimal. */
export const fine = (share: number): Shown => inUnitOf(share, 'percent', 1);
export const percentFine = (share: number) => joined(fine(share));
