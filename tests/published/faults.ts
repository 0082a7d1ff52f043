/** The published effects of faults: the ends of each band in use are the lowest and the highest figure of its sources. */
import { faultEffects } from '../../src/calc/confidence/faultEffects.ts';
import type { Check } from './check.ts';

const charge =
  'NIST TN 1848, Y = 1 + (a₁ + a₂·t_in + a₃·t_out + a₄·F)·F, coefficients as two open libraries carry them';
const models = 'NREL/SR-5500-65030, fault models as the open measures carry them, 82, 95 and 115 °F outdoors';

/** Fault, size, end of the band, capacity ratio, source. */
const rows = [
  ['undercharge', 0.1, 'low', 0.9512, models],
  ['undercharge', 0.1, 'high', 0.9701, charge],
  ['undercharge', 0.2, 'low', 0.8847, models],
  ['undercharge', 0.2, 'high', 0.919, models],
  ['undercharge', 0.3, 'low', 0.7957, charge],
  ['undercharge', 0.3, 'high', 0.854, models],
  ['outdoorAirflow', 0.3, 'low', 0.9547, models],
  ['outdoorAirflow', 0.3, 'high', 0.967, models],
  ['outdoorAirflow', 0.5, 'low', 0.9017, models],
  ['outdoorAirflow', 0.5, 'high', 0.9222, models],
  ['restriction', 0.1, 'low', 0.9554, models],
  ['restriction', 0.1, 'high', 0.98, models],
  ['restriction', 0.2, 'low', 0.8728, models],
  ['restriction', 0.2, 'high', 0.922, models],
  ['nonCondensables', 0.3, 'low', 1.0017, models],
  ['nonCondensables', 0.3, 'high', 1.0353, models],
  ['indoorAirflow', 0.2, 'low', 0.862, models],
  ['indoorAirflow', 0.2, 'high', 0.966, 'six published cooling curves at 80 % of the airflow'],
] as const;

export const checks: readonly Check[] = rows.map(([code, size, end, expected, source]) => ({
  title: `Capacity with ${code} of ${size}: ${end} end of what is published`,
  expected,
  tolerance: 0.0006,
  unit: '1',
  source,
  known: source === charge ? 'second-hand' : 'read',
  why: 'a band in three digits',
  ours: () => faultEffects.find((effect) => effect.code === code && effect.size === size)?.[end] ?? Number.NaN,
}));
