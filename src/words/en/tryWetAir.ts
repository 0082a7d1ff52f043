/** The picture of humidities that are read wrong. */
export const tryWetAir = {
  caption:
    'The invented test: return air at 50\u00a0%, supply air at 88\u00a0%, temperatures and airflow right. Blank: cooling. Dotted: drying.',
  supply: 'The supply humidity reads',
  returned: 'The return humidity reads',
  points: (number: string) => `${number} points`,
  right: 'right',
  real: 'true',
  read: 'as read',
  cooling: 'cooling',
  drying: 'drying',
  axis: '% of the true total',
  table: 'The cooling that is true and the one that is read',
  rows: { real: 'True total', read: 'Total as read', drying: 'Drying as read' },
  high: (share: string) => `${share} too high`,
  low: (share: string) => `${share} too low`,
  said: (total: string, drying: string) => `The total reads ${total}; the drying alone reads ${drying}.`,
  /** Drying below nothing: more water behind the coil than before it. */
  impossible: 'below nothing, which cannot be',
  nothing: 'Both humidities are right, and so is the total.',
  near: (drying: string) => `The total is right within half a per cent; the drying alone reads ${drying}.`,
} as const;
