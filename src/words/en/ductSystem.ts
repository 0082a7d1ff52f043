/** The picture of a blower and its ducts. */
export const ductSystemWords = {
  caption:
    'Invented blower and ducts. Solid: the blower on one fixed speed, as its table prints it. Thin: the ducts as they were. Dashed: as they are now. Where two lines meet is where the system runs.',
  names: { filter: 'The filter resists', shut: 'Registers shut' },
  units: { filter: 'times', shut: '%' },
  problem: (low: string, high: string) => `Type a number from ${low} to ${high}.`,
  flow: 'Airflow',
  static: 'External static pressure',
  blower: 'blower',
  before: 'as it was',
  after: 'now',
  table: 'Airflow and external static pressure before and after',
  none: '–',
  said: (before: string, after: string, less: string, pressure: string) =>
    `From ${before} to ${after}, against ${pressure} now: ${less} less air. An estimate.`,
  beyond: 'So much resistance lies past what the blower’s table prints. Nothing is read beyond a table.',
} as const;
