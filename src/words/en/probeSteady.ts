/** Words of the wait until a test is steady: its clocks, its record, its plot. */
export const steadyWords = {
  start: 'Full speed and full airflow: now',
  startAgain: 'Begin again now',
  change: 'Something was changed: now',
  started: (time: string) => `Full speed and full airflow since ${time}.`,
  changed: (time: string) => `Changed at ${time}.`,
  notBefore: (from: string, to: string) => `Not before ${from}; then ten minutes of readings, to ${to}.`,
  rule: 'Our rule: fifteen minutes after full speed and full airflow and after every change (common practice); then ten minutes in which no temperature moves by more than 2\u00a0°F and the computed capacity drifts by less than 2\u00a0%.',
  typed: 'Type readings',
  typedLead:
    'Five readings over ten minutes will do: the return probe in the return air, the taped one in the supply air.',
  open: 'Open a record (a CSV of any logger)',
  close: 'Put the record away',
  notStored: 'The record stays in this page only; its means go into the job.',
} as const;

export const steadyRefusals: Readonly<Record<string, string>> = {
  empty: 'There is nothing in this file.',
  notText: 'This is no table of text: export the record as CSV, and open that.',
  noRows: 'No row with a time and a figure was found. Export the record as CSV, with its time.',
  tooLong: 'This is more than a million rows or so. Export the last hours of it.',
  noTime: 'Say which column is the time: no column that was chosen reads as one.',
  noFigures: 'Say what is in the columns: none is chosen yet.',
};

export const steadyResult = {
  title: 'Steady or not',
  steady: (since: string) => `Steady since ${since}.`,
  notSteady: 'Not steady yet.',
  faults: {
    tooEarly: (value: string) => `Full speed and full airflow are too fresh: wait ${value} more.`,
    otherDay: 'The record ends long before full speed was noted: it is of another day, or its clock is wrong.',
    tooShort: (value: string) => `The record is ${value} long; ten minutes are needed.`,
    tooFewRows: (value: string) => `Readings in the last ten minutes: ${value}; five are needed.`,
    gap: (value: string) => `${value} without a reading in the last ten minutes.`,
    range: (value: string, what: string, most: string) =>
      `${what} moved by ${value} in ten minutes; ${most} is the most.`,
    trend: (value: string) => `The computed capacity drifted by ${value} in ten minutes; 2\u00a0% is the most.`,
  },
  names: {
    'entering.dryBulb': 'Return temperature',
    'entering.humidity': 'Return humidity',
    'leaving.dryBulb': 'Supply temperature',
    'leaving.humidity': 'Supply humidity',
    outdoorDryBulb: 'Outdoor temperature',
    supplyStatic: 'Supply static pressure',
    capacity: 'Capacity',
  },
  seconds: (count: number) => (count >= 90 ? `${Math.round(count / 60)}\u00a0minutes` : `${Math.round(count)}\u00a0s`),
  unreadable: (count: number) => (count === 1 ? 'One row could not be read' : `${count} rows could not be read`),
  line: (line: number, text: string) => `line ${line} (${text === '' ? 'empty' : `“${text}”`})`,
  left: (used: string, rows: string) => `${used} of ${rows} rows were used.`,
  repeated: (count: number) => `${count} with a time that stands there twice were left out.`,
  backwards: (count: number) => `${count} where the clock went back were left out.`,
  sinceLabel: (time: string) => `steady since ${time}`,
  axis: 'minutes before the last reading',
  summary: (minutes: string, low: string, high: string, verdict: string) =>
    `The computed capacity over ${minutes} minutes, relative to its mean in the last ten: from ${low} to ${high}. ${verdict}`,
  slider: 'Look at a moment of the record',
  moment: (time: string, said: string) => `${time}: ${said}`,
  capacityAt: (value: string) => `capacity ${value} against the mean`,
  table: 'The record as a table',
  means: 'Means of the last ten minutes',
  spread: 'spread',
  meanHead: 'Mean',
  spreadHead: 'Highest less lowest',
  use: 'Take these means to the capacity sheet',
  staticGoes: 'The supply static pressure goes to the fan table of the airflow sheet.',
  used: 'The capacity sheet has these means, and their scatter widens its range.',
  useUnsteady: 'Take them all the same',
} as const;
