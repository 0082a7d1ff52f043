/** What a column of a record may be. */
export const logRoles = [
  'none',
  'time',
  'entering.dryBulb',
  'entering.humidity',
  'leaving.dryBulb',
  'leaving.humidity',
  'outdoorDryBulb',
  'supplyStatic',
] as const;
export type LogRole = (typeof logRoles)[number];
