import { probeClasses } from './confidence/probeClasses.ts';
import type { Test } from './testTypes.ts';

/**
 * A test of which nothing was said yet: spread it, and put in what was read. What `assess` still waits for it names. Ordinary
 * probes, the line at 0.9 and nine chances in ten are ours (common practice, no source).
 */
export const emptyTest: Test = {
  entering: { dryBulb: null, relativeHumidity: null, wetBulb: null },
  leaving: { dryBulb: null, relativeHumidity: null, wetBulb: null },
  airflow: { volumeFlow: null, place: 'unsure', kind: 'unsure', limit: null, sources: null },
  altitude: null,
  barometer: null,
  outdoorDryBulb: null,
  fullSpeed: null,
  rating: null,
  lineSet: null,
  blower: { place: 'after coil', power: null, kind: null },
  nominalCapacity: null,
  line: 0.9,
  probeLimits: probeClasses.ordinary,
  otherLimits: null,
  sideBySide: null,
  supplyPoints: [],
  scatter: [],
  confidence: 0.9,
};
