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

export const storageKeys = { save: 'Save this job as a file' } as const;

export const storageWords = {
  missing:
    'The address names a job that this device does not keep: it was deleted here, or it stands on another device. This is the job that was open here last.',
  notAJob: 'The job kept on this device could not be read. It was set aside, not deleted, and this is an empty sheet.',
  broken: 'The job kept on this device could not be read. It was set aside, not deleted, and this is an empty sheet.',
  newer:
    'The job kept on this device was written by a newer version of this site. It stays where it is, and this is an empty sheet.',
  refused:
    'This browser does not let the site keep anything: a private window, or storage that is switched off. Your figures last until you close this page. You can still save them as a file.',
  full: 'This device is out of room. Your figures last until you close this page. Save them as a file, then delete a job or other data, and the next figure you type is kept.',
  otherVersion:
    'Another version of this site holds the store of this device. Close its pages, and the next figure you type is kept.',
} as const;
