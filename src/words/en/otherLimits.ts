/** Words of the ± of what is read beside the probes. */
export const otherLimitWords = {
  names: { outdoorDryBulb: '± outdoor temperature', barometer: '± air pressure', 'blower.power': '± blower’s power' },
  assumed: (limit: string) => `Empty: ±${limit} (common practice, no source).`,
  blowerAssumed: 'Empty: ±45\u00a0% of the power that is assumed (common practice, no source).',
  bad: (text: string) => `“${text}” is no ± that this reading can have. Type it in the unit of the reading, such as 1.`,
} as const;
