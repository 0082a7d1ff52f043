/** What has to be known before the first field, and what the demo asks of who types in it. Fetched when there is something to say. */
export const demoNotices = {
  banner:
    'Demo, invented: a system, a house and readings that do not exist. Look around; to type, copy it or start your own.',
  copyBanner: 'A copy of the demo. Its system, house and first readings are invented.',
  ask: 'Start your own job, or copy the demo?',
  askLead: 'The demo stays as it is, so that it can always be looked at.',
  own: 'Start my own job',
  copy: 'Copy the demo',
  stay: 'Keep looking',
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
