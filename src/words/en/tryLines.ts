/** The picture of a line set that grows and climbs. */
export const tryLines = {
  caption:
    'Invented: three tons of R-410A against 25\u00a0ft (7.6\u00a0m) of the same tube, 10\u00a0°F (5.6\u00a0K) of subcooling to begin with. The lift is drawn in proportion to the length. The maker’s own table outranks all of this.',
  length: 'Length, one way',
  lift: 'The coil stands',
  above: (height: string) => `${height} higher`,
  below: (height: string) => `${height} lower`,
  level: 'level',
  wide: 'A size larger for the vapour: 7/8 instead of 3/4\u00a0in',
  rated: 'as rated',
  table: 'What this line leaves',
  rows: { most: 'Capacity, at most', least: 'Capacity, at least', subcooling: 'Subcooling left' },
  cost: (least: string, most: string) => `It costs ${least} to ${most} of the capacity`,
  left: (cost: string, subcooling: string) => `${cost}, and ${subcooling} of subcooling are left at the coil.`,
  boils: (cost: string) => `${cost}, and the liquid boils before it reaches the coil: much more is lost at once.`,
} as const;
