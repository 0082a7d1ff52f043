/** Words of the comparison that can be moved. */
export const factorsAt = {
  height: 'Height above sea level',
  problem: (max: string, unit: string) => `Type a height from 0 to ${max}\u00a0${unit}.`,
  table: 'The factors and the exact result at this height',
  rule: 'By the factor',
  exact: 'Exactly',
  off: 'Off by',
  parts: { total: 'Total, 4.5', sensible: 'Sensible, 1.08', latent: 'Latent, 0.68' },
  percentOff: (percent: string) => `${percent}\u00a0%`,
  said: (height: string, unit: string, percent: string) =>
    `At ${height}\u00a0${unit} the factor 4.5 and a chart for sea level are ${percent}\u00a0% off in the total.`,
} as const;
