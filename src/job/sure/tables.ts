/** The tables of how sure: stamped readings of both probes in one air, and the supply air from point to point. */
const pairColumns = [
  'time',
  'enteringDryBulb',
  'enteringRelativeHumidity',
  'enteringWetBulb',
  'leavingDryBulb',
  'leavingRelativeHumidity',
  'leavingWetBulb',
] as const;

export const sureTables = {
  'pairs.return': pairColumns,
  'pairs.supply': pairColumns,
  /** Once more, when the test is over. */
  'pairs.end': pairColumns,
  supplyPoints: ['dryBulb'],
} as const;

export type SureTableKey = keyof typeof sureTables;
