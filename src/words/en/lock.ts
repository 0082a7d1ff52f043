/** Words of the lock, and of what was changed after it. */
export const lockWords = {
  lead: 'The stamp says when these figures were read and gives the sheet a code of six characters, which stands on the report and in the title block. You can still type: what is changed after that is listed in the report.',
  once: 'A job is locked once. To go on from here with an open one, copy it in the list of jobs.',
  lock: 'Lock the figures',
  locked: (day: string, time: string) => `Locked on ${day} at ${time}.`,
  code: (code: string) => `Code ${code}`,
  codeSay: 'Whoever opens this job’s link or file finds the same code as long as no figure was changed.',
  now: (code: string) => `Since then figures were changed: as it stands now its code is ${code}.`,
  none: 'Nothing was changed since.',
  changes: 'Changed after locking',
  was: 'was',
  is: 'now',
  at: 'at',
  what: 'what',
  nothing: 'nothing',
  rows: (count: string) => (count === '1' ? 'one row' : `${count} rows`),
  row: (table: string, row: string) => `${table}, row ${row}`,
  table: 'a table',
  note: 'a note on the system',
  choice: 'an answer',
} as const;

export const lockedTables: Readonly<Record<string, string>> = {
  rating: 'the maker’s figures',
  ratingSheet: 'the maker’s table',
  ratingAirflow: 'the maker’s factors for airflow',
  'entering.readings': 'readings of the return air',
  'leaving.readings': 'readings of the supply air',
};
