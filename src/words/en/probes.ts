/** Words of the probe sheet that it needs from its first moment: its steps, its bar, the sentences of its answer. */
export const probeSheet = {
  title: 'Check the probes',
  description:
    'Two probes side by side: by how much they differ, what that is worth in capacity; waiting until steady, with readings or a logger’s record; the supply air from point to point.',
  noScript:
    'This sheet works its figures out in your browser, and scripts are switched off. By hand: the mean of five differences in one air, half of it off each probe.',
} as const;

export const probeSteps = {
  probesReturn: {
    name: 'Together in the return air',
    term: 'side by side',
    lead: 'Tape the supply probe. Both in the same return air, ten to fifteen minutes; then five readings.',
  },
  probesSupply: {
    name: 'Together in the supply air',
    term: '',
    lead: 'The same again behind the coil: a difference in humidity found at 50\u00a0% does not hold at 90\u00a0%.',
  },
  probesShared: {
    name: 'What both share',
    term: '',
    lead: 'An error that both have is not seen side by side. Only something whose air is known shows it.',
  },
  probesSteady: {
    name: 'Waiting until steady',
    term: '',
    lead: 'Each probe in its place; five readings over ten minutes. The clocks run on in a locked phone.',
  },
  probesPoints: {
    name: 'The supply air, point by point',
    term: 'mixing',
    lead: 'One point stands for the whole duct only where the air is mixed. Several points, their mean and their spread say more.',
  },
  probesEnd: {
    name: 'Once more at the end',
    term: '',
    lead: 'When the test is over, side by side once more in the return air: probes drift in an attic.',
  },
} as const;

export const probeWords = {
  notRead: 'not read yet',
  nothingSaid: 'nothing said',
  steadyTaken: 'means taken over',
  since: (time: string) => `running since ${time}`,
  readings: {
    return: 'Readings in the return air',
    supply: 'Readings in the supply air',
    end: 'Readings at the end',
    swap: 'Readings of the exchange',
    steady: 'Readings while waiting',
  },
  time: 'Time',
  returnProbe: 'Return probe',
  supplyProbe: 'Taped probe',
  short: { DryBulb: 'T', RelativeHumidity: 'RH', WetBulb: 'WB' } as Readonly<Record<string, string>>,
  returnAir: 'Return air',
  supplyAir: 'Supply air',
  asUsed: 'As used',
  exchanged: 'Exchanged',
  swap: 'Read both where they stand, then exchange them, wait three minutes and read again: each air has then been read by both. The system must be steady meanwhile; twice over is better.',
  swapHere: 'Not needed: exchanging them compares them in this air too.',
  row: (row: number) => `Reading ${row}`,
  cell: (row: number, probe: string, quantity: string) => `Reading ${row}, ${probe.toLowerCase()}, ${quantity}`,
  at: (row: number, sentence: string) => `Reading ${row}: ${sentence}`,
  stamped: 'Each line notes its own time. Type 75, or 75.2; Enter leads on.',
  count: (count: number) => (count === 1 ? 'one reading' : `${count} readings`),
  differ: (temperature: string, humidity: string) => `${temperature}, ${humidity}`,
  otherWays: 'Other ways',
  records: 'From their records',
  points: 'Supply temperatures',
  point: (row: number) => `Point ${row}`,
  mean: (count: number, mean: string, spread: string) => `${count} points: mean ${mean}, spread ${spread}.`,
  onePoint: 'One point, or none: ±1\u00a0°F (0.6\u00a0K) is taken for the mixing (a judgement, no source).',
  laboratory: (most: string) => `A laboratory allows a spread of ${most}.`,
  useMean: 'Take the mean as the supply temperature',
  meanUsed: 'The supply temperature of the capacity sheet is this mean.',
  iceBath:
    'Crushed ice and a little water, stirred; the tip in a thin bag, ten minutes: it should read 32.0\u00a0°F (0.0\u00a0°C).',
  salt: 'Wet table salt, more salt than water, in a closed jar with the tip above it, overnight at an even temperature: 75\u00a0% (75.3\u00a0% at 77\u00a0°F, 25\u00a0°C).',
} as const;

export const probeAnswer = {
  nothing: 'Nothing to compare yet.',
  nothingLead:
    'Both probes in the same return air: one line of readings gives a first difference, five give a good one.',
  differ: (temperature: string, humidity: string) => `The probes differ by ${temperature} and ${humidity}.`,
  differDry: (temperature: string) => `The probes differ by ${temperature}.`,
  alike: 'The probes agree.',
  common:
    'That is common in the trade (0.5\u00a0°F, 1\u00a0% or 0.3\u00a0°F wet bulb: common practice, no source), and still worth taking off.',
  uncommon:
    'That is more than is common (0.5\u00a0°F, 1\u00a0% or 0.3\u00a0°F wet bulb: common practice, no source). Taken off, it does no harm, unless one of them is broken.',
} as const;

/** What is still to be done, as it stands in a list. */
export const probeTodo = {
  return: 'five return-air readings',
  supply: 'supply-air readings',
  steady: 'the wait until steady',
  end: 'the end check',
  still: (list: string) => `Still to do here: ${list}.`,
  inBar: (next: string) => `next: ${next}`,
  done: 'All of this sheet is done.',
} as const;

export const probeBar = {
  start: 'Start in the return air',
  startSmall: 'one line of readings gives a first difference',
  apart: 'apart',
  applied: (count: number) => (count < 5 ? `${count} of 5 readings` : 'taken off both readings'),
  notApplied: 'not used: step 6 of the capacity sheet says no',
} as const;
