/** What a record of a test may hold beside its time. */
export const logColumns = [
  'entering.dryBulb',
  'entering.humidity',
  'leaving.dryBulb',
  'leaving.humidity',
  'outdoorDryBulb',
  'supplyStatic',
] as const;
export type LogColumn = (typeof logColumns)[number];
