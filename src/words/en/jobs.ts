/** Words of the page of jobs. */
import type { StorageTrouble } from '../../job/database.ts';
import type { FileRefusal } from '../../job/jobFile.ts';

export const jobsPage = {
  title: 'Jobs on this device',
  description: 'The jobs that this device keeps: open, copy, delete, save as a file, bring in from one.',
  say: 'Kept on this device only. Clearing the browser’s data deletes them: save a file of what matters.',
  noScript: 'The jobs are kept by your browser, and scripts are switched off.',
  fieldSheet: 'A blank field sheet, to print',
  none: 'No job is kept here yet.',
  lasting: 'This browser keeps them until you delete them.',
  notLasting: 'This browser may delete them by itself when the device runs out of room.',
  homeScreen:
    'On an iPhone or iPad the browser deletes what a site keeps after seven days without a visit, unless the site stands on the home screen: tap Share, then “Add to Home Screen”, and open it from there.',
  start: 'Start a new job',
  unnamed: 'Job without an address',
  unread: 'A record that this version of the site cannot read',
  unreadSay: 'It stays where it is.',
  open: 'open now',
  invented: 'invented',
  read: (day: string) => `last typed ${day}`,
  figures: (count: number) => (count === 1 ? 'one figure' : `${count} figures`),
  openKey: 'Open',
  openName: (name: string) => `Open ${name}`,
  reportKey: 'Report',
  reportName: (name: string) => `Report of ${name}`,
  copyKey: 'Copy',
  copyName: (name: string) => `Copy ${name}`,
  copied: (name: string) => `${name} (copy)`,
  renameKey: 'Rename',
  renameName: (name: string) => `Rename ${name}`,
  nameField: 'Address (the name of the job)',
  renameKeep: 'Keep this name',
  renameLeave: 'Leave it as it was',
  deleteKey: 'Delete',
  deleteName: (name: string) => `Delete ${name}`,
  deleted: (name: string) => `Deleted: ${name}.`,
  putBack: 'Put it back',
  saveAll: 'Save all as a file',
  saveResults: 'Save results for a spreadsheet',
  resultsName: 'results',
  drawing: 'Working out the ranges…',
  compare: 'Before and after',
  locked: (code: string) => `locked, ${code}`,
  showMore: (count: number) => `Show more of ${count} others`,
  saveOne: 'Save as a file',
  saveName: (name: string) => `Save ${name} as a file`,
  fileName: 'jobs',
  bring: 'Bring in a file',
  brings: (fresh: number, same: number, differing: number) =>
    [
      fresh > 0 && `${fresh} new`,
      same > 0 && `${same} here already, the same`,
      differing > 0 && `${differing} here already with other figures: it comes as a copy`,
    ]
      .filter(Boolean)
      .join('; '),
  file: (parts: string) => `The file holds: ${parts}.`,
  holdsNone: 'The file holds no job.',
  take: 'Take them in',
  leave: 'Leave them out',
  taken: (count: number) => (count === 1 ? 'One job was taken in.' : `${count} jobs were taken in.`),
} as const;

const stays = 'Nothing here was changed.';
export const fileProblems: Readonly<Record<FileRefusal, (at: number | undefined) => string>> = {
  notAFile: () => `That is no file of jobs from this site. ${stays}`,
  newer: () => `That file was written by a newer version of this site. Load the page again with a signal. ${stays}`,
  broken: (at) => `Job ${at ?? 1} of the file cannot be read; it may have been cut short or changed. ${stays}`,
  tooLong: () => `That file is larger than any file of jobs. ${stays}`,
};

export const shelfProblems: Readonly<Record<StorageTrouble, string>> = {
  refused: 'This browser does not let the site keep anything, so there are no jobs to show.',
  full: 'This device is out of room. Delete a job, or save them as a file.',
  otherVersion:
    'Another version of this site holds the store of this device. Close its pages, then load this one again.',
};
