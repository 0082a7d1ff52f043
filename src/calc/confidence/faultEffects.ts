import type { SourceKey } from '../sources.ts';

/** What a fault of a stated size leaves of the capacity in published work, as a band of all the conditions published. */
export interface FaultEffect {
  readonly code: string;
  /** The size of the fault, as its source counts it. */
  readonly size: number;
  readonly low: number;
  readonly high: number;
  readonly source: SourceKey;
}

/**
 * Bands from one heat pump in a laboratory and from regressions of laboratory data, 82 to 115 °F outdoors. Other machines
 * differ: each figure is worth about ±0.05, and none is a diagnosis.
 */
export const faultEffects: readonly FaultEffect[] = [
  { code: 'indoorAirflow', size: 0.2, low: 0.862, high: 0.966, source: 'flowCurve' },
  { code: 'outdoorAirflow', size: 0.3, low: 0.955, high: 0.967, source: 'faultModels' },
  { code: 'outdoorAirflow', size: 0.5, low: 0.902, high: 0.922, source: 'faultModels' },
  { code: 'undercharge', size: 0.1, low: 0.951, high: 0.97, source: 'chargeFaults' },
  { code: 'undercharge', size: 0.2, low: 0.885, high: 0.919, source: 'chargeFaults' },
  { code: 'undercharge', size: 0.3, low: 0.796, high: 0.854, source: 'chargeFaults' },
  { code: 'restriction', size: 0.1, low: 0.955, high: 0.98, source: 'faultModels' },
  { code: 'restriction', size: 0.2, low: 0.873, high: 0.922, source: 'faultModels' },
  { code: 'nonCondensables', size: 0.3, low: 1.002, high: 1.035, source: 'faultModels' },
];
