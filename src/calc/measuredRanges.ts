import type { Ranges } from './types.ts';

/** No range of anything that was measured. */
export const noRanges: Ranges = {
  total: null,
  sensible: null,
  latent: null,
  sensibleHeatRatio: null,
  condensate: null,
  dryAirFlow: null,
  temperatureDrop: null,
  supplyHumidity: null,
  apparatusDewPoint: null,
  bypassFactor: null,
};
