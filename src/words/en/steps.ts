/** Words inside the six steps of the capacity sheet. */
export const returnAir = {
  wetBulbInstead: 'My probe shows wet bulb instead',
  humidityInstead: 'My probe shows humidity instead',
  before: (value: string) => `What you typed before comes to ${value}`,
  readings: 'Readings kept',
  remove: (time: string) => `Remove the reading of ${time}`,
  removeShort: 'Remove',
  probe: 'Which probe?',
} as const;

export const supplyAir = {
  caution: 'Never drill where you cannot see behind. Use a port.',
} as const;

export const airflowStep = {
  choose: 'Choose one',
  change: 'Change',
  find: 'No figure yet, or a second one to check it by?',
  findWay: 'Find the airflow',
  found: (flow: string) => `${flow} found`,
  blower: 'Barometer, and where the blower is',
} as const;

export const outdoorsStep = {
  caution: 'Keep clear of the fan, and of panels: wiring kills.',
  held: 'Wait until it has run at full speed and full airflow for fifteen minutes (common practice, no source).',
} as const;

export const ratingStep = {
  waiting: (needs: string) => `The cells to copy are named here once you have read ${needs}.`,
  heads: (outdoors: string, wetBulbs: string) => `outdoors ${outdoors}, wet bulb ${wetBulbs}`,
  and: ' and ',
  outdoors: 'Outdoors',
  wetBulb: 'Wet bulb',
  cellName: (what: string, outdoors: string, wetBulb: string) => `${what} at outdoors ${outdoors}, wet bulb ${wetBulb}`,
  extend: 'Carry the table on all the same',
  refuse: 'Stop carrying the table on',
  sheet: 'a whole table',
  of: (done: number, all: number) => `${done} of ${all} figures`,
} as const;

export const sureStep = {
  limits: 'Limits of the instruments',
  line: (line: string) => `the line ${line}`,
} as const;
