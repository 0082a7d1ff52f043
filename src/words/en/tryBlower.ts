/** The picture of the blower's heat. */
export const tryBlower = {
  caption:
    'Invented: 1,200\u00a0cfm (566\u00a0L/s), the coil always at the same work. A filled circle is the return probe, open squares are two places for the supply probe.',
  power: 'The blower draws',
  gross: (amount: string) => `gross, with the probe before the blower: ${amount}`,
  net: (amount: string) => `net, with the probe behind the blower: ${amount}`,
  heat: (watts: string) => `the blower: ${watts}`,
  table: 'What the probes show with this blower',
  rows: { gross: 'Gross: the coil takes out', heat: 'The blower puts in', net: 'Net: what is left' },
  said: (watts: string, heat: string, share: string, rise: string) =>
    `${watts} are ${heat} of heat, ${share} of what the coil takes out, and warm the air by ${rise}.`,
} as const;
