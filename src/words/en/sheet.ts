/** Words of the capacity sheet itself: its steps, its bar, its buttons. */
export const sheet = {
  title: 'Measured cooling',
  identity: 'The job and the system',
  visit: 'Visit list',
  openAll: 'Open all steps',
  closeAll: 'One step at a time',
  anotherReading: 'Another reading',
  note: 'Note',
  noteOn: (step: string) => `Note: ${step.toLowerCase()}`,
  next: 'Next',
  toAnswer: 'Answer',
} as const;

export const stepNames = {
  entering: {
    name: 'Return air',
    term: 'entering',
    lead: 'Before the coil, after all returns have joined and mixed. Enter leads on, and so does an answer.',
  },
  leaving: { name: 'Supply air', term: 'leaving', lead: 'After the coil, mixed, out of its sight: the taped probe.' },
  airflow: { name: 'Airflow', term: '', lead: 'With the coil wet and the blower on its cooling speed.' },
  outdoors: { name: 'Outdoors', term: '', lead: '' },
  rating: { name: 'The maker’s table', term: 'expanded ratings', lead: '' },
  sure: { name: 'How sure', term: '', lead: 'A reading is a range, not a number.' },
} as const;

/** What `assess` waits for, in words. */
export const needNames: Readonly<Record<string, string>> = {
  'entering.dryBulb': 'return temperature',
  'entering.humidity': 'return humidity',
  'leaving.dryBulb': 'supply temperature',
  'leaving.humidity': 'supply humidity',
  'airflow.volumeFlow': 'airflow',
  outdoorDryBulb: 'outdoor temperature',
  rating: 'the maker’s table',
  'rating.certified': 'the certified capacity',
  'rating.generic': 'how many stages it has',
  fullSpeed: 'whether it runs at full speed',
};

export const barWords = {
  notRead: 'not read yet',
  notAsked: 'not asked yet',
  fullSpeed: 'full speed',
  speedUnsure: 'speed not sure',
  readAt: (time: string) => `read ${time}`,
  check: 'Check',
  start: 'Start with the return air',
  fiveFigures: 'five figures give the first answer',
  stillNeeded: 'Still needed',
  measuredNow: 'measured now',
  assumed: (count: number) => `${count} assumed`,
  noVerdict: 'No verdict',
  cannotBe: 'Check the readings',
  cannotBeSmall: 'together they describe air that cannot be',
} as const;
