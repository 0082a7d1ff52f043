/** Places, airs and figures of the surface in words, in the system of the page. */
import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import type { Air, Place, SurfaceQuantity } from '~/charts/surface/reading.ts';
import { amountText, scaleOf } from '~/charts/surface/scale.ts';
import { differenceUnit, displayUnit, toSi } from '~/job/units.ts';
import { placeWords, surfaceNames } from '~/words/en/expected.ts';
import { system } from '../jobStore.ts';
import { inUnitOf, joined, ofKind, temperature } from '../show.ts';

export const placeText = ({ outdoorDryBulb, enteringWetBulb }: Place): string =>
  placeWords.at(temperature(outdoorDryBulb), temperature(enteringWetBulb));

export const flowText = (dryAirFlow: number): string => joined(ofKind('volumeFlow', standardVolumeFlow(dryAirFlow)));

/** "1,200 cfm, 75.0 °F dry bulb", what there is of it. */
export function airText({ dryAirFlow, enteringDryBulb }: Air): string {
  return [
    dryAirFlow === undefined ? '' : flowText(dryAirFlow),
    enteringDryBulb === undefined ? '' : placeWords.dryBulb(temperature(enteringDryBulb)),
  ]
    .filter(Boolean)
    .join(', ');
}

/** A figure of a quantity with its unit; words where there is none. */
export const figure = (quantity: SurfaceQuantity, si: number | null): string =>
  si === null || Number.isNaN(si) ? placeWords.none : amountText(scaleOf(quantity, system.value), si);

export const nameOf = (quantity: SurfaceQuantity): string => surfaceNames[quantity];

/** One more of each: a degree of the page’s system, 100 cfm or 50 L/s. */
export function oneMore(axis: keyof Place | keyof Air): { readonly si: number; readonly text: string } {
  if (axis === 'dryAirFlow') {
    const [unit, size] = system.value === 'ip' ? (['cfm', 100] as const) : (['ls', 50] as const);
    const volumeFlow = toSi(size, unit);
    return { si: volumeFlow * (1 / standardVolumeFlow(1)), text: joined(inUnitOf(volumeFlow, unit)) };
  }
  const unit = differenceUnit(displayUnit.temperature[system.value]);
  return { si: toSi(1, unit), text: joined(inUnitOf(toSi(1, unit), unit, 0)) };
}
