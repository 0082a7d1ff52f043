/** Words of what stands below the sentences of the probe sheet's answer. */
export const probeResults = {
  drawing: 'The differences',
  scale: (what: string, mean: string, low: string, high: string, count: number) =>
    `Differences in ${what} of ${count} readings, supply probe less return probe: mean ${mean}, from ${low} to ${high}; what is common is marked around nothing.`,
  temperature: 'temperature',
  humidity: 'humidity',
  wetBulb: 'wet bulb',
  common: 'common',
  more: 'the taped probe shows more',
  table: 'The differences as a table',
  air: { return: 'Return air', supply: 'Supply air', end: 'At the end' },
  differences: 'Supply probe less return probe',
  known: 'known to',
  offsets: 'What is done with it',
  returnReading: 'Return reading moved by',
  supplyReading: 'Supply reading moved by',
  byStandard: (amount: string) => `Of that, ${amount} on both by what they showed of a standard.`,
  worth: 'What it is worth',
  worthLead: (before: string, after: string, change: string) =>
    `Uncorrected, these readings say ${before}. Corrected they say ${after}: ${change}.`,
  worthWaits: 'What it is worth in capacity is said here once the readings and the airflow are on the capacity sheet.',
  worthUsual:
    'Even 0.3\u00a0°F of wet bulb on one side is worth about 4\u00a0% of capacity at 75\u00a0°F and 50\u00a0%.',
  range: 'The range of the share',
  rangeLead: 'Without the check, and with it.',
  remains: 'What remains',
  remainsLead: 'Standard uncertainties of the test, from the largest.',
  drift: (temperature: string, humidity: string) =>
    `Since the beginning they have moved by ${temperature} and ${humidity}.`,
  driftSmall: 'Too little to count (0.2\u00a0°F, 1\u00a0%).',
  driftBig: 'More than 0.2\u00a0°F or 1\u00a0%: the range is widened by it.',
  toSheet: 'To the capacity sheet',
  sources: 'Notes and sources',
  cautions: [
    {
      say: 'Never drill where you cannot see behind, and never reach into a cabinet with the panel off while it has power.',
      of: 'drilling-and-duct-materials',
    },
    {
      say: 'In an attic: heat, nails and a ceiling that holds nobody. Drink, and do not work there alone.',
      of: 'heat-and-height',
    },
  ],
  notes: [
    {
      say: 'The mean of the differences has the uncertainty of five batch means (four degrees of freedom), never s/√n: readings one after the other are not independent.',
      source: 'uncertaintyGuide',
    },
    {
      say: '0.5\u00a0°F, 1\u00a0% and 0.3\u00a0°F wet bulb between two probes; a remainder of 0.2\u00a0°F and 0.7\u00a0%; 0.2\u00a0°F and 1\u00a0% of drift.',
      source: 'commonPractice',
    },
  ],
} as const;
