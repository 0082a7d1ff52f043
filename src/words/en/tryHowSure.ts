/** The picture of the range that limits make. */
export const tryHowSure = {
  caption:
    'An invented test that comes out below the line. Hatched: its range. The humidities are to ±3 points throughout, and nothing else is changed.',
  probes: 'The probes are good to',
  airflow: 'The airflow is good to',
  checked: 'The probes were checked side by side today',
  limit: (amount: string) => `±${amount}`,
  line: (share: string) => `the line, ${share}`,
  should: 'should',
  table: 'The range with these limits',
  rows: { low: 'Low end', share: 'Share of what it should make', high: 'High end' },
  said: {
    meets: (low: string, high: string) => `Between ${low} and ${high}: it meets the line.`,
    short: (low: string, high: string) => `Between ${low} and ${high}: short of the line, and sure enough to say so.`,
    cannotTell: (low: string, high: string) =>
      `Between ${low} and ${high}, with the line inside: these readings cannot tell.`,
  },
} as const;
