/** Which pages the audit looks at: one of every template, and the three whose speed is held to a figure. */
export const templates: readonly string[] = [
  '',
  'worksheets/',
  'worksheets/capacity/',
  'worksheets/airflow/',
  'worksheets/expected/',
  'worksheets/line-set/',
  'worksheets/moist-air/',
  'worksheets/moist-air/blank/',
  'worksheets/probes/',
  // An index of a section, articles without and with a picture that wakes, and what else an article can be.
  'method/',
  'method/static-pressure/',
  'method/duct-system/',
  'method/cards/',
  'cautions/refrigerants/',
  'reports/cannot-tell/',
  'classroom/four-nominal-tons/',
  'classroom/exercises/',
  'classroom/exercises/answers/',
  'classroom/spoilt/',
  'classroom/spoilt/answers/',
  'classroom/traverse-grids/',
  'jobs/',
  'jobs/compare/',
  'jobs/field-sheet/',
  'reports/view/',
  'reports/read/',
  'reference/',
  'reference/checks/',
  'reference/drawings/',
  'reference/factors/',
  'reference/glossary/',
  'reference/sources/',
  'reference/symbols/',
  'reference/units/',
  'search/',
];

/** The least performance, of 100, as the median of five. */
export const quick: Readonly<Record<string, number>> = {
  'worksheets/capacity/': 95,
  'worksheets/moist-air/': 95,
  'method/static-pressure/': 98,
};

/** Of an article on a slow phone, ms. */
export const latestLargestPaint = 1500;
