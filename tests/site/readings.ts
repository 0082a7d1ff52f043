/** The readings of an invented job, without the maker's table. */
export const readings = {
  'entering.dryBulb': '75',
  'entering.relativeHumidity': '50',
  'leaving.dryBulb': '56',
  'leaving.relativeHumidity': '88',
  'airflow.volumeFlow': '1180',
} as const;

/** Its four figures, in the order in which a table is read. */
export const cells = ['33.6', '31.7', '36.9', '34.9'] as const;
