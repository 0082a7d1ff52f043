/** Words of the capacity sheet itself: its steps, its bar, its buttons. */
export const sheet = {
  title: 'Measured cooling',
  description:
    'Two probes and an airflow figure: the cooling that an air conditioner makes right now, and what it should make.',
  unnamed: 'New job',
  identity: 'The job and the system',
  openAll: 'Open all steps',
  closeAll: 'One step at a time',
  anotherReading: 'Another reading',
  note: 'Note',
  noteOn: (step: string) => `Note: ${step.toLowerCase()}`,
  saved: (time: string) => `Saved ${time}`,
  notSaved: 'Not saved',
  next: 'Next',
  toAnswer: 'Answer',
  size: (tons: string) => tons,
} as const;

export const stepNames = {
  entering: { name: 'Return air', term: 'entering', lead: 'Before the coil, after all returns have joined and mixed.' },
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
  ofWhatItShould: 'of what it should make',
  noVerdictYet: 'no verdict yet: step 6 says how sure',
  noRange: 'no verdict yet',
  noVerdict: 'No verdict',
  cannotBe: 'Check the readings',
  cannotBeSmall: 'together they describe air that cannot be',
} as const;

export const identity = {
  title: 'The job and the system',
  lead: 'For the report. Nothing here is needed for the answer, but the blower’s place and heat sharpen it.',
  address: 'Address or name of the job',
  tester: 'Read by',
  outdoorModel: 'Outdoor unit, model',
  outdoorSerial: 'Outdoor unit, serial',
  indoorModel: 'Indoor unit or coil, model',
  indoorSerial: 'Indoor unit or coil, serial',
  furnaceModel: 'Furnace, model',
  certificate: 'Certificate or reference number of the match',
  notCovered:
    'Covered: ducted equipment with one indoor coil. Not covered: ductless heads, several indoor units on one outdoor unit, reheat modes, chilled water.',
} as const;

export const demoWords = {
  inBar: 'Demo, invented',
  banner:
    'Demo, invented: a system, a house and readings that do not exist. Look around; to type, copy it or start your own.',
  copyBanner: 'A copy of the demo. Its system, house and first readings are invented.',
  ask: 'Start your own job, or copy the demo?',
  askLead: 'The demo stays as it is, so that it can always be looked at.',
  own: 'Start my own job',
  copy: 'Copy the demo',
  stay: 'Keep looking',
} as const;

export const visitorWords = {
  inBar: 'From a link',
} as const;

export const storageWords = {
  notAJob: 'The job kept on this device could not be read. It was set aside, not deleted, and this is an empty sheet.',
  broken: 'The job kept on this device could not be read. It was set aside, not deleted, and this is an empty sheet.',
  newer:
    'The job kept on this device was written by a newer version of this site. It stays where it is, and this is an empty sheet.',
  refused: 'This browser does not let the site keep anything. Your figures last until you close this page.',
  full: 'This device is out of room. Your figures last until you close this page.',
  otherVersion:
    'Another version of this site holds the store of this device. Close its pages, and the next figure you type is kept.',
} as const;

export const noScript =
  'This sheet works its figures out in your browser, and scripts are switched off. The method, by hand, stands under How to.';
