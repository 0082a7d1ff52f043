/** What stands below the sentences of the answer: its picture, its ledgers, the checks, the title block. */
export const results = {
  scaleLine: (line: string) => `the line, ${line}`,
  scaleShould: 'should make',
  ledger: 'Measured, expected and their ratio',
  itMakes: 'It makes, measured',
  itMakesNet: 'It makes, blower’s heat taken off',
  itShould: 'It should make, here and now',
  itShouldEstimate: (band: string) => `It should make, here and now: an estimate within ${band}`,
  shareOf: 'Share',
  nextStep: 'One next step',
  cooling: 'Cooling and drying',
  coolingOf: (amount: string) => `${amount} cooling (sensible)`,
  dryingOf: (amount: string) => `${amount} drying (latent)`,
  dryingUnseen: 'drying (latent): none that these probes can see',
  waterOf: (amount: string, share: string) => `${amount} of water an hour; ${share} of the work is cooling.`,
  shouldCool: (amount: string, share: string) =>
    `Of what it should make, ${amount} should be cooling (sensible), ${share}.`,
  noShouldCool: {
    totalsOnly:
      'How much of it should be cooling cannot be said: the table has totals only. “Add sensible” in step 5 asks for the rest.',
    noDryBulb:
      'How much of it should be cooling cannot be said: nobody has said for which return temperature the table’s sensible capacity holds (step 5).',
    noCoil:
      'How much of it should be cooling cannot be said: the figures of the table are of no coil that could be moved to this return air and airflow.',
  },
  catchFold: 'Catch the water to check it',
  rough: (low: string, high: string) => `Drying is rough, from two humidity probes: between ${low} and ${high}.`,
  chartRange: (low: string, high: string) => `In all it takes between ${low} and ${high} out of the air.`,
  airChart: 'The air chart',
  coilDoes: 'What the coil does to the air',
  wholeChart: 'The whole chart, with points that move',
  hangTogether: 'Does it hang together?',
  hangTogetherLead: 'Six figures that should agree with one another. Usual ranges: common practice, no source.',
  usual: (low: string, high: string) => `usual ${low} to ${high}`,
  outsideUsual: 'not usual',
  roughly: 'rough: two humidity probes',
  whyNot: (nominal: string) => `Why not ${nominal}?`,
  whyNotPlain: 'How the expectation comes about',
  whyNotDrawn: 'See it drawn, leave steps out, and try what each is worth',
  nameplate: 'On the nameplate (nominal)',
  noStep: 'does not apply',
  whenShort: 'When it is short',
  lockFold: 'Lock the figures',
  report: 'The report, to print or to send: one page for the owner, one for the trade',
  linkFold: 'Send this job as a link',
  working: 'The working',
  openWorking: (result: string) => `${result}: show the working`,
  workingLead:
    'Every step, with the numbers put in. The package works in SI; results stand in your units as well where they differ.',
} as const;

/** The six figures, under the code of each check. */
export const checkNames: Readonly<Record<string, string>> = {
  airflowPerCapacity: 'Airflow for its size',
  temperatureDrop: 'Temperature drop',
  supplyHumidity: 'Supply humidity',
  condensate: 'Water per hour',
  apparatusDewPoint: 'Coil temperature',
  bypassFactor: 'Air that misses the coil',
};

/** One step from the rating to the expectation, under the cause of each derate. */
export const derateNames: Readonly<Record<string, string>> = {
  certified: 'As certified for this pair, at 95\u00a0°F outdoors',
  temperatures: 'At these temperatures, from the table',
  indoorMatch: 'With this indoor unit',
  airflow: 'At this airflow',
  blowerInside: 'Blower’s heat inside the rating, put back (gross)',
  lineSet: 'Behind this line set',
  altitude: 'In the thinner air here',
  blowerHere: 'This blower’s heat, taken off (net)',
};

export const nextSteps = {
  outdoors: 'Read the temperature of the air going into the outdoor unit, in the shade.',
  table: (cells: string) => `Find the expanded ratings of this very pair and copy ${cells}.`,
  readings: (needs: string) => `Read ${needs}.`,
  fullSpeed:
    'Say in step 4 whether it runs at full speed. A machine that chooses its own speed may make less on purpose.',
  short: 'Check the measurement first, then look where it may be lost: “When it is short”, below, has both in order.',
  undecidable: (least: string) =>
    `Nothing more to read here: it makes at least ${least}, and no further check today would decide it.`,
  nothing: 'Nothing more to read here. Check the probes once more, plug every hole and restore every setting.',
} as const;

export const titleBlock = {
  job: 'Job',
  system: 'System',
  sheet: 'Sheet',
  sheetName: 'Measured cooling',
  read: 'Read',
  place: 'Place',
  units: 'Units',
  by: 'By',
  state: 'State',
  method: 'Method',
  methodName: 'air enthalpy',
  notRead: 'not read yet',
  seaLevelAssumed: 'sea level (assumed)',
  open: (assumed: number) => (assumed === 0 ? 'open' : `open, ${assumed} assumed`),
  code: 'Code',
  locked: (time: string, changes: number) =>
    `locked ${time}${changes === 0 ? '' : changes === 1 ? ', one change after' : `, ${changes} changes after`}`,
  demo: 'Demo, invented',
  none: 'not given',
} as const;

export const drawings = {
  title: 'How to read our drawings',
  measured: 'measured',
  should: 'what it should make',
  line: 'the line agreed on',
  range: 'a range, a difference',
  cooling: 'drying (latent)',
} as const;
