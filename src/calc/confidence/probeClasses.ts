import { fahrenheitDegree } from '../units.ts';

/** Probes by class, half-widths. Common practice, no source: the data sheet outranks it. */
export const probeClasses = {
  ordinary: { dryBulb: 0.9 * fahrenheitDegree, relativeHumidity: 0.03, wetBulb: 0.9 * fahrenheitDegree },
  better: { dryBulb: 0.5 * fahrenheitDegree, relativeHumidity: 0.02, wetBulb: 0.5 * fahrenheitDegree },
  calibrated: { dryBulb: 0.3 * fahrenheitDegree, relativeHumidity: 0.01, wetBulb: 0.3 * fahrenheitDegree },
} as const;
