/** Heads of the table of results that a spreadsheet opens. */
export const resultHeads = {
  job: 'Job',
  system: 'System',
  readAt: 'Read at',
  by: 'Read by',
  returnDryBulb: (unit: string) => `Return air (${unit})`,
  returnHumidity: 'Return air (% relative humidity)',
  supplyDryBulb: (unit: string) => `Supply air (${unit})`,
  supplyHumidity: 'Supply air (% relative humidity)',
  airflow: (unit: string) => `Airflow (${unit})`,
  outdoors: (unit: string) => `Outdoors (${unit})`,
  makes: (unit: string) => `It makes (${unit})`,
  makesLow: (unit: string) => `It makes, low end (${unit})`,
  makesHigh: (unit: string) => `It makes, high end (${unit})`,
  should: (unit: string) => `It should make (${unit})`,
  share: 'Share (%)',
  shareLow: 'Share, low end (%)',
  shareHigh: 'Share, high end (%)',
  line: 'The line (%)',
  verdict: 'Verdict',
  lockedAt: 'Locked at',
  code: 'Code',
  invented: 'Invented',
} as const;

export const resultVerdicts = {
  meets: 'meets',
  short: 'short',
  cannotTell: 'cannot tell',
  none: 'no verdict',
} as const;
export const inventedWord = 'invented';
